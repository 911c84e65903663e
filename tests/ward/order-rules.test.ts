import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exponential, Substream } from "../../src/engine/index.ts";
import { readWard, type StoreItem } from "../../src/scenario/index.ts";
import { FrequencyTable } from "../../src/statistics/index.ts";
import { findRules, RuleSearch, searchBlocks, tryShelf, wardBlocks } from "../../src/studies/index.ts";
import { supplyCautions } from "../../src/studies/supply/cautions.ts";
import { ReadyRates } from "../../src/studies/supply/rules/ready-rates.ts";
import { evenly, groupOf } from "../../src/studies/supply/rules/rule-part.ts";
import { type Raw, wardWith } from "./sample.ts";
import { smallResult } from "./small-result.ts";
import { smallWard } from "./small-ward.ts";

/** Four beds that are always in use, with kits that take long to come. */
const ward = (change: (raw: Raw) => void) =>
	wardWith((raw) => {
		raw.chance = "on";
		raw.ward.units = "unlimited";
		raw.ward.beds = [];
		raw.ward.census = { thigh: 4 };
		raw.ward.arrivals = { rate: "0.8 /d" };
		raw.ward.length = { median: "4 d", spread: 0.6 };
		raw.ward.kinds[0].regimen = { depth: "-125 mmHg", fill: "none" };
		raw.care = { rounds: ["07:00"], turning: "none", dressingChange: "72 h" };
		raw.stores = [
			{ item: "canister", size: "1000 mL", stock: "unlimited" },
			{ item: "kit", stock: 20, lead: "4 d", leadSpread: 0.3, service: "95 %" },
			{ item: "port", stock: "unlimited" },
		];
		change(raw);
	});

const kitOf = (found: ReturnType<typeof findRules>) => {
	const [, rule] = found.rules;
	if (rule === null || rule === undefined) throw new Error("no rule");
	return rule;
};

describe("the search for reorder points", () => {
	test("looks at all replications: its demand per day is that of all of them, far beyond 12,000 days of therapy", () => {
		const long = ward((raw) => {
			raw.horizon = "91 d";
			raw.replications = 30;
			raw.ward.census = { thigh: 8 };
			raw.ward.arrivals = { rate: "1.6 /d" };
		});
		const found = findRules(long);
		const needed = found.plenty?.used[1]?.mean ?? 0;
		// Some 8 beds over 91 d in 30 replications: more than 20,000 days of therapy.
		expect(new RuleSearch(long).firstBlock).toBeLessThan(wardBlocks(long) - 1);
		expect(kitOf(found).demandPerDay * 91).toBeCloseTo(needed, 9);
	});

	test("comes to the same, whoever plays which blocks in which order", () => {
		const one = ward((raw) => {
			raw.horizon = "182 d";
			raw.replications = 50;
		});
		const whole = findRules(one);
		const search = new RuleSearch(one);
		const { plan, firstBlock } = search;
		const blocks = wardBlocks(one);
		expect(firstBlock).toBeLessThan(blocks - 1);
		search.add(searchBlocks(one, plan, firstBlock + 1, blocks));
		expect(() => search.found()).toThrow(/of the search is missing/);
		search.add(searchBlocks(one, plan, firstBlock, firstBlock + 1));
		expect(JSON.stringify(search.found())).toBe(JSON.stringify(whole));
	});

	test("keeps no more of 400 replications than of 100 but the sums of their blocks", () => {
		const kept = (replications: number) => {
			const one = ward((raw) => {
				raw.horizon = "28 d";
				raw.replications = replications;
			});
			const { plan } = new RuleSearch({ ...one, replications: 100 });
			const part = searchBlocks(one, plan, 0, wardBlocks(one));
			return { net: part.net.flat(2).length, courses: part.courses.length, blocks: part.cost.length };
		};
		const [few, many] = [kept(100), kept(400)];
		expect(many.net).toBeLessThan(2 * few.net);
		expect(many.courses).toBe(100);
		expect(many.blocks).toBe(4 * few.blocks);
	});

	test("gives intervals that hold the point of very many replications, over 40 seeds", () => {
		const sought = (seed: string, replications: number) =>
			kitOf(
				findRules(
					ward((raw) => {
						raw.seed = seed;
						raw.horizon = "14 d";
						raw.replications = replications;
					}),
				),
			);
		const truth = sought("long", 1000);
		const seeds = Array.from({ length: 40 }, (_, i) => sought(`seed ${i}`, 40));
		const points = seeds.map(({ reorder }) => reorder);
		expect(Math.max(...points) - Math.min(...points)).toBeGreaterThanOrEqual(3);
		const held = seeds.filter(
			({ low95, high95 }) => (low95 ?? 0) <= truth.reorder && truth.reorder <= (high95 ?? 0),
		).length;
		expect(held).toBeGreaterThanOrEqual(34);
		for (const { reorder, low95, high95, reached } of seeds) {
			expect(low95).toBeLessThanOrEqual(reorder);
			expect(high95).toBeGreaterThanOrEqual(reorder);
			expect(reached.onOtherHalf).toBe(true);
		}
		// What is said to be reached is, on the mean of the seeds, what the same points come to in the long run.
		const said = seeds.reduce((sum, { reached }) => sum + reached.mean, 0) / 40;
		const meant =
			seeds.reduce((sum, { reorder }) => {
				const at = [...truth.ladder].sort((a, b) => Math.abs(a.reorder - reorder) - Math.abs(b.reorder - reorder))[0];
				return sum + (at?.service ?? 0);
			}, 0) / 40;
		expect(Math.abs(said - meant)).toBeLessThan(0.015);
	});

	test("judges a point on the half that it was not sought in, and says where there is none", () => {
		const few = findRules(ward((raw) => (raw.replications = 5)));
		expect(kitOf(few).reached.onOtherHalf).toBe(false);
		expect(kitOf(few).otherHalf).toBeNull();
		const given = kitOf(
			findRules(
				ward((raw) => {
					raw.stores[1].reorder = 6;
					raw.stores[1].upTo = 20;
				}),
			),
		);
		expect(given).toMatchObject({ origin: "given", reorder: 6, upTo: 20, low95: null, otherHalf: null });
		expect(given.reached.onOtherHalf).toBe(false);
		// Blocks take turns.
		expect([0, 1, 2, 3, 32].map(groupOf)).toEqual([0, 16, 1, 17, 0]);
		expect([0, 1, 2, 3].map(evenly)).toEqual([0, 0.5, 0.25, 0.75]);
	});
});

const item: StoreItem = {
	name: "piece",
	kind: "kit",
	sizeMl: null,
	solution: null,
	stock: 0,
	pack: 1,
	price: null,
	weightG: null,
	shelfMin: null,
	lead: { medianMin: 2880, spread: 0.3 },
	orderDays: null,
	cutOffClockMin: 14 * 60,
	reviewMin: null,
	reorder: null,
	upTo: null,
	service: 0.95,
	substitute: null,
};

test("one trial with a reorder point of 0 tells of every other what a trial of its own tells", () => {
	const someItem = fc.record({
		pack: fc.integer({ min: 1, max: 7 }),
		lead: fc.record({ medianMin: fc.integer({ min: 0, max: 9000 }), spread: fc.constantFrom(0, 0.4) }),
		orderDays: fc.constantFrom(null, [0], [0, 3], [1, 2, 4]),
		reviewMin: fc.constantFrom(null, 1440, 5000),
	});
	const clock = { startClockMin: 420, startWeekday: 0 };
	fc.assert(
		fc.property(
			someItem,
			fc.integer({ min: 1, max: 12 }),
			fc.integer({ min: 0, max: 25 }),
			fc.integer({ min: 0, max: 1000 }),
			(change, quantity, reorder, draw) => {
				const stream = new Substream("demand", "piece", 0);
				stream.reset(draw);
				const timesMin: number[] = [];
				const endMin = 60 * 1440;
				for (let at = 0; ; ) {
					at += 600 * exponential(stream);
					if (at >= endMin) break;
					timesMin.push(at);
				}
				const net = new FrequencyTable();
				const play = (r: number, watch?: (n: number, s: number) => void) =>
					tryShelf(
						{ ...item, ...change, stock: r + quantity },
						{ reorder: r, upTo: r + quantity },
						clock,
						{ timesMin, endMin },
						"leads",
						watch === undefined
							? {}
							: { net: (pieces, from, to) => watch(pieces, Math.round(to * 60) - Math.round(from * 60)) },
					);
				play(0, (pieces, seconds) => net.add(pieces, seconds));
				const ready = new ReadyRates([net.parts()], [endMin * 60], null);
				expect(ready.share([0], reorder).mean).toBeCloseTo(play(reorder).ready, 4);
			},
		),
		{ seed: 1963, numRuns: 200 },
	);
});

test("where pieces expire before they are used, every reorder point has a trial of its own", () => {
	/** Ports that keep a week and come thirty at a time. */
	const perishing = (shelf: string | null) =>
		kitOf(
			findRules(
				ward((raw) => {
					raw.replications = 20;
					raw.stores[1].pack = 30;
					raw.stores[1].service = "99 %";
					if (shelf !== null) raw.stores[1].shelf = shelf;
				}),
			),
		);
	const [keeps, long, perishes] = [null, "3000 d", "9 d"].map(perishing);
	expect(long).toEqual(keeps);
	expect(perishes?.reorder).toBeGreaterThan(keeps?.reorder ?? 0);
});

describe("a caution stands", () => {
	const small = readWard(smallWard());
	const result = smallResult();
	const codesWith = (change: (store: Raw) => void): { code: string; text: string }[] => {
		const changed: Raw = structuredClone(result);
		for (const one of changed.items) {
			one.store.rule.reached.mean = one.store.rule.service;
			one.store.ready.mean = one.store.rule.service;
		}
		change(changed.items[0].store);
		return supplyCautions(small, changed);
	};

	test.each<readonly [string, string, (store: Raw) => void, RegExp]>([
		[
			"where a rule reaches less than what was asked for",
			"service-missed",
			(store) => Object.assign(store.rule.reached, { mean: 0.942, low95: 0.93, high95: 0.954 }),
			/canister 1000 mL 94\.2 % \(93 to 95\.4 %\) instead of 99 %/,
		],
		[
			"where the run from today's stock falls short",
			"service-missed-in-run",
			(store) => (store.ready.mean = 0.971),
			/canister 1000 mL 97\.1 % instead of 99 %/,
		],
	])("%s", (_, code, change, words) => {
		const said = (how: typeof change) => codesWith(how).filter((one) => one.code === code);
		expect(said(() => {})).toEqual([]);
		expect(said(change)).toHaveLength(1);
		expect(said(change)[0]?.text).toMatch(words);
	});
});
