import type {
	Assumption,
	Caution,
	ScenarioSummary,
	Spread,
	TotalName,
	TracedDayResult,
} from "./day-result.ts";
import type { Drawn } from "./drawn.ts";
import type { MeasureName } from "./measures.ts";

/** What `compare --json` prints: format `slackwater/compare@1`. Means and differences are per horizon. */
export interface CompareResult {
	readonly format: "slackwater/compare@1";
	/** The scenario that the regimens are laid over. */
	readonly scenario: ScenarioSummary;
	readonly replications: number;
	/** The day that is drawn of every regimen. */
	readonly trace: Drawn;
	/** Currency of `cost`; null where the scenario has no prices. */
	readonly currency: string | null;
	/** What the reader asked for, in order; every measure stands in `differences`. */
	readonly measures: readonly MeasureName[];
	readonly regimens: readonly RegimenResult[];
	/** Every pair of regimens, every dressing (and `all`, where there are several), every measure. */
	readonly differences: readonly Difference[];
	/** What the answer rests on: assumptions at half and at twice their value, for the first two regimens; null where it was not asked for. */
	readonly restsOn: RestsOn | null;
	readonly precision: readonly PrecisionReached[];
	readonly cautions: readonly Caution[];
	readonly assumptions: readonly Assumption[];
}

/** The settings of a regimen on one dressing, as in `ScenarioSummary`. */
export type RegimenSummary =
	ScenarioSummary["dressings"][number]["regimens"][number];

export interface RegimenResult {
	readonly name: string;
	/** The regimen that the first dressing which it changes begins with; where it changes none, the first dressing of all. */
	readonly regimen: RegimenSummary;
	/** Dressings that begin with `regimen`; the others have their own, under `dressings`. */
	readonly regimenOf: readonly string[];
	/** Every dressing, then `all` where there are several: its settings are those that every dressing has, else null (and no regimens). */
	readonly dressings: readonly {
		readonly id: string;
		/** What it begins with: the first of `regimens`. */
		readonly regimen: RegimenSummary | null;
		readonly canisterMl: number | null;
		readonly sourceMl: number | null;
		/** What they hold at the start. */
		readonly canisterHoldsMl: number | null;
		readonly sourceLeftMl: number | null;
		readonly regimens: readonly RegimenSummary[];
		readonly totals: { readonly [N in TotalName]: Spread };
		/** Every measure, the totals again among them. */
		readonly measures: { readonly [N in MeasureName]?: Spread };
	}[];
}

/** How a pair differs in one measure. */
export type VerdictKind =
	/** The interval of the mean difference leaves nought out. */
	| "differs"
	/** It does not. */
	| "none-found"
	/** Nought in every replication. */
	| "same"
	/** The same difference in all replications but few: its mean is not in doubt, but no interval is given. */
	| "steady"
	/** Too few replications differ for an interval that holds. */
	| "too-rare"
	/** Rests on rates that nobody has measured. */
	| "not-judged";

export interface Difference {
	readonly a: string;
	readonly b: string;
	/** Id of a dressing, or `all`. */
	readonly dressing: string;
	readonly measure: MeasureName;
	/** `mL`, `min`, `` for a count, `share` for 0…1, or a currency. */
	readonly unit: string;
	readonly meanA: number;
	readonly meanB: number;
	/** a − b. */
	readonly mean: number;
	/** 95 % interval of the mean difference; null where none would hold. */
	readonly low95: number | null;
	readonly high95: number | null;
	readonly replications: number;
	/** Share of replications in which a has more. */
	readonly shareAHigher: number;
	/** Share of replications in which b has more; the rest are equal. */
	readonly shareBHigher: number;
	/** Share of replications in which a does better; null where more is neither better nor worse. */
	readonly shareABetter: number | null;
	/** Variance of the difference within a replication: as it was, and as it would be for independent runs. */
	readonly variance: { readonly paired: number; readonly independent: number };
	readonly kind: VerdictKind;
	/** In words: `fewer: 0.04 (0.03 to 0.05)`, `no difference found at 0.1`. */
	readonly verdict: string;
}

export interface RestsOn {
	readonly a: string;
	readonly b: string;
	readonly replications: number;
	readonly rows: readonly RestsOnRow[];
	/** Assumptions that were left out, and why. */
	readonly leftOut: readonly { readonly name: string; readonly why: string }[];
}

/** One assumption at half and at twice its value (a cause without it, too), under the same random numbers. */
export interface RestsOnRow {
	readonly name: string;
	readonly meaning: string;
	readonly value: number;
	readonly unit: string;
	readonly provenance: string;
	/** Mean difference a − b of each dressing and measure; null where that setting cannot be run. */
	readonly effects: readonly {
		readonly dressing: string;
		readonly measure: MeasureName;
		readonly base: number;
		readonly half: number | null;
		readonly twice: number | null;
		/** Without it: at 0, where it is an assumed rate or chance of something that goes wrong; else null. */
		readonly without: number | null;
		/** True where the verdict at half or twice is of another direction than that of the comparison: a difference that is lost, found or turned round. */
		readonly turns: boolean;
		/** As it stands the interval holds nought, at half or at twice it does not. */
		readonly appears: boolean;
		/** True where the verdict hangs on this one cause: without it the difference is lost or turned round, and at least half of it gone. */
		readonly hangs: boolean;
	}[];
}

export interface PrecisionReached {
	readonly a: string;
	readonly b: string;
	readonly dressing: string;
	readonly measure: MeasureName;
	readonly target: number;
	/** Half the width of the interval; null where none is given. */
	readonly halfWidth: number | null;
	readonly reached: boolean;
}

/** What the report draws beside the numbers; not printed as JSON. */
export interface CompareDrawings {
	/** The traced day of each regimen (replication 0, the same patient), in the order of `regimens`. */
	readonly days: readonly TracedDayResult[];
	/** The first two hours of the first two regimens, on the first day in which they part there; null where nothing asks for them. */
	readonly firstHours: {
		readonly replication: number;
		readonly spanMin: number;
		/** Places in `regimens` of the two that are drawn. */
		readonly regimens: readonly number[];
		readonly days: readonly TracedDayResult[];
		/** Share of replications in which a leak comes in these hours, by regimen. */
		readonly leakShare: readonly number[];
	} | null;
}
