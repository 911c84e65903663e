import type { Cause } from "../therapy/index.ts";
import type { Assumption, Caution, Spread } from "./day-result.ts";

/** What `supply --json` prints: format `slackwater/supply@1`. Minutes and days count from the scenario's start. */
export interface SupplyResult {
	readonly format: "slackwater/supply@1";
	readonly scenario: WardSummary;
	/** The first replication, event by event. */
	readonly trace: { readonly events: number; readonly hash: string };
	/** In the order of the scenario. */
	readonly items: readonly ItemSupply[];
	/** In order of time: on each order day what it takes to last until the delivery of the next one. */
	readonly orders: readonly PlannedOrder[];
	readonly beds: BedsResult;
	readonly nurses: readonly ShiftHours[];
	readonly waste: WasteResult;
	/** null where no item has a price. */
	readonly cost: CostResult | null;
	/** Today's mix first, then those of `compare:`; empty where there are none of these. */
	readonly policies: readonly PolicyResult[];
	readonly cautions: readonly Caution[];
	readonly assumptions: readonly Assumption[];
}

export interface WardSummary {
	readonly title: string;
	readonly seed: string;
	readonly version: string;
	readonly start: string;
	readonly startClockMin: number;
	readonly horizonMin: number;
	readonly warmUpMin: number;
	readonly days: number;
	readonly weeks: number;
	readonly replications: number;
	readonly chance: "on" | "off";
	/** null: unlimited. */
	readonly units: number | null;
	readonly full: "wait" | "away";
	readonly kinds: readonly {
		readonly id: string;
		readonly share: number;
		readonly regimen: string;
		readonly canisterMl: number;
		readonly sourceMl: number | null;
		readonly solution: string | null;
	}[];
	readonly arrivalsPerWeek: number | null;
	readonly meanLengthMin: number | null;
	readonly currency: string | null;
	readonly pricesAsOf: string | null;
}

/** Whole pieces, over the replications; one value a day or a week, in columns of equal length. */
export interface CountSeries {
	readonly mean: readonly number[];
	readonly p10: readonly number[];
	readonly p50: readonly number[];
	readonly p90: readonly number[];
}

export interface CountSpread {
	readonly mean: number;
	readonly p10: number;
	readonly p50: number;
	readonly p90: number;
}

export interface ItemSupply {
	/** e.g. `canister 1000 mL`. */
	readonly item: string;
	readonly kind: "canister" | "solution" | "kit" | "port" | "line";
	readonly sizeMl: number | null;
	readonly pack: number;
	readonly price: number | null;
	/** Opening stock; null: unlimited. */
	readonly stock: number | null;
	/** What is asked of the stores, met or not. */
	readonly demand: {
		readonly total: CountSpread;
		readonly days: CountSeries;
		readonly weeks: CountSeries;
		readonly causes: readonly {
			readonly cause: Cause;
			readonly total: CountSpread;
			readonly days: CountSeries;
			readonly weeks: CountSeries;
		}[];
	};
	/** null where the stock is unlimited. */
	readonly store: StoreResult | null;
}

export interface StoreResult {
	readonly rule: RuleResult;
	/** On the shelf at the end of each day. */
	readonly onHand: CountSeries;
	/** Chance of being out at least once, on each day. */
	readonly outOnDay: readonly number[];
	/** Chance of having been out at least once by the end of each day. */
	readonly outByDay: readonly number[];
	/** The same for the whole time, with its Wilson 95 % interval. */
	readonly stockOut: {
		readonly probability: number;
		readonly low: number;
		readonly high: number;
	};
	/** Share of the time with a piece on the shelf: what `service` asks for. */
	readonly ready: Spread;
	/** Share of pieces that were there when they were asked for; null where none was asked for. */
	readonly fillRate: number | null;
	readonly short: CountSpread;
	/** Pieces of another size used instead. */
	readonly substituted: CountSpread;
	/** Hours of therapy lost because the item was out, all patients together. */
	readonly offHours: Spread;
	readonly ordered: CountSpread;
	readonly received: CountSpread;
	readonly used: CountSpread;
	readonly expired: CountSpread;
	readonly endStock: CountSpread;
}

export interface RuleResult {
	readonly reorder: number;
	readonly upTo: number;
	/** Given by the scenario, or found for the service level. */
	readonly origin: "given" | "found";
	/** Asked for: share of the time in which a piece should be on the shelf. */
	readonly service: number;
	/** 95 % interval of the reorder point: those for which Student's interval of the share of the time, over groups of the replications that it was sought in, holds `service`. null where it was given, or too few tell. */
	readonly low95: number | null;
	readonly high95: number | null;
	/** What the other half of the replications would have chosen; null where it was given, or there is no other half. */
	readonly otherHalf: number | null;
	/** The share that it comes to, on the other half of the replications than the one that it was sought in; where it was given, on all. */
	readonly reached: {
		readonly mean: number;
		readonly low95: number | null;
		readonly high95: number | null;
		readonly onOtherHalf: boolean;
	};
	/** Demand per day and its standard deviation, in all replications, with stores that lack nothing. */
	readonly demandPerDay: number;
	readonly demandSdPerDay: number;
	/** Mean of the longest usual time without a delivery: lead time, review and order days, days. */
	readonly exposureDays: number;
	/** The text-book reorder point μ·T + z·√(T·σ² + μ²·σT²) for the same level, and the share of the time that it comes to in the simulation. */
	readonly textBook: {
		readonly reorder: number;
		readonly service: number | null;
	};
	/** The same share with reorder points about the one in force, and the same quantity above them. */
	readonly ladder: readonly {
		readonly reorder: number;
		readonly service: number;
	}[];
}

export interface PlannedOrder {
	readonly item: string;
	readonly atMin: number;
	readonly arrivesMin: number;
	readonly packs: number;
	readonly packSize: number;
	readonly pieces: number;
	readonly cost: number | null;
	/** What is on the shelf and on order before it, after the median use up to then. */
	readonly position: number;
	/** Chance of being out before the delivery of the next order day, had this order not gone out. */
	readonly without: ChanceBy;
	/** The same chance with this order: of being out before it comes, or after it. */
	readonly with: ChanceBy;
}

interface ChanceBy {
	readonly byMin: number;
	readonly probability: number;
}

export interface BedsResult {
	/** From the first day of the warm-up on (negative days), patients with a unit at each day's end. */
	readonly firstDay: number;
	readonly inBed: CountSeries;
	readonly waiting: CountSeries;
	/** Patients in the horizon, warm-up left out. */
	readonly arrived: CountSpread;
	readonly begun: CountSpread;
	readonly left: CountSpread;
	readonly turnedAway: CountSpread;
	readonly meanInBed: Spread;
	/** Of patients who began in the horizon. */
	readonly shareWaited: number;
	readonly meanWaitMin: Spread;
	readonly therapyDays: Spread;
}

interface ShiftHours {
	readonly fromClockMin: number;
	readonly nurses: number | null;
	/** Hands-on hours of one such shift. */
	readonly hours: Spread;
}

interface WasteResult {
	/** Liquid in canisters that are thrown away, mL. */
	readonly liquidMl: Spread;
	/** Solution thrown away with its source, mL. */
	readonly solutionMl: Spread;
	/** Pieces with a weight given, and liquid at 1 g/mL, kg. */
	readonly weightKg: Spread;
	readonly unweighed: readonly string[];
}

export interface CostResult {
	readonly currency: string;
	readonly asOf: string;
	readonly items: readonly {
		readonly item: string;
		readonly price: number;
		/** Used with orders by the rules: where something ran out, less than was needed. */
		readonly used: CountSpread;
		readonly expiredMean: number;
		/** Used with stores that lack nothing. */
		readonly needed: CountSpread;
	}[];
	/** Items without a price. */
	readonly unpriced: readonly string[];
	/** Used and expired with orders by the rules, of all items with a price. */
	readonly total: Spread;
	/** The same patients with stores that lack nothing, where nothing expires: today's mix of the policies. */
	readonly totalNeeded: Spread;
}

export interface PolicyResult {
	readonly name: string;
	/** null where no item has a price. */
	readonly cost: Spread | null;
	/** Less today's mix, with the same patients (common random numbers). */
	readonly difference: Spread | null;
	/** Of the difference, had the patients been others: how much the common numbers save. */
	readonly variance: {
		readonly paired: number;
		readonly independent: number;
	} | null;
	readonly items: readonly {
		readonly item: string;
		readonly used: CountSpread;
	}[];
	readonly nurseHours: Spread;
	readonly nurseHoursDifference: Spread | null;
}
