import { lognormal, Substream } from "../../../engine/index.ts";
import type { PlannedOrder, RuleResult } from "../../../results/index.ts";
import type { StoreItem, WardScenario } from "../../../scenario/index.ts";
import { FrequencyTable } from "../../../statistics/index.ts";
import { orderMoment } from "../../../ward/index.ts";
import { lookMin, tailOf } from "./rule-plan.ts";
import { countBefore, type Demand } from "./ward-demand.ts";

/**
 * The orders to be sent, order day by order day. On each of them the stock (what is on the shelf and on order, after the
 * median use up to then) has to last until the delivery of the *next* order day: between the delivery of this day and that
 * one there should be a piece on the shelf for the wanted share of the time. Where there would not be, or where the rule
 * calls for it, an order goes out: up to what the rule says, and at least so much that there is. `courses` is the demand of
 * replications whose stores lack nothing, by item; each draws its own lead times.
 */
export function planOrders(ward: WardScenario, rules: readonly (RuleResult | null)[], courses: Demand): PlannedOrder[] {
	const orders = ward.stores.flatMap((item, i) => {
		const rule = rules[i];
		const ofItem = courses.map((items) => items[i]);
		return rule === null ? [] : ordersOf(ward, item, rule, ofItem);
	});
	return orders.sort((a, b) => a.atMin - b.atMin);
}

function ordersOf(ward: WardScenario, item: StoreItem, rule: RuleResult, courses: readonly Float64Array[]) {
	const { lead, pack, price } = item;
	const moments = orderMoments(ward, item);
	const arrivals = courses.map((_, r) => arrivalsOf(ward, item, moments, r));
	const share = (of: (r: number) => boolean) => courses.filter((_, r) => of(r)).length / courses.length;
	const orders: PlannedOrder[] = [];
	let ordered = 0;
	for (let j = 0; j + 1 < moments.length; j++) {
		const atMin = moments[j];
		const before = courses.map((times) => countBefore(times, atMin));
		const position = (item.stock ?? 0) + ordered - median(before);
		const usedBy = (r: number, at: number) => countBefore(courses[r], at) - before[r];
		const first = courses.map((_, r) => usedBy(r, arrivals[r][j]));
		const next = courses.map((_, r) => usedBy(r, arrivals[r][j + 1]));
		/** Whether so much at this moment keeps a piece on the shelf, between the two deliveries, as much of the time as is wanted. */
		const lasts = (there: number): boolean => {
			const out = courses.map((times, r) => {
				const [from, to] = [arrivals[r][j], arrivals[r][j + 1]];
				if (to <= from) return 0;
				const emptyAt = there <= 0 ? from : (times[before[r] + there - 1] ?? to);
				return Math.max(0, to - Math.max(from, emptyAt)) / (to - from);
			});
			const mean = out.reduce((sum, one) => sum + one, 0) / out.length;
			return mean <= 1 - item.service + 1e-12;
		};
		if (position > rule.reorder && lasts(position)) continue;
		let packs = Math.max(1, Math.ceil((rule.upTo - position) / pack));
		const most = Math.ceil(Math.max(...next) / pack) + packs;
		while (packs < most && !lasts(position + packs * pack)) packs++;
		const pieces = packs * pack;
		ordered += pieces;
		const arrivesMin = atMin + lead.medianMin;
		const byMin = moments[j + 1] + lead.medianMin;
		const cost = price === null ? null : Math.round(pieces * price * 100) / 100;
		const order = { item: item.name, atMin, arrivesMin, packs, packSize: pack, pieces, cost, position };
		orders.push({
			...order,
			without: { byMin, probability: share((r) => next[r] > position) },
			with: { byMin, probability: share((r) => first[r] > position || next[r] > position + pieces) },
		});
	}
	return orders;
}

/** When orders of an item may go out: those of the time shown, and the one after it. */
function orderMoments(ward: WardScenario, item: StoreItem): number[] {
	const moments: number[] = [];
	for (let look = 0; ; look += lookMin(item)) {
		const at = orderMoment(look, item, ward);
		if (at !== moments.at(-1)) moments.push(at);
		if (at >= ward.horizonMin) return moments;
	}
}

/** When orders of these moments would be there in one replication. */
function arrivalsOf(ward: WardScenario, { name, lead }: StoreItem, moments: readonly number[], replication: number) {
	const endMin = ward.horizonMin + tailOf(ward);
	const stream = new Substream(`${ward.seed}: order list`, name, 0);
	stream.reset(replication);
	return moments.map((at) => {
		const leadMin = ward.chance && lead.spread > 0 ? lognormal(stream, lead.medianMin, lead.spread) : lead.medianMin;
		return Math.min(endMin, at + leadMin);
	});
}

function median(counts: readonly number[]): number {
	const table = new FrequencyTable();
	for (const count of counts) table.add(count);
	return table.quantiles([0.5])[0];
}
