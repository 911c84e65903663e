import type { Assumption, Caution, ScenarioSummary } from "./day-result.ts";
import type { AvoidedTime, MeasureName } from "./measures.ts";

export type SweepAxisName =
	| "dwell"
	| "suction"
	| "fill"
	| "depth"
	| "start"
	| "apart";

/** What `sweep --json` prints: format `slackwater/sweep@1`. Means are per horizon. */
export interface SweepResult {
	readonly format: "slackwater/sweep@1";
	readonly scenario: ScenarioSummary;
	/** Replications at every point, the same random numbers at each. */
	readonly replications: number;
	readonly currency: string | null;
	/** The dressing that is varied; `all` where it is every one of several. */
	readonly dressing: string;
	/** Axes with two values or more, in the order of `SweepAxisName`. */
	readonly axes: readonly SweepAxis[];
	/** What the maps show, in the order asked for. */
	readonly measures: readonly MeasureName[];
	/** The grid, the last axis running fastest. */
	readonly points: readonly SweepPoint[];
	/** The scenario's own regimen, and the trade's usual one; they need not lie on the grid. */
	readonly marks: readonly SweepMark[];
	readonly constraints: readonly {
		readonly measure: MeasureName;
		readonly test: "<" | "<=" | ">" | ">=";
		readonly limit: number;
		/** Points that keep it. */
		readonly kept: number;
	}[];
	readonly efficient: {
		readonly measures: readonly {
			readonly measure: MeasureName;
			readonly better: "lower" | "higher";
		}[];
		/** Places in `points` of those that no other kept point betters in one measure without being worse in another. */
		readonly points: readonly number[];
	} | null;
	readonly curve: {
		readonly axis: SweepAxisName;
		/** Places in `points` along the axis, the other axes at the value nearest to the scenario's own. */
		readonly points: readonly number[];
	} | null;
	/** Stretches of the day that the ward keeps clear where it can, minutes after midnight. */
	readonly avoid: {
		readonly [T in AvoidedTime]: readonly {
			readonly fromMin: number;
			readonly toMin: number;
		}[];
	};
	readonly cautions: readonly Caution[];
	readonly assumptions: readonly Assumption[];
}

export interface SweepAxis {
	readonly name: SweepAxisName;
	/** `min`, `mL`, `mmHg` (positive, below ambient), `clock` (minutes after midnight). */
	readonly unit: string;
	readonly values: readonly number[];
	/** The scenario's own value; it need not be among `values`. */
	readonly current: number;
}

/** Values of one point, the dressings together or the one that is varied. */
export interface SweepValues {
	readonly measures: { readonly [N in MeasureName]?: SweepValue };
}

export interface SweepValue {
	readonly mean: number;
	readonly halfWidth95: number | null;
	/** Mean of this point less that of the scenario's own regimen, paired, and its half-width. */
	readonly difference: number;
	readonly differenceHalfWidth95: number | null;
}

export interface SweepPoint extends SweepValues {
	/** Value on each axis, in the order of `axes`. */
	readonly at: readonly number[];
	/** True for the scenario's own regimen. */
	readonly current: boolean;
	/** True for the site's usual one, where the scenario names it. */
	readonly usual: boolean;
	/** Why it lies outside common practice, or is more than the foam takes; empty where it does not. */
	readonly outside: readonly string[];
	/** True where every constraint is kept. */
	readonly kept: boolean;
	/** With the axis `start`: when the canister is likely to be changed, and the likely alarms, for the chart of beginnings. */
	readonly clock: SweepClock | null;
}

export interface SweepSettings {
	readonly depthMmHg: number;
	readonly fillMl: number;
	readonly dwellMin: number | null;
	readonly suctionMin: number | null;
}

export interface SweepMark extends SweepValues {
	readonly mark: "current" | "usual";
	/** Regimen in words of settings; of the first dressing that is varied where they have not all the same. */
	readonly regimen: SweepSettings;
	/** Each dressing's own where they have not all the same; else none. */
	readonly dressings: readonly (SweepSettings & { readonly id: string })[];
	/** Place in `points`; null where it is not on the grid. */
	readonly point: number | null;
}

export interface SweepClock {
	/** Minutes from the start of the scenario. */
	readonly canisterChanges: readonly {
		readonly p10Min: number;
		readonly p50Min: number;
		readonly p90Min: number;
		readonly probabilityWithinHorizon: number;
	}[];
	/** Probability that an alarm of any condition that calls starts in the half-hour, from the start of the scenario. */
	readonly alarmBins: readonly number[];
}
