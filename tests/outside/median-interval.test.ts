import { describe, expect, test } from "vitest";
import { Histogram } from "../../src/statistics/index.ts";
import { quantileIntervals, quantileRanks } from "../../src/statistics/quantile-interval.ts";

/** Chance that the median lies between two order statistics: Σ C(n, i)/2^n over the ranks between. */
function confidence(n: number, low: number, high: number): number {
	let [term, sum] = [1, 0];
	for (let i = 0; i < high; i++) {
		if (i >= low) sum += term;
		term = (term * (n - i)) / (i + 1);
	}
	return sum / 2 ** n;
}

// n, ranks and level in percent of the narrowest interval of at least 95 %: derived from the binomial sum above. Text-books
// of statistics without a distribution print such a table (from memory).
describe("order statistics around a median", () => {
	test.each([
		[6, 1, 6, 96.9],
		[7, 1, 7, 98.4],
		[8, 1, 8, 99.2],
		[9, 2, 8, 96.1],
		[10, 2, 9, 97.9],
		[11, 2, 10, 98.8],
		[12, 3, 10, 96.1],
		[13, 3, 11, 97.8],
		[14, 3, 12, 98.7],
		[15, 4, 12, 96.5],
		[16, 4, 13, 97.9],
		[17, 5, 13, 95.1],
		[18, 5, 14, 96.9],
		[19, 5, 15, 98.1],
		[20, 6, 15, 95.9],
	])("of %d values: ranks %d and %d, %d %%", (n, low, high, percent) => {
		expect(quantileRanks(n, 0.5)).toEqual({ low, high });
		expect(Math.abs(100 * confidence(n, low, high) - percent)).toBeLessThan(0.0501);
	});

	test("five values are too few for 95 %: their whole span has 93.8 %", () => {
		expect(quantileRanks(5, 0.5)).toEqual({ low: null, high: null });
		expect(100 * confidence(5, 1, 5)).toBeCloseTo(93.75, 9);
	});

	test("of nineteen values with a median of 20.7 they are 10.8 and 30.9", () => {
		// Snedecor and Cochran's interval as worked in dgbonett.github.io/statpsych/reference/ci.median.html (read)
		const histogram = new Histogram(1e-3);
		for (const value of [
			30.2, 20.4, 15.1, 10.2, 10.5, 60.8, 20.8, 25, 20.7, 30.9, 10.8, 5.1, 50.9, 40, 20.9, 10.8, 0, 20.5, 50.8,
		])
			histogram.add(value);
		expect(histogram.quantiles([0.5])).toEqual([20.7]);
		expect(quantileIntervals(histogram, [0.5])).toEqual([{ low: 10.8, high: 30.9 }]);
	});
});
