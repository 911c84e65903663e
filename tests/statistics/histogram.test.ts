import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Histogram } from "../../src/statistics/index.ts";

const ps = [0, 0.1, 0.25, 0.5, 0.9, 0.99, 1];
const values = fc.array(
	fc.oneof(
		fc.integer({ min: -300, max: 3000 }).map((i) => i / 10),
		fc.double({ min: -50, max: 1500, noNaN: true }),
	),
	{ minLength: 1, maxLength: 300 },
);
const widths = fc.constantFrom(0.001, 0.1, 1, 25);

function histogramOf(values: readonly number[], width: number): Histogram {
	const histogram = new Histogram(width);
	for (const value of values) histogram.add(value);
	return histogram;
}

/** Type 7 of the values themselves: at (n − 1)·p between order statistics. */
function exactly(values: readonly number[], p: number): number {
	const sorted = values.toSorted((a, b) => a - b);
	const place = (sorted.length - 1) * p;
	const low = sorted[Math.floor(place)];
	return low + (sorted[Math.ceil(place)] - low) * (place % 1);
}

describe("a histogram", () => {
	test("gives quantiles within a bin of the values' own", () => {
		fc.assert(
			fc.property(values, widths, (values, width) => {
				const quantiles = histogramOf(values, width).quantiles(ps);
				ps.forEach((p, i) => {
					expect(Math.abs(quantiles[i] - exactly(values, p))).toBeLessThan(width + 1e-9);
				});
			}),
			{ numRuns: 400, seed: 7 },
		);
	});

	test("gives the least at 0, to rounding the greatest at 1, and never a step back", () => {
		fc.assert(
			fc.property(values, widths, (values, width) => {
				const quantiles = histogramOf(values, width).quantiles(ps);
				expect(quantiles[0]).toBe(Math.min(...values));
				const rounding = 1e-12 * Math.max(1, ...values.map(Math.abs));
				expect(Math.abs(quantiles[ps.length - 1] - Math.max(...values))).toBeLessThan(rounding);
				for (let i = 1; i < ps.length; i++) expect(quantiles[i]).toBeGreaterThan(quantiles[i - 1] - rounding);
			}),
			{ numRuns: 400, seed: 8 },
		);
	});

	test("of parts merged in any order is that of all values", () => {
		fc.assert(
			fc.property(
				fc
					.array(values, { minLength: 1, maxLength: 5 })
					.chain((parts) => fc.tuple(fc.constant(parts), fc.shuffledSubarray(parts, { minLength: parts.length }))),
				widths,
				([parts, shuffled], width) => {
					const whole = histogramOf(parts.flat(), width);
					const merged = new Histogram(width);
					for (const part of shuffled) merged.merge(histogramOf(part, width).parts());
					expect(merged.count).toBe(whole.count);
					expect(merged.quantiles(ps)).toEqual(whole.quantiles(ps));
					const sorted = (histogram: Histogram) => histogram.parts().bins.toSorted((a, b) => a.bin - b.bin);
					expect(sorted(merged)).toEqual(sorted(whole));
				},
			),
			{ numRuns: 200, seed: 9 },
		);
	});

	test("travels as plain data: parts through JSON merge alike", () => {
		const parts = histogramOf([0.05, 0.25, 3, 3, -1], 0.1).parts();
		const merged = new Histogram(0.1);
		merged.merge(JSON.parse(JSON.stringify(parts)));
		expect(merged.quantiles(ps)).toEqual(histogramOf([0.05, 0.25, 3, 3, -1], 0.1).quantiles(ps));
	});

	test("keeps a constant as it is, whatever its place in the bin", () => {
		for (const constant of [705.4712345678901, 0.1 + 0.2, -3.7, 0]) {
			const histogram = histogramOf(new Array(777).fill(constant), 1);
			expect(histogram.quantiles(ps)).toEqual(ps.map(() => constant));
		}
	});

	test("counts whole numbers exactly: quantiles are their own", () => {
		const counts = [3, 0, 2, 2, 1, 0, 0, 5, 1, 1];
		expect(histogramOf(counts, 1).quantiles(ps)).toEqual(ps.map((p) => exactly(counts, p)));
	});

	test("spreads the values of one bin evenly between its least and greatest", () => {
		// Five values in one bin of 1: 0.1 … 0.9; the median is taken to lie in the middle.
		expect(histogramOf([0.1, 0.8, 0.85, 0.89, 0.9], 1).quantiles([0.25, 0.5])).toEqual([0.1 + 0.8 / 4, 0.5]);
	});

	test("says how often its most frequent value came, where its bin holds no other", () => {
		expect(histogramOf([3, 3, 3, 5, 5, 9], 1).mostFrequent).toBe(3);
		expect(histogramOf([9, 5, 5, 3, 3, 3], 1).mostFrequent).toBe(3);
		expect(histogramOf([0.1 + 0.2, 0.3, 7], 1).mostFrequent).toBe(2);
		expect(histogramOf([-4, -4, 2], 1).mostFrequent).toBe(2);
		// Three lie in one bin, but are no one value.
		expect(histogramOf([3.1, 3.2, 3.3, 5, 5], 1).mostFrequent).toBe(2);
		expect(histogramOf([3.1, 3.2, 3.2], 1).mostFrequent).toBe(0);
		expect(new Histogram(1).mostFrequent).toBe(0);
	});

	test("has no quantiles while it is empty", () => {
		expect(new Histogram(1).quantiles([0.1, 0.5])).toEqual([Number.NaN, Number.NaN]);
		const merged = new Histogram(1);
		merged.merge(new Histogram(1).parts());
		expect(merged.count).toBe(0);
	});

	test("grows with the bins in use, not with the values", () => {
		const histogram = new Histogram(1);
		for (let i = 0; i < 100_000; i++) histogram.add(i % 40);
		expect(histogram.parts().bins.length).toBe(40);
		expect(histogram.count).toBe(100_000);
	});
});
