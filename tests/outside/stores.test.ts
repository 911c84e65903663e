import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { describe, expect, test } from "vitest";
import { exponential, lognormal, normal, Substream } from "../../src/engine/index.ts";
import type { StoreItem } from "../../src/scenario/index.ts";
import { FrequencyTable, reorderPoint, safetyStock } from "../../src/statistics/index.ts";
import { tryShelf } from "../../src/studies/index.ts";
import { leadMoments } from "../../src/studies/supply/rules/rule-plan.ts";

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
	lead: { medianMin: 0, spread: 0 },
	orderDays: null,
	cutOffClockMin: 0,
	reviewMin: null,
	reorder: null,
	upTo: null,
	service: 0.99,
	substitute: null,
};
const clock = { startClockMin: 0, startWeekday: 0 };

function poissonTimes(perDay: number, days: number, seed: string): number[] {
	const stream = new Substream(seed, "demand", 0);
	stream.reset(0);
	const times: number[] = [];
	for (let at = 0; ; ) {
		at += (1440 / perDay) * exponential(stream);
		if (at >= days * 1440) return times;
		times.push(at);
	}
}

describe("the text-book reorder point", () => {
	const fixed = (mean: number) => ({ mean, sd: 0 });

	test("safety stock of demand that varies alone: z·σ·√T", () => {
		// Silver, Pyke, Peterson 1998, Inventory Management and Production Planning, from memory; z(0.9) = 1.281552 (NIST/SEMATECH e-Handbook, table of the normal, from memory).
		expect(safetyStock({ mean: 3.5, sd: 1.2 }, fixed(25), 0.9)).toBeCloseTo(1.281552 * 1.2 * 5, 4);
		expect(reorderPoint({ mean: 3.5, sd: 1.2 }, fixed(25), 0.9)).toBeCloseTo(3.5 * 25 + 1.281552 * 1.2 * 5, 4);
	});

	test("safety stock where the lead time varies, too: the example of a handbook", () => {
		// Chopra and Meindl, Supply Chain Management, example of safety inventory with uncertain lead time (from memory): demand 2,500 a
		// day, σ 500; lead time 7 days, its deviation 7; 90 % of the cycles. Deviation of the demand over the lead time 17,550, safety stock 22,491.
		const [perDay, days] = [
			{ mean: 2500, sd: 500 },
			{ mean: 7, sd: 7 },
		];
		expect(Math.abs(safetyStock(perDay, days, 0.9) - 22_491)).toBeLessThan(1);
		expect(Math.abs(safetyStock(perDay, days, 0.9) / 1.281552 - 17_550)).toBeLessThan(1);
	});

	test("the formula is the mean and the deviation of demand over lead times that are drawn", () => {
		// No source: worked out by drawing. Poisson(3) a day, lead time lognormal, median 5 d, spread 0.4.
		const lead = { medianMin: 5 * 1440, spread: 0.4 };
		const { meanMin, sdMin } = leadMoments(lead);
		const stream = new Substream("lead times", "pieces", 0);
		stream.reset(0);
		const demands: number[] = [];
		const times = poissonTimes(3, 400_000, "lead time demand");
		let at = 0;
		for (let begins = 0; ; ) {
			const ends = begins + lognormal(stream, lead.medianMin, lead.spread);
			if (ends > 400_000 * 1440) break;
			let count = 0;
			while ((times[at] ?? Number.POSITIVE_INFINITY) < ends) {
				count++;
				at++;
			}
			demands.push(count);
			begins = ends;
		}
		const mean = demands.reduce((sum, n) => sum + n, 0) / demands.length;
		const variance = demands.reduce((sum, n) => sum + (n - mean) ** 2, 0) / demands.length;
		const days = { mean: meanMin / 1440, sd: sdMin / 1440 };
		const perDay = { mean: 3, sd: Math.sqrt(3) };
		// Some 70,000 lead times: three standard errors of the mean are below 0.1, of the deviation below 0.1.
		expect(demands.length).toBeGreaterThan(60_000);
		expect(Math.abs(mean - perDay.mean * days.mean)).toBeLessThan(0.1);
		const z = normalQuantile(0.95, 0, 1);
		expect(Math.abs(Math.sqrt(variance) - safetyStock(perDay, days, 0.95) / z)).toBeLessThan(0.15);
		// The median alone would be 8 % short.
		expect(meanMin / lead.medianMin).toBeCloseTo(Math.exp(0.08), 12);
	});
});

describe("base stock with Poisson demand", () => {
	test.each([
		// The cdf of Poisson(10), nicky.vanforeest.com/inventorySystems/baseStock/baseStock.html (read); the share served by a reorder point r with orders of one piece.
		[10, 0.58304],
		[12, 0.791556],
		[14, 0.916541527],
		[16, 0.972958],
	])("a shelf that reorders at %i one by one, with 10 asked for in a lead time, serves %f", (r, served) => {
		const times = poissonTimes(10, 15_000, "base stock");
		const { asked, atOnce, ready } = tryShelf(
			{ ...item, stock: r + 1, lead: { medianMin: 1440, spread: 0 } },
			{ reorder: r, upTo: r + 1 },
			clock,
			{ timesMin: times, endMin: 15_000 * 1440 },
			null,
		);
		// 150,000 pieces, in some 15,000 independent lead times: three standard errors are below 0.012.
		expect(Math.abs(atOnce / asked - served)).toBeLessThan(0.012);
		// Poisson demand sees the shelf as time does.
		expect(Math.abs(ready - served)).toBeLessThan(0.012);
	});
});

describe("the newsvendor", () => {
	test("a shelf that is filled every morning and whose pieces keep for a day earns most where the formula says", () => {
		// price 7, cost 5, demand N(50, 20): 38.68, calcfxc.com/documentation/formulaCalculators/NewsvendorNormal.html (read)
		const days = 3000;
		const stream = new Substream("newsvendor", "demand", 0);
		stream.reset(0);
		const times: number[] = [];
		let asked = 0;
		for (let day = 0; day < days; day++) {
			const demand = Math.max(0, Math.round(50 + 20 * normal(stream)));
			asked += demand;
			for (let i = 0; i < demand; i++) times.push(day * 1440 + 60 + (i * 1200) / demand);
		}
		const profit = (stock: number): number => {
			let bought = stock;
			// Who finds nothing waits; at a price that only a piece at once pays, what is waited for earns nothing.
			const { atOnce } = tryShelf(
				{ ...item, stock, reviewMin: 1440, shelfMin: 1439 },
				{ reorder: stock - 1, upTo: stock },
				clock,
				{ timesMin: times, endMin: days * 1440 },
				null,
				{
					told: {
						ordered: () => {},
						received: (pieces) => {
							bought += pieces;
						},
						expired: () => {},
						waited: () => {},
					},
				},
			);
			return 7 * atOnce - 5 * Math.min(bought, stock * days);
		};
		const stocks = [26, 32, 39, 46, 52];
		const profits = stocks.map(profit);
		expect(asked).toBeGreaterThan(140_000);
		expect(stocks[profits.indexOf(Math.max(...profits))]).toBe(39);
	});
});

describe("quantiles of whole pieces", () => {
	test("the 95 % quantile of Poisson(5) is 9, as the tables have it", () => {
		// P(X ≤ 8; 5) = 0.9319, P(X ≤ 9; 5) = 0.9682: sums of umass.edu/wsp/statistics/tables/poisson2.html (read)
		const tally = new FrequencyTable();
		const days = new Int32Array(20_000);
		for (const at of poissonTimes(5, days.length, "quantiles")) days[Math.floor(at / 1440)]++;
		for (const pieces of days) tally.add(pieces);
		expect(tally.quantiles([0.5, 0.95])).toEqual([5, 9]);
		expect(Math.abs(tally.mean - 5)).toBeLessThan(0.06);
	});
});
