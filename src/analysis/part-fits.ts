import type { StoreItem, WardScenario } from "../scenario/index.ts";
import type { Found } from "./find-rules.ts";
import { exposureDays } from "./lead-time.ts";
import { type SupplyPart, wardBlock } from "./supply-collector.ts";
import { type SupplyLayout, supplyLayout } from "./supply-layout.ts";
import type { CountSpread, PlannedOrder, RuleResult } from "./supply-result.ts";

/** What came from a file: anything at all, looked at before it is trusted. */
type Unknown<T> = { readonly [K in keyof T]?: unknown } | null | undefined;

/** By how much rounding may take a mean or a sum of squares past its bounds. */
const rounding = 1e-9;

/**
 * Whether data is what the blocks `first` … `last` − 1 of a ward may come to: every list of its length, every count whole,
 * each replication counted once in every place, every value finite and within what its histogram saw, bins in the order of
 * `mergedPart`.
 */
export function partFits(
	ward: WardScenario,
	data: unknown,
	first: number,
	last: number,
): data is SupplyPart {
	const part = data as Unknown<SupplyPart>;
	const layout = supplyLayout(ward);
	const end = Math.min(last * wardBlock, ward.replications);
	const replications = Math.max(0, end - first * wardBlock);
	const { tallies, measures, sums } = part ?? {};
	if (
		part?.firstBlock !== first ||
		part.replications !== replications ||
		!isList(tallies, layout.tallies) ||
		!isList(measures, layout.measures.length) ||
		!isList(sums, last - first)
	)
		return false;
	const bounds = measures.map((one, i) =>
		boundsOf(one, layout.measures[i], replications),
	);
	const whether = places01(layout);
	return (
		tallies.every((tally, place) =>
			isTally(tally, replications, whether.has(place) ? 1 : null),
		) &&
		sharesFit(layout, tallies as SupplyPart["tallies"]) && // each was looked at just now
		bounds.every((one) => one !== null) &&
		sums.every((block, i) => {
			const from = (first + i) * wardBlock;
			const count = Math.min(from + wardBlock, end) - from;
			return (
				isList(block, bounds.length) &&
				block.every((moments, place) =>
					areMoments(moments, count, bounds[place]),
				)
			);
		})
	);
}

/** Whether data is what a search in a ward may have found: rules that the scenario gives and others such as could have been found, orders of its items, and what it needs of them. */
export function foundFits(ward: WardScenario, data: unknown): data is Found {
	const { rules, orders, plenty } = (data ?? {}) as NonNullable<Unknown<Found>>;
	return (
		isList(rules, ward.stores.length) &&
		rules.every((rule, i) => ruleFits(ward.stores[i], rule)) &&
		Array.isArray(orders) &&
		orders.every((order, i) => orderFits(ward, order, orders[i - 1])) &&
		plentyFits(ward, plenty)
	);
}

function plentyFits(ward: WardScenario, data: unknown): boolean {
	if (ward.stores.every(({ stock }) => stock === null)) return data === null;
	const plenty = data as Unknown<NonNullable<Found["plenty"]>>;
	const hasPrices = ward.stores.some(({ price }) => price !== null);
	return (
		isList(plenty?.used, ward.stores.length) &&
		plenty.used.every(isCountSpread) &&
		(hasPrices ? isSpread(plenty.cost, ward) : plenty.cost === null)
	);
}

function isCountSpread(data: unknown): boolean {
	const { mean, p10, p50, p90 } = (data ?? {}) as NonNullable<
		Unknown<CountSpread>
	>;
	return (
		isAmount(mean) &&
		isCount(p10) &&
		isCount(p50) &&
		isCount(p90) &&
		p10 <= p50 &&
		p50 <= p90
	);
}

function isSpread(data: unknown, { replications }: WardScenario): boolean {
	type Cost = NonNullable<NonNullable<Found["plenty"]>["cost"]>;
	const { mean, halfWidth95, p10, p50, p90, quantiles95 } = (data ??
		{}) as NonNullable<Unknown<Cost>>;
	return (
		isAmount(mean) &&
		(replications < 2 ? halfWidth95 === null : isAmount(halfWidth95)) &&
		isAmount(p10) &&
		isAmount(p50) &&
		isAmount(p90) &&
		p10 <= p50 &&
		p50 <= p90 &&
		isList(quantiles95, 3) &&
		quantiles95.every((one) => {
			const { low, high } = (one ?? {}) as Readonly<Record<string, unknown>>;
			return (
				(low === null || isAmount(low)) && (high === null || isAmount(high))
			);
		})
	);
}

/** Whether data is an order of the list, no earlier than the one before it. */
function orderFits(
	ward: WardScenario,
	data: unknown,
	previous: Unknown<PlannedOrder>,
): boolean {
	const order = data as Unknown<PlannedOrder>;
	const item = ward.stores.find(({ name }) => name === order?.item);
	if (item === undefined || item.stock === null) return false;
	const { atMin, arrivesMin, packs, packSize, pieces, cost, position } =
		order ?? {};
	const withOrder = order?.with as Unknown<PlannedOrder["with"]>;
	const without = order?.without as Unknown<PlannedOrder["without"]>;
	return (
		isAmount(atMin) &&
		atMin < ward.horizonMin &&
		(previous === undefined || Number(previous?.atMin) <= atMin) &&
		arrivesMin === atMin + item.lead.medianMin &&
		isCount(packs) &&
		packs > 0 &&
		packSize === item.pack &&
		pieces === packs * item.pack &&
		cost ===
			(item.price === null
				? null
				: Math.round(packs * item.pack * item.price * 100) / 100) &&
		Number.isSafeInteger(position) &&
		isAmount(without?.byMin) &&
		without.byMin >= arrivesMin &&
		withOrder?.byMin === without.byMin &&
		isShare(without.probability) &&
		isShare(withOrder.probability) &&
		withOrder.probability <= without.probability
	);
}

function ruleFits(item: StoreItem, data: unknown): boolean {
	if (data === null || item.stock === null) return data === item.stock;
	const rule = data as Unknown<RuleResult>;
	const textBook = rule?.textBook as Unknown<RuleResult["textBook"]>;
	const reached = rule?.reached as Unknown<RuleResult["reached"]>;
	const isFound = item.reorder === null;
	const point = (data: unknown) => data === null || (isFound && isCount(data));
	const bound = (data: unknown) => data === null || isShare(data);
	return (
		isCount(rule?.reorder) &&
		isCount(rule.upTo) &&
		rule.upTo > rule.reorder &&
		rule.reorder === (item.reorder ?? rule.reorder) &&
		rule.origin === (item.reorder === null ? "found" : "given") &&
		rule.service === item.service &&
		point(rule.low95) &&
		point(rule.high95) &&
		point(rule.otherHalf) &&
		(rule.low95 === null) === (rule.high95 === null) &&
		Number(rule.low95 ?? 0) <= rule.reorder &&
		Number(rule.high95 ?? rule.reorder) >= rule.reorder &&
		isShare(reached?.mean) &&
		bound(reached.low95) &&
		bound(reached.high95) &&
		Number(reached.low95 ?? 0) <= reached.mean &&
		Number(reached.high95 ?? 1) >= reached.mean &&
		typeof reached.onOtherHalf === "boolean" &&
		isAmount(rule.demandPerDay) &&
		isAmount(rule.demandSdPerDay) &&
		rule.exposureDays === exposureDays(item) &&
		isCount(textBook?.reorder) &&
		(textBook.service === null || isShare(textBook.service)) &&
		Array.isArray(rule.ladder) &&
		rule.ladder.every(
			(step: Unknown<RuleResult["ladder"][number]>) =>
				isCount(step?.reorder) && isShare(step.service),
		)
	);
}

/** Tallies that count whether something came to pass. */
const places01 = ({ items, days }: SupplyLayout): ReadonlySet<number> =>
	new Set(
		items.flatMap(({ outOnDay, outByDay }) =>
			[outOnDay, outByDay].flatMap((first) =>
				Array.from({ length: days }, (_, day) => first + day),
			),
		),
	);

/** What is a share of something else is no more than that: pieces short of those asked for, patients who waited of those who began. */
function sharesFit(
	{ items, waited, begun }: SupplyLayout,
	tallies: SupplyPart["tallies"],
): boolean {
	const sum = (place: number) => {
		let all = 0;
		for (let i = 0; i < tallies[place].length; i += 2)
			all += tallies[place][i] * tallies[place][i + 1];
		return all;
	};
	return (
		sum(waited) <= sum(begun) &&
		items.every(({ short, demand }) => sum(short) <= sum(demand.total))
	);
}

function isTally(
	data: unknown,
	replications: number,
	most: number | null,
): boolean {
	if (!Array.isArray(data) || data.length % 2 !== 0) return false;
	let sum = 0;
	for (let i = 0; i < data.length; i += 2) {
		const [value, times] = [data[i], data[i + 1]];
		if (!isCount(value) || !isCount(times) || times === 0) return false;
		if (i > 0 && value <= data[i - 2]) return false;
		if (most !== null && value > most) return false;
		sum += times;
	}
	return sum === replications;
}

interface Bounds {
	readonly least: number;
	readonly greatest: number;
}

/** Between which values a histogram's lie; null where it is none of this width and so many values. */
function boundsOf(
	data: unknown,
	width: number,
	replications: number,
): Bounds | null {
	const histogram = data as Unknown<SupplyPart["measures"][number]>;
	if (histogram?.width !== width || !Array.isArray(histogram.bins)) return null;
	let sum = 0;
	let before = Number.NEGATIVE_INFINITY;
	const bins: readonly unknown[] = histogram.bins;
	for (const one of bins) {
		const { bin, count, least, greatest } = (one ?? {}) as Readonly<
			Record<string, unknown>
		>;
		if (
			!isNumber(least) ||
			!isNumber(greatest) ||
			!isCount(count) ||
			count === 0 ||
			least > greatest ||
			least <= before ||
			// Compared as numbers: a bin of −0 was written as 0.
			Math.floor(least / width) - Number(bin) !== 0 ||
			Math.floor(greatest / width) - Number(bin) !== 0 ||
			!Number.isSafeInteger(bin)
		)
			return null;
		sum += count;
		before = greatest;
	}
	if (sum !== replications) return null;
	const [first] = histogram.bins;
	return first === undefined
		? { least: 0, greatest: 0 }
		: { least: first.least, greatest: before };
}

function areMoments(
	data: unknown,
	count: number,
	bounds: Bounds | null,
): boolean {
	const {
		count: counted,
		mean,
		squares,
	} = (data ?? {}) as Readonly<Record<string, unknown>>;
	if (bounds === null || counted !== count) return false;
	const { least, greatest } = bounds;
	const slack = rounding * (1 + Math.abs(least) + Math.abs(greatest));
	const range = greatest - least + slack;
	return (
		isNumber(mean) &&
		mean >= least - slack &&
		mean <= greatest + slack &&
		isAmount(squares) &&
		squares <= count * range * range
	);
}

const isList = (data: unknown, length: number): data is readonly unknown[] =>
	Array.isArray(data) && data.length === length;
const isNumber = (data: unknown): data is number => Number.isFinite(data);
const isAmount = (data: unknown): data is number => isNumber(data) && data >= 0;
const isShare = (data: unknown): data is number => isAmount(data) && data <= 1;
const isCount = (data: unknown): data is number =>
	Number.isSafeInteger(data) && isAmount(data);
