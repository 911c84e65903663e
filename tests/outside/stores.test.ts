import { describe, expect, test } from "vitest";
import {
	reorderPoint,
	safetyStock,
	Tally,
	tryShelf,
} from "../../src/analysis/index.ts";
import { exponential, normal, Stream } from "../../src/engine/index.ts";
import type { StoreItem } from "../../src/scenario/index.ts";

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
	const stream = new Stream(seed, "demand", 0);
	stream.reset(0);
	const times: number[] = [];
	for (let at = 0; ; ) {
		at += (1440 / perDay) * exponential(stream);
		if (at >= days * 1440) return times;
		times.push(at);
	}
}

describe("the text-book reorder point", () => {
	test("safety stock z·σ·√L and reorder point for a deviation of 1.2 a day, 25 days, 90 %", () => {
		// z = 1.2816 of a table of the normal distribution, times 1.2·√25 (derived)
		expect(safetyStock(1.2, 25, 0.9)).toBeCloseTo(7.689, 2);
		// and 3.5 a day in those 25 days (derived)
		expect(
			Math.abs(reorderPoint({ mean: 3.5, sd: 1.2 }, 25, 0.9) - 95.189),
		).toBeLessThan(2e-3);
	});
});

describe("base stock with Poisson demand", () => {
	test.each([
		// The cdf of Poisson(10), nicky.vanforeest.com/inventorySystems/baseStock/baseStock.html (read); the share served by a reorder point r with orders of one piece.
		[10, 0.58304],
		[12, 0.791556],
		[14, 0.916541527],
		[16, 0.972958],
	])(
		"a shelf that reorders at %i one by one, with 10 asked for in a lead time, serves %f",
		(r, served) => {
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
		},
	);
});

describe("the newsvendor", () => {
	test("a shelf that is filled every morning and whose pieces keep for a day earns most where the formula says", () => {
		// price 7, cost 5, demand N(50, 20): 38.68, calcfxc.com/documentation/formulaCalculators/NewsvendorNormal.html (read)
		const days = 3000;
		const stream = new Stream("newsvendor", "demand", 0);
		stream.reset(0);
		const times: number[] = [];
		let asked = 0;
		for (let day = 0; day < days; day++) {
			const demand = Math.max(0, Math.round(50 + 20 * normal(stream)));
			asked += demand;
			for (let i = 0; i < demand; i++)
				times.push(day * 1440 + 60 + (i * 1200) / demand);
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
					ordered: () => {},
					received: (pieces) => {
						bought += pieces;
					},
					expired: () => {},
					waited: () => {},
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
		const tally = new Tally();
		const days = new Int32Array(20_000);
		for (const at of poissonTimes(5, days.length, "quantiles"))
			days[Math.floor(at / 1440)]++;
		for (const pieces of days) tally.add(pieces);
		expect(tally.quantiles([0.5, 0.95])).toEqual([5, 9]);
		expect(Math.abs(tally.mean - 5)).toBeLessThan(0.06);
	});
});
