import { describe, expect, test } from "vitest";
import type { PlannedOrder } from "../../src/results/index.ts";
import type { WardScenario } from "../../src/scenario/index.ts";
import { findRules } from "../../src/studies/index.ts";
import { demandOf } from "../../src/studies/supply/rules/ward-demand.ts";
import { type Raw, wardWith } from "./sample.ts";

/** Eight patients; kits are ordered on Mondays and take ten days. */
const ward = (change: (raw: Raw) => void = () => {}): WardScenario =>
	wardWith((raw) => {
		raw.chance = "on";
		raw.horizon = "56 d";
		raw.replications = 40;
		raw.ward.units = "unlimited";
		raw.ward.beds = [];
		raw.ward.census = { thigh: 8 };
		raw.ward.arrivals = { rate: "1.6 /d" };
		raw.ward.length = { median: "4 d", spread: 0.6 };
		raw.ward.kinds[0].regimen = { depth: "-125 mmHg", fill: "none" };
		raw.care = { rounds: ["07:00"], turning: "none", dressingChange: "72 h" };
		raw.stores = [
			{ item: "canister", size: "1000 mL", stock: "unlimited" },
			{ item: "kit", stock: 90, pack: 5, price: 64, lead: "10 d", orderDays: ["mon"], service: "98 %" },
			{ item: "port", stock: "unlimited" },
		];
		raw.prices = { currency: "EUR", asOf: "2026-01" };
		change(raw);
	});

const week = 7 * 1440;
/** Mondays at 14:00, from a Monday at 07:00. */
const mondays = Array.from({ length: 12 }, (_, i) => 420 + i * week);
const lead = 10 * 1440;

/** Demand of every replication, worked out again; counted one by one, not searched. */
function demand(one: WardScenario): number[][] {
	const play = demandOf(one, 28 * 1440);
	return Array.from({ length: one.replications }, (_, r) => [...(play(r).timesMin[1] ?? [])]);
}
const between = (times: readonly number[], from: number, to: number) =>
	times.filter((at) => at >= from && at < to).length;
const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.ceil(values.length / 2) - 1] ?? 0;

describe("the order list", () => {
	const one = ward();
	const { orders, rules } = findRules(one);
	const courses = demand(one);
	const usedBy = (at: number) => median(courses.map((t) => between(t, 0, at)));
	const orderedBy = (at: number) =>
		orders.filter(({ atMin }) => atMin < at).reduce((sum, { pieces }) => sum + pieces, 0);
	/** Share of the time without a piece between the deliveries of a Monday and the next, with so many pieces on that Monday. */
	const outOf = (monday: number, pieces: number) =>
		courses
			.map((times) => {
				const [from, to] = [monday + lead, monday + week + lead];
				const mine = times.filter((at) => at >= monday);
				const empty = pieces <= 0 ? from : (mine[pieces - 1] ?? to);
				return Math.max(0, to - Math.max(from, empty)) / (to - from);
			})
			.reduce((sum, share) => sum + share, 0) / courses.length;

	test("asks on each order day whether stock lasts until the delivery of the next one", () => {
		for (const monday of mondays.filter((at) => at < one.horizonMin)) {
			const position = 90 + orderedBy(monday) - usedBy(monday);
			const order = orders.find(({ atMin }) => atMin === monday);
			const must = position <= (rules[1]?.reorder ?? 0) || outOf(monday, position) > 0.02;
			expect(order !== undefined, `Monday at ${monday}`).toBe(must);
			if (order === undefined) continue;
			expect(order.position).toBe(position);
			// What was ordered does last, and brings the shelf to where the rule wants it.
			expect(outOf(monday, position + order.pieces)).toBeLessThanOrEqual(0.02);
			expect(position + order.pieces).toBeGreaterThanOrEqual(rules[1]?.upTo ?? 0);
		}
		expect(orders.length).toBeGreaterThan(4);
	});

	test("tells the chance of running out before the delivery of the next order day, without the order and with it", () => {
		for (const order of orders) {
			const { atMin, position, pieces } = order;
			const share = (isOut: (times: readonly number[]) => boolean) => courses.filter(isOut).length / courses.length;
			const used = (times: readonly number[], to: number) => between(times, atMin, to);
			expect(order.without).toEqual({
				byMin: atMin + week + lead,
				probability: share((times) => used(times, atMin + week + lead) > position),
			});
			expect(order.with.byMin).toBe(order.without.byMin);
			expect(order.with.probability).toBe(
				share((times) => used(times, atMin + lead) > position || used(times, atMin + week + lead) > position + pieces),
			);
			expect(order.with.probability).toBeLessThanOrEqual(order.without.probability);
		}
		expect(orders.some((order) => order.without.probability > 0.2)).toBe(true);
	});

	test("never tells of a delivery after the stock has run out, as a list did that looked at the reorder point alone", () => {
		// Up to every delivery of the list, the stock of the median course holds: 90 pieces, ten days of lead.
		for (const { arrivesMin, atMin } of orders) expect(90 + orderedBy(atMin) - usedBy(arrivesMin)).toBeGreaterThan(0);
	});

	test("says that an order comes too late, where it does: the chance with it stays", () => {
		const late = findRules(
			ward((raw) => {
				raw.stores[1].stock = 12;
			}),
		).orders;
		const [first] = late;
		expect(first?.atMin).toBe(420);
		expect(first?.with.probability).toBeGreaterThan(0.9);
	});

	test("reckons with late deliveries: the wider lead times spread, the likelier it is to run out", () => {
		const chances = [0, 0.6].map((leadSpread) => {
			const spread = findRules(
				ward((raw) => {
					// A given rule, so that both lists order alike.
					Object.assign(raw.stores[1], { leadSpread, stock: 60, reorder: 70, upTo: 90 });
				}),
			).orders;
			return spread[0]?.with.probability ?? 0;
		});
		expect(chances[1]).toBeGreaterThan(chances[0] ?? 1);
	});

	test("is in order of time, in whole packs at their price", () => {
		const times = orders.map(({ atMin }: PlannedOrder) => atMin);
		expect(times).toEqual(times.toSorted((a, b) => a - b));
		for (const { packs, packSize, pieces, cost } of orders) {
			expect(pieces).toBe(packs * packSize);
			expect(cost).toBe(pieces * 64);
		}
	});
});
