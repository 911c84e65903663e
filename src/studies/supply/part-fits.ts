import * as z from "zod";
import { type CountSpread, supplyFormat } from "../../results/index.ts";
import type { StoreItem, WardScenario } from "../../scenario/index.ts";
import { type Moments, replicationsIn } from "../../statistics/index.ts";
import type { Found } from "./rules/find-rules.ts";
import { protectionDays } from "./rules/rule-plan.ts";
import { type SupplyLayout, supplyLayout } from "./run/layout.ts";
import { type SupplyPart, wardBlocked } from "./run/supply-part.ts";

// What came from a file is anything at all, looked at before it is trusted: first its shape, then what hangs together in it.

/** By how much rounding may take a mean or a sum of squares past its bounds. */
const rounding = 1e-9;

const count = z.int().nonnegative();
const amount = z.number().nonnegative();

const rising = ({ p10, p50, p90 }: Pick<CountSpread, "p10" | "p50" | "p90">) => p10 <= p50 && p50 <= p90;

/**
 * Whether data is what the blocks `first` … `last` − 1 of a ward may come to: every list of its length, every count whole,
 * each replication counted once in every place, every value finite and within what its histogram saw, bins in the order of
 * `mergedPart`.
 */
export function partFits(ward: WardScenario, data: unknown, first: number, last: number): data is SupplyPart {
	const layout = supplyLayout(ward);
	const blocks = Array.from({ length: last - first }, (_, i) => replicationsIn(first + i, wardBlocked(ward)).length);
	const replications = blocks.reduce((sum, some) => sum + some, 0);
	const bin = z.object({ bin: z.int(), count: count.positive(), least: z.number(), greatest: z.number() });
	const moments = z.object({ count, mean: z.number(), squares: amount });
	const { data: part } = z
		.object({
			firstBlock: z.literal(first),
			replications: z.literal(replications),
			tallies: z.array(z.array(count)).length(layout.tallies),
			measures: z.array(z.object({ width: z.number(), bins: z.array(bin) })).length(layout.measures.length),
			sums: z.array(z.array(moments).length(layout.measures.length)).length(blocks.length),
		})
		.safeParse(data);
	if (part === undefined) return false;
	const whether = places01(layout);
	const bounds = part.measures.map((one, i) => boundsOf(one, layout.measures[i], replications));
	return (
		part.tallies.every((table, place) => isTable(table, replications, whether.has(place) ? 1 : Infinity)) &&
		sharesFit(layout, part.tallies) &&
		bounds.every((one) => one !== null) &&
		part.sums.every((block, i) => block.every((one, place) => areMoments(one, blocks[i], bounds[place])))
	);
}

/** Whether data is what a search in a ward may have found: rules that the scenario gives and others such as could have been found, orders of its items, and what it needs of them. */
export function foundFits(ward: WardScenario, data: unknown): data is Found {
	const { data: found } = z
		.object({
			rules: z.tuple(ward.stores.map(ruleOf) as [z.ZodType, ...z.ZodType[]]), // a ward has one item at least
			orders: z.array(orderOf(ward)),
			plenty: plentyOf(ward),
		})
		.safeParse(data);
	return found?.orders.every(({ atMin }, i) => i === 0 || found.orders[i - 1].atMin <= atMin) ?? false;
}

// What is found stands in the result; a ward says more of it than the format does.
const { orders, items, cost } = supplyFormat.shape;
const { rule } = items.element.shape.store.unwrap().shape;
const { items: costs, totalNeeded } = cost.unwrap().shape;

function plentyOf(ward: WardScenario) {
	if (ward.stores.every(({ stock }) => stock === null)) return z.null();
	const needed = totalNeeded.refine(
		(spread) =>
			rising(spread) &&
			spread.p10 >= 0 &&
			spread.mean >= 0 &&
			(ward.replications < 2 ? spread.halfWidth95 === null : (spread.halfWidth95 ?? -1) >= 0) &&
			spread.quantiles95?.length === 3 &&
			spread.quantiles95.every(({ low, high }) => (low ?? 0) >= 0 && (high ?? 0) >= 0),
	);
	return z.object({
		used: z.array(costs.element.shape.needed.refine(rising)).length(ward.stores.length),
		cost: ward.stores.some(({ price }) => price !== null) ? needed : z.null(),
	});
}

const orderOf = (ward: WardScenario) =>
	orders.element.refine((order) => {
		const item = ward.stores.find(({ name }) => name === order.item);
		if (item === undefined || item.stock === null) return false;
		const pieces = order.packs * item.pack;
		return (
			order.atMin < ward.horizonMin &&
			order.arrivesMin === order.atMin + item.lead.medianMin &&
			order.packs > 0 &&
			order.packSize === item.pack &&
			order.pieces === pieces &&
			order.cost === (item.price === null ? null : Math.round(pieces * item.price * 100) / 100) &&
			order.without.byMin >= order.arrivesMin &&
			order.with.byMin === order.without.byMin &&
			order.with.probability <= order.without.probability
		);
	});

const ruleOf = (item: StoreItem): z.ZodType =>
	item.stock === null
		? z.null()
		: rule.refine(
				({ reorder, upTo, origin, service, low95, high95, otherHalf, reached, exposureDays }) =>
					(item.reorder === null
						? origin === "found"
						: origin === "given" && reorder === item.reorder && high95 === null && otherHalf === null) &&
					service === item.service &&
					exposureDays === protectionDays(item) &&
					upTo > reorder &&
					(low95 === null) === (high95 === null) &&
					(low95 ?? 0) <= reorder &&
					(high95 ?? reorder) >= reorder &&
					(reached.low95 ?? 0) <= reached.mean &&
					(reached.high95 ?? 1) >= reached.mean,
			);

/** Tallies that count whether something came to pass. */
const places01 = ({ items, days }: SupplyLayout): ReadonlySet<number> =>
	new Set(
		items.flatMap(({ outOnDay, outByDay }) =>
			[outOnDay, outByDay].flatMap((first) => Array.from({ length: days }, (_, day) => first + day)),
		),
	);

/** What is a share of something else is no more than that: pieces short of those asked for, patients who waited of those who began. */
function sharesFit({ items, waited, begun }: SupplyLayout, tallies: SupplyPart["tallies"]): boolean {
	const sum = (place: number) => {
		let all = 0;
		for (let i = 0; i < tallies[place].length; i += 2) all += tallies[place][i] * tallies[place][i + 1];
		return all;
	};
	return sum(waited) <= sum(begun) && items.every(({ short, demand }) => sum(short) <= sum(demand.total));
}

/** Values rise, none is above `most`, each came, and all came together once a replication. */
function isTable(table: readonly number[], replications: number, most: number): boolean {
	let sum = 0;
	for (let i = 0; i < table.length; i += 2) {
		const [value, times] = [table[i], table[i + 1] ?? 0];
		if (times === 0 || value > most || (i > 0 && value <= table[i - 2])) return false;
		sum += times;
	}
	return sum === replications;
}

type Bounds = { readonly least: number; readonly greatest: number };

/** Between which values a histogram's lie; null where it is none of this width and so many values. */
function boundsOf(histogram: SupplyPart["measures"][number], width: number, replications: number): Bounds | null {
	if (histogram.width !== width) return null;
	let sum = 0;
	let before = Number.NEGATIVE_INFINITY;
	for (const { bin, count: some, least, greatest } of histogram.bins) {
		// Compared by their difference: a bin of −0 was written as 0.
		const strays = [least, greatest].some((value) => Math.floor(value / width) - bin !== 0);
		if (strays || least > greatest || least <= before) return null;
		sum += some;
		before = greatest;
	}
	if (sum !== replications) return null;
	const [first] = histogram.bins;
	return first === undefined ? { least: 0, greatest: 0 } : { least: first.least, greatest: before };
}

function areMoments({ count: counted, mean, squares }: Moments, wanted: number, bounds: Bounds | null): boolean {
	if (bounds === null || counted !== wanted) return false;
	const { least, greatest } = bounds;
	const slack = rounding * (1 + Math.abs(least) + Math.abs(greatest));
	const range = greatest - least + slack;
	return mean >= least - slack && mean <= greatest + slack && squares <= wanted * range * range;
}
