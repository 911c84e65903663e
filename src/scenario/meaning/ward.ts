import type { PieceKind } from "../../vocabulary/index.ts";
import type { Dressing, ScenarioFrame } from "./scenario.ts";

/** A ward over weeks, after reading. Minutes count from `start`; what comes before it (the warm-up) is negative. Its nurses stand in `shifts`. */
export interface WardScenario extends ScenarioFrame {
	/** 0 is Monday. */
	readonly startWeekday: number;
	/** Whole days that are simulated before `start` and left out of the count. */
	readonly warmUpMin: number;
	readonly kinds: readonly WardKind[];
	/** Therapy units; null: unlimited. */
	readonly units: number | null;
	/** What a patient does who finds no unit free. */
	readonly full: "wait" | "away";
	/** Poisson arrivals: `perDay` on a day of factor 1; the factors are from Monday. */
	readonly arrivals: { readonly perDay: number; readonly factors: readonly number[] } | null;
	/** null where nobody arrives by chance and no census is given. */
	readonly length: TherapyLength | null;
	/** Patients in a bed when the simulation begins, by place in `kinds`. */
	readonly census: readonly number[];
	readonly beds: readonly NamedBed[];
	readonly shifts: readonly NurseShift[];
	readonly stores: readonly StoreItem[];
	readonly policies: readonly Policy[];
	readonly prices: { readonly currency: string; readonly asOf: string } | null;
}

/** A kind of dressing: one patient in `share / sum of shares` wears it. */
export interface WardKind {
	readonly id: string;
	readonly share: number;
	readonly dressing: Dressing;
	/** Name of the solution that is filled in. */
	readonly solution: string;
}

/** How long a therapy lasts. */
export type TherapyLength =
	| { readonly form: "lognormal"; readonly medianMin: number; readonly spread: number }
	| { readonly form: "exponential"; readonly meanMin: number }
	| { readonly form: "table"; readonly rows: readonly { readonly lengthMin: number; readonly share: number }[] };

interface NamedBed {
	readonly id: string;
	/** Place in `kinds`. */
	readonly kind: number;
	readonly startMin: number;
	readonly endMin: number;
}

export interface NurseShift {
	readonly fromClockMin: number;
	/** null: unlimited. */
	readonly nurses: number | null;
}

export interface StoreItem {
	/** e.g. `canister 1000 mL`, `saline 1000 mL`, `dressing kit`. */
	readonly name: string;
	readonly kind: PieceKind;
	/** null where size means nothing. */
	readonly sizeMl: number | null;
	/** Name of the solution; null for what is none. */
	readonly solution: string | null;
	/** On the shelf at `start`, new; null: unlimited. */
	readonly stock: number | null;
	readonly pack: number;
	readonly price: number | null;
	/** null: not given. */
	readonly weightG: number | null;
	/** null: keeps for ever. */
	readonly shelfMin: number | null;
	readonly lead: { readonly medianMin: number; readonly spread: number };
	/** Days on which orders go out, 0 is Monday; null: at any time. */
	readonly orderDays: readonly number[] | null;
	/** Clock time at which the orders of an order day go out. */
	readonly cutOffClockMin: number;
	/** Every how many minutes the shelf is looked at; null: at every use. */
	readonly reviewMin: number | null;
	/** What is on the shelf and on order at which an order is due; null: to be found for `service`. */
	readonly reorder: number | null;
	readonly upTo: number | null;
	/** Share of the time in which a piece should be on the shelf. */
	readonly service: number;
	/** Place in `stores` of what is used where this is out. */
	readonly substitute: number | null;
}

/** Another way to treat everybody: a regimen laid over the first of every kind that has a fill, other sizes. */
export interface Policy {
	readonly name: string;
	/** By place in `kinds`. */
	readonly dressings: readonly Dressing[];
}
