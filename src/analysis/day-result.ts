import type { Provenance } from "../physics/index.ts";
import type { Happening } from "../scenario/index.ts";
import type {
	CanisterReason,
	Condition,
	Ending,
	Notice,
	PauseReason,
	Phase,
	SourceReason,
} from "../therapy/index.ts";
import type { LikelyTime } from "./likely-times.ts";

export type {
	Condition,
	Ending,
	PauseReason,
	Phase as PhaseName,
} from "../therapy/index.ts";

/** What `day --json` prints: format `slackwater/day@1`. Minutes count from the start of the scenario. */
export interface DayResult {
	readonly format: "slackwater/day@1";
	readonly scenario: ScenarioSummary;
	/** The drawn day. */
	readonly trace: {
		/** Its number, counted from 0. */
		readonly replication: number;
		/** It is the one nearest the median of the first so many; null where it was asked for by its number. */
		readonly typicalOf: number | null;
		readonly events: number;
		readonly hash: string;
	};
	readonly dressings: readonly DrawnDressing[];
	readonly projection: Projection;
	/** What to send home; null where the scenario names no discharge. */
	readonly home: HomeSupplies | null;
	readonly cautions: readonly Caution[];
	readonly assumptions: readonly Assumption[];
}

export interface ScenarioSummary {
	readonly title: string;
	readonly seed: string;
	readonly version: string;
	readonly start: string;
	/** Minutes after midnight at the start. */
	readonly startClockMin: number;
	readonly horizonMin: number;
	readonly replications: number;
	readonly chance: "on" | "off";
	readonly solution: string;
	readonly dressings: readonly DressingSummary[];
	readonly roundsClockMin: readonly number[];
	/** What the scenario lists, in order of time; dressing changes listed under care among them. */
	readonly happenings: readonly ListedHappening[];
	/** Supplies of the horizon at P90, one row an item; packs are given where the scenario has pack sizes. */
	readonly supplies: readonly Supply[];
}

/** Something that the scenario lists: planned, as a transfer is, or a failure to be looked at. */
export interface ListedHappening {
	readonly atMin: number;
	readonly dressing: string;
	readonly what: Happening["what"];
	/** How long it lasts; null where it has no length of its own. */
	readonly forMin: number | null;
	readonly planned: boolean;
}

/** What is used in the first days at home: changes from the discharge on, and a canister and a source to begin with. */
export interface HomeSupplies {
	readonly fromMin: number;
	readonly forMin: number;
	readonly supplies: readonly Supply[];
}

/** One day as it was drawn, for a chart. */
export interface TracedDayResult {
	readonly scenario: ScenarioSummary;
	readonly dressings: readonly DressingDay[];
}

export interface DressingSummary {
	readonly id: string;
	readonly patient: string;
	readonly tissue: string;
	readonly foamVolumeMl: number;
	readonly capacityMl: number;
	readonly exudateMlPerDay: number;
	readonly slough: string;
	readonly difficulty: string;
	readonly canisterMl: number;
	readonly sourceMl: number;
	/** What the canister holds and what is left in the source at the start. */
	readonly canisterHoldsMl: number;
	readonly sourceLeftMl: number;
	readonly regimens: readonly {
		readonly fromMin: number;
		readonly begin: "suction" | "fill";
		readonly depthMmHg: number;
		readonly fillMl: number;
		readonly dwellMin: number | null;
		readonly suctionMin: number | null;
		/** Share of the pump's flow that is let work in a drawdown, 0…1. */
		readonly drawdown: number;
		/** Time that it takes to the set depth with the canister as at the start and a sound seal; null where the pump is let work freely before. */
		readonly drawdownSec: number | null;
	}[];
}

export interface Supply {
	/** e.g. `canister 1000 mL`, `solution 1000 mL`, `fill line`, `dressing kit`, `suction port`. */
	readonly item: string;
	readonly p50: number;
	readonly p90: number;
	readonly packSize: number | null;
	/** Whole packs that cover P90. */
	readonly packs: number | null;
}

/** The undisturbed day of one dressing: what is asked for and planned, with nothing left to chance. */
export type Schedule = Pick<
	DressingDay,
	| "phases"
	| "pauses"
	| "alarms"
	| "canisterChanges"
	| "sourceChanges"
	| "dressingChanges"
	| "takeovers"
>;

/** A dressing of `day --json`: the drawn day, and the undisturbed one. */
export interface DrawnDressing extends DressingDay {
	readonly schedule: Schedule;
}

/** One day of one dressing, as it was traced. */
export interface DressingDay {
	readonly id: string;
	readonly phases: readonly {
		readonly phase: Phase;
		readonly startMin: number;
		readonly endMin: number;
	}[];
	readonly pauses: readonly {
		readonly reason: PauseReason;
		readonly startMin: number;
		readonly endMin: number;
	}[];
	readonly notices: readonly {
		readonly notice: Notice;
		readonly atMin: number;
	}[];
	readonly alarms: readonly {
		readonly condition: Condition;
		readonly priority: "medium" | "high";
		readonly startMin: number;
		readonly endMin: number;
		readonly endedBy: Ending;
	}[];
	readonly canisterChanges: readonly {
		readonly atMin: number;
		readonly reason: CanisterReason;
	}[];
	readonly sourceChanges: readonly {
		readonly atMin: number;
		readonly reason: SourceReason;
		readonly wastedMl: number;
	}[];
	readonly dressingChanges: readonly {
		readonly startMin: number;
		readonly endMin: number;
	}[];
	/** Later regimens as they took over: `fromMin` is their time, `atMin` when the running period let them. */
	readonly takeovers: readonly {
		/** Place in the dressing's list of regimens. */
		readonly regimen: number;
		readonly fromMin: number;
		readonly atMin: number;
	}[];
	readonly totals: Totals;
	/** The curve of the day, for charts: columns of equal length, straight lines between rows (a jump is two rows at one time). */
	readonly curve: DayCurve;
}

export interface DayCurve {
	readonly atMin: readonly number[];
	/** Positive, below ambient. */
	readonly depthMmHg: readonly number[];
	readonly liquidMl: readonly number[];
	readonly canisterMl: readonly number[];
	readonly sourceMl: readonly number[];
}

export interface Totals {
	/** Fills started. */
	readonly fills: number;
	/** Drains finished. */
	readonly washes: number;
	readonly instilledMl: number;
	readonly exudateMl: number;
	readonly toCanisterMl: number;
	readonly weptMl: number;
	readonly discardedMl: number;
	readonly inDressingMl: number;
	readonly solutionWastedMl: number;
	/** Exudate in what reached the canister. */
	readonly woundOutputMl: number;
	/** Solution instilled less solution that reached the canister. */
	readonly notReturnedMl: number;
	readonly offSuctionMin: number;
	readonly underSuctionMin: number;
	readonly wetMin: number;
	readonly breaches: number;
	readonly meanExudateShare: number;
	/** Canisters changed, sources renewed, kits and ports used, beyond those of the start. */
	readonly canisterChanges: number;
	readonly sourceChanges: number;
	readonly dressingChanges: number;
	readonly portsReplaced: number;
	readonly alarms: number;
	/** Alarms that called a nurse between 19:00 and 07:00. */
	readonly nightCalls: number;
	/** Hands-on minutes of nurses. */
	readonly nurseMin: number;
}

export type TotalName = keyof Totals;

export interface Spread {
	readonly mean: number;
	/** Student's 95 % half-width of the mean; null below two replications. */
	readonly halfWidth95: number | null;
	readonly p10: number;
	readonly p50: number;
	readonly p90: number;
	/** 95 % intervals of P10, P50 and P90 from order statistics; a bound is null where the values do not reach far enough. */
	readonly quantiles95: readonly {
		readonly low: number | null;
		readonly high: number | null;
	}[];
}

export interface Projection {
	readonly replications: number;
	readonly dressings: readonly DressingProjection[];
}

export interface DressingProjection {
	readonly id: string;
	/** Per horizon. */
	readonly totals: { readonly [N in TotalName]: Spread };
	readonly canisterChanges: readonly ChangeTime[];
	/** When a canister is at capacity or a round would change it, with the windows in which that is likeliest; listed changes are none. */
	readonly canisterNeeds: readonly (ChangeTime & {
		readonly windows: readonly LikelyTime[];
	})[];
	/** When fills begin. */
	readonly fills: readonly ChangeTime[];
	/** Content of the canister just before each round. */
	readonly rounds: readonly RoundLevel[];
	/** The same for the renewals of the source. */
	readonly sourceChanges: readonly ChangeTime[];
	readonly alarms: readonly AlarmProjection[];
	/** Canister content over time (all replications), at equal steps from the start, for the band chart. */
	readonly canisterLevel: LevelBand;
	/** What is in the canister at the horizon. */
	readonly canisterAtEnd: Omit<RoundLevel, "atMin">;
}

/** Quantiles are among the replications in which the change occurs. */
export interface ChangeTime {
	readonly ordinal: number;
	readonly p10Min: number;
	readonly p50Min: number;
	readonly p90Min: number;
	readonly probabilityWithinHorizon: number;
}

export interface AlarmProjection {
	readonly condition: Condition;
	/** Alarms that start per 24 h. */
	readonly meanPerDay: number;
	readonly halfWidth95: number | null;
	/** Those that chance brings, without what the scenario lists. */
	readonly byChance: {
		readonly meanPerDay: number;
		readonly halfWidth95: number | null;
	};
	/**
	 * Half-hours from the start; probability that at least one such alarm starts in it, with its Wilson 95 % interval;
	 * `chance` is that of one that nothing listed brings.
	 */
	readonly bins: readonly {
		readonly startMin: number;
		readonly endMin: number;
		readonly probability: number;
		readonly low: number;
		readonly high: number;
		readonly chance: number;
	}[];
	/** Runs of bins whose `chance` is above the level (5 % by default). */
	readonly windows: readonly {
		readonly startMin: number;
		readonly endMin: number;
		readonly peakProbability: number;
	}[];
}

export interface RoundLevel {
	readonly atMin: number;
	readonly p10Ml: number;
	readonly p50Ml: number;
	readonly p90Ml: number;
}

export interface LevelBand {
	readonly stepMin: number;
	readonly p10Ml: readonly number[];
	readonly p50Ml: readonly number[];
	readonly p90Ml: readonly number[];
}

export interface Caution {
	/** e.g. `planning-only`, `depth-outside-range`, `fill-above-capacity`, `off-suction`, `not-returned`. */
	readonly code: string;
	readonly text: string;
	/** The dressing it concerns; absent for the day as a whole. */
	readonly dressing?: string;
}

export interface Assumption {
	/** A name of section 11 of the model, or the path of a defaulted value of the scenario. */
	readonly name: string;
	readonly value: number | string;
	readonly unit: string;
	readonly provenance: Provenance;
	readonly source: string;
	readonly meaning: string;
	/** True where the scenario did not give it. */
	readonly defaulted: boolean;
}
