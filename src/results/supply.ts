import * as z from "zod";
import { demandCauses, pieceKinds } from "../vocabulary/index.ts";
import { canonicalJson, type Frozen } from "./format.ts";
import { atLeast0, count, quantiles, restingOn, share, spread } from "./parts.ts";

const text = z.string();

/** Whole pieces, over the replications. */
const countSpread = z.object({ mean: atLeast0, ...quantiles(count) });

/** The same with one value a day or a week, in columns of equal length. */
const countSeries = z.object({ mean: z.array(atLeast0), ...quantiles(z.array(count)) });

const wardSummary = z.object({
	title: text,
	seed: text,
	version: text,
	start: text,
	startClockMin: atLeast0,
	horizonMin: atLeast0,
	warmUpMin: atLeast0,
	days: count,
	weeks: count,
	replications: count,
	chance: z.enum(["on", "off"]),
	/** null: unlimited. */
	units: count.nullable(),
	full: z.enum(["wait", "away"]),
	kinds: z.array(
		z.object({
			id: text,
			share: atLeast0,
			regimen: text,
			canisterMl: atLeast0,
			sourceMl: atLeast0.nullable(),
			solution: text.nullable(),
		}),
	),
	arrivalsPerWeek: atLeast0.nullable(),
	meanLengthMin: atLeast0.nullable(),
	currency: text.nullable(),
	pricesAsOf: text.nullable(),
});

const chanceBy = z.object({ byMin: atLeast0, probability: share });

const plannedOrder = z.object({
	item: text,
	atMin: atLeast0,
	arrivesMin: atLeast0,
	packs: count,
	packSize: count,
	pieces: count,
	cost: atLeast0.nullable(),
	/** What is on the shelf and on order before it, after the median use up to then. */
	position: z.int(),
	/** Chance of being out before the delivery of the next order day, had this order not gone out. */
	without: chanceBy,
	/** The same chance with this order: of being out before it comes, or after it. */
	with: chanceBy,
});

const ruleResult = z.object({
	reorder: count,
	upTo: count,
	/** Given by the scenario, or found for the service level. */
	origin: z.enum(["given", "found"]),
	/** Asked for: share of the time in which a piece should be on the shelf. */
	service: share,
	/** 95 % interval of the reorder point: those for which Student's interval of the share of the time, over groups of the replications that it was sought in, holds `service`. null where it was given, or too few tell. */
	low95: count.nullable(),
	high95: count.nullable(),
	/** What the other half of the replications would have chosen; null where it was given, or there is no other half. */
	otherHalf: count.nullable(),
	/** The share that it comes to, on the other half of the replications than the one that it was sought in; where it was given, on all. */
	reached: z.object({ mean: share, low95: share.nullable(), high95: share.nullable(), onOtherHalf: z.boolean() }),
	/** Demand per day and its standard deviation, in all replications, with stores that lack nothing. */
	demandPerDay: atLeast0,
	demandSdPerDay: atLeast0,
	/** Mean of the longest usual time without a delivery: lead time, review and order days, days. */
	exposureDays: atLeast0,
	/** The text-book reorder point μ·T + z·√(T·σ² + μ²·σT²) for the same level, and the share of the time that it comes to in the simulation. */
	textBook: z.object({ reorder: count, service: share.nullable() }),
	/** The same share with reorder points about the one in force, and the same quantity above them. */
	ladder: z.array(z.object({ reorder: count, service: share })),
});

const storeResult = z.object({
	rule: ruleResult,
	/** Share of the time with a piece on the shelf: what `service` asks for. */
	ready: spread,
	/** Share of pieces that were there when they were asked for; null where none was asked for. */
	fillRate: share.nullable(),
	/** Chance of having been out in the whole time, with its Wilson 95 % interval. */
	stockOut: z.object({ probability: share, low: share, high: share }),
	short: countSpread,
	/** Pieces of another size used instead. */
	substituted: countSpread,
	/** Hours of therapy lost because the item was out, all patients together. */
	offHours: spread,
	ordered: countSpread,
	received: countSpread,
	used: countSpread,
	expired: countSpread,
	endStock: countSpread,
	/** On the shelf at the end of each day. */
	onHand: countSeries,
	/** Chance of being out at least once, on each day. */
	outOnDay: z.array(share),
	/** Chance of having been out at least once by the end of each day. */
	outByDay: z.array(share),
});

const demand = { total: countSpread, days: countSeries, weeks: countSeries };

const itemSupply = z.object({
	/** e.g. `canister 1000 mL`. */
	item: text,
	kind: z.enum(pieceKinds),
	sizeMl: atLeast0.nullable(),
	pack: count,
	price: atLeast0.nullable(),
	/** Opening stock; null: unlimited. */
	stock: count.nullable(),
	/** What is asked of the stores, met or not. */
	demand: z.object({ ...demand, causes: z.array(z.object({ cause: z.enum(demandCauses), ...demand })) }),
	/** null where the stock is unlimited. */
	store: storeResult.nullable(),
});

const bedsResult = z.object({
	/** From the first day of the warm-up on (negative days), patients with a unit at each day's end. */
	firstDay: z.int(),
	inBed: countSeries,
	waiting: countSeries,
	/** Patients in the horizon, warm-up left out. */
	arrived: countSpread,
	begun: countSpread,
	left: countSpread,
	turnedAway: countSpread,
	meanInBed: spread,
	/** Of patients who began in the horizon. */
	shareWaited: share,
	meanWaitMin: spread,
	therapyDays: spread,
});

const shiftHours = z.object({
	fromClockMin: atLeast0,
	nurses: count.nullable(),
	/** Hands-on hours of one such shift. */
	hours: spread,
});

const wasteResult = z.object({
	/** Liquid in canisters that are thrown away, mL. */
	liquidMl: spread,
	/** Solution thrown away with its source, mL. */
	solutionMl: spread,
	/** Pieces with a weight given, and liquid at 1 g/mL, kg. */
	weightKg: spread,
	unweighed: z.array(text),
});

const costResult = z.object({
	currency: text,
	asOf: text,
	items: z.array(
		z.object({
			item: text,
			price: atLeast0,
			/** Used with orders by the rules: where something ran out, less than was needed. */
			used: countSpread,
			expiredMean: atLeast0,
			/** Used with stores that lack nothing. */
			needed: countSpread,
		}),
	),
	unpriced: z.array(text),
	/** Used and expired with orders by the rules, of all items with a price. */
	total: spread,
	/** The same patients with stores that lack nothing, where nothing expires: today's mix of the policies. */
	totalNeeded: spread,
});

const policyResult = z.object({
	name: text,
	/** null where no item has a price. */
	cost: spread.nullable(),
	/** Less today's mix, with the same patients (common random numbers). */
	difference: spread.nullable(),
	/** Of the difference, had the patients been others: how much the common numbers save. */
	variance: z.object({ paired: atLeast0, independent: atLeast0 }).nullable(),
	items: z.array(z.object({ item: text, used: countSpread })),
	nurseHours: spread,
	nurseHoursDifference: spread.nullable(),
});

/** What `supply --json` prints. Minutes and days count from the scenario's start. */
export const supplyFormat = z
	.object({
		format: z.literal("slackwater/supply@1"),
		scenario: wardSummary,
		/** The first replication, event by event. */
		trace: z.object({ events: count, hash: text }),
		/** In order of time: on each order day what it takes to last until the delivery of the next one. */
		orders: z.array(plannedOrder),
		/** In the order of the scenario. */
		items: z.array(itemSupply),
		beds: bedsResult,
		nurses: z.array(shiftHours),
		waste: wasteResult,
		/** null where no item has a price. */
		cost: costResult.nullable(),
		/** Today's mix first, then those of `compare:`; empty where there are none of these. */
		policies: z.array(policyResult),
		...restingOn,
	})
	.meta({ $id: "slackwater-supply-1", title: "slackwater/supply@1" });

export type SupplyResult = Frozen<z.infer<typeof supplyFormat>>;
export type WardSummary = Frozen<z.infer<typeof wardSummary>>;
export type CountSpread = Frozen<z.infer<typeof countSpread>>;
export type CountSeries = Frozen<z.infer<typeof countSeries>>;
export type PlannedOrder = Frozen<z.infer<typeof plannedOrder>>;
export type RuleResult = Frozen<z.infer<typeof ruleResult>>;
export type StoreResult = Frozen<z.infer<typeof storeResult>>;
export type ItemSupply = Frozen<z.infer<typeof itemSupply>>;
export type BedsResult = Frozen<z.infer<typeof bedsResult>>;
export type CostResult = Frozen<z.infer<typeof costResult>>;
export type PolicyResult = Frozen<z.infer<typeof policyResult>>;

export const supplyJson = (result: SupplyResult): string => canonicalJson(result, supplyFormat);
