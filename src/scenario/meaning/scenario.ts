import type { ConstantName, Constants, Provenance } from "../../physics/index.ts";
import type {
	AvoidedTime,
	AxisName,
	Beginning,
	Difficulty,
	HappeningKind,
	Slough,
	Tissue,
} from "../../vocabulary/index.ts";
import type { RehearsalPlan } from "./rehearsal-plan.ts";

/** What a day and a ward over weeks have in common. */
export interface ScenarioFrame {
	readonly title: string;
	readonly seed: string;
	/** ISO local wall-clock time without a zone, e.g. `2026-03-02T07:00`. */
	readonly start: string;
	/** Minutes after midnight of `start`. */
	readonly startClockMin: number;
	readonly horizonMin: number;
	readonly replications: number;
	readonly chance: boolean;
	readonly care: Care;
	readonly constants: Constants;
	readonly solution: Solution;
	/** Every value that was not in the file but taken from the defaults, for the report's list of assumptions. */
	readonly defaulted: readonly Defaulted[];
	/** Names of the assumptions that the file overrides. */
	readonly overridden: readonly ConstantName[];
}

/** A scenario after reading: units converted, defaults filled in. Minutes count from the start; volumes are mL; depth is positive below ambient. */
export interface Scenario extends ScenarioFrame {
	readonly dressings: readonly Dressing[];
	readonly happenings: readonly Happening[];
	/** What is rehearsed, where the file has such a part. */
	readonly rehearsal?: RehearsalPlan;
	readonly compare: readonly RegimenPatch[];
	/** The site's usual regimen in the place of the first of each dressing, by its id; null where the file names none. */
	readonly usual: RegimenPatch["regimens"] | null;
	/** What `sweep` varies; null where the file does not say. */
	readonly sweep: SweepGrid | null;
	/** Discharge: what is sent along is for these minutes; null where nobody goes home. */
	readonly home: { readonly fromMin: number; readonly forMin: number } | null;
	readonly prices: Prices | null;
	/** Number of pieces in a pack, by item, where the scenario gives one. */
	readonly packs: { readonly [P in Piece]?: number };
}

export interface Dressing {
	readonly id: string;
	/** Dressings of one patient are turned at the same moments. */
	readonly patient: string;
	readonly tissue: Tissue;
	/** null where exudate was given in mL per day without an area. */
	readonly areaCm2: number | null;
	readonly exudateMlPerDay: number;
	readonly slough: Slough;
	readonly difficulty: Difficulty;
	readonly outflow: { readonly totalMlPerDay: number; readonly burstsPerDay: number } | null;
	readonly foam: readonly { readonly areaCm2: number; readonly thicknessCm: number }[];
	/** Sum of area × thickness over the pieces. */
	readonly foamVolumeMl: number;
	/** In order of `fromMin`; the first is in force at the start. */
	readonly regimens: readonly Regimen[];
	readonly canisterMl: number;
	readonly sourceMl: number;
	/** What the canister holds at the start. */
	readonly canisterHoldsMl: number;
	/** What is left in the source at the start; null: it is full. */
	readonly sourceLeftMl: number | null;
	/** Age of the dressing at the start. */
	readonly ageMin: number;
}

export interface Regimen {
	readonly fromMin: number;
	readonly begin: Beginning;
	readonly depthMmHg: number;
	/** 0: continuous suction. */
	readonly fillMl: number;
	/** True where the file asked for the suggested fill. */
	readonly fillSuggested: boolean;
	/** 0 where the fill is 0. */
	readonly dwellMin: number;
	/** Suction period, timed from pump start; Infinity where the fill is 0. */
	readonly suctionMin: number;
	/** Share of the pump's flow that is let work in a drawdown, 0…1. */
	readonly drawdown: number;
	/** False where it is the constant `pump.drawdown`. */
	readonly drawdownGiven: boolean;
}

/** A regimen of `compare:`, laid over the first regimen of one dressing or of all. */
export interface RegimenPatch {
	readonly name: string;
	readonly dressing: string | null;
	/** The dressing's regimens with the patch merged in, by dressing id. */
	readonly regimens: { readonly [dressing: string]: readonly Regimen[] };
	/** Size of canister and source of the dressings it is laid over; null: as they are. */
	readonly canisterMl: number | null;
	readonly sourceMl: number | null;
	/** What they hold at the start; null: as in the scenario. */
	readonly canisterHoldsMl: number | null;
	readonly sourceLeftMl: number | null;
}

/** Values of each setting that is varied; every one is run with every other. */
export interface SweepGrid {
	/** null: every dressing. */
	readonly dressing: string | null;
	/**
	 * Depths in mmHg below ambient; starts are clock times of the first phase, minutes after midnight; apart are the minutes
	 * by which each further dressing begins its cycles later than the one before.
	 */
	readonly axes: { readonly [A in AxisName]?: readonly number[] };
}

export interface Care {
	readonly response: { readonly dayMin: number; readonly nightMin: number; readonly spread: number };
	/** Clock times, minutes after midnight, in order. */
	readonly roundsClockMin: readonly number[];
	/** null: no turning. */
	readonly turningMin: number | null;
	/** null: unlimited. */
	readonly nurses: number | null;
	readonly dressingChange: { readonly everyMin: number } | { readonly atMin: readonly number[] } | null;
	/** Stretches of the day that a ward keeps clear where it can. */
	readonly avoid: { readonly [T in AvoidedTime]: readonly ClockSpan[] };
}

/** Minutes after midnight; the end lies before the start where the stretch runs over midnight. */
export interface ClockSpan {
	readonly fromMin: number;
	readonly toMin: number;
}

export type Happening = { readonly atMin: number; readonly dressing: string } & (
	| { readonly what: Exclude<HappeningKind, "breach" | "clog" | "off" | "bleed"> }
	/** Size in L/min/mmHg. */
	| { readonly what: "breach"; readonly size: number }
	/** Share of the port that the debris closes, 0…1. */
	| { readonly what: "clog"; readonly share: number }
	| { readonly what: "off"; readonly forMin: number }
	| { readonly what: "bleed"; readonly volumeMl: number; readonly forMin: number }
);

export interface Solution {
	readonly name: string;
	/** True where the file names it. */
	readonly named: boolean;
}

/** What has a price and comes in packs. */
type Piece = "canister" | "source" | "kit" | "line";

interface Prices {
	readonly currency: string;
	readonly asOf: string;
	/** Price of one piece. */
	readonly items: { readonly [P in Piece | "port"]?: number };
}

interface Defaulted {
	/** Path in the file, e.g. `dressings[0].unit.canister`. */
	readonly path: string;
	/** As it would be written in a file, e.g. `1000 mL`. */
	readonly value: string;
	readonly provenance: Provenance;
	readonly source: string;
}

/** Settings as text, alike where the day is: whether a number was given or worked out makes no other day. */
export const settingsText = (settings: unknown): string =>
	JSON.stringify(settings, (key, value) => (key === "fillSuggested" || key === "drawdownGiven" ? undefined : value));
