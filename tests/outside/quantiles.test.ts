import { describe, expect, test } from "vitest";
import { Histogram, halfWidth, wilson } from "../../src/statistics/index.ts";

// df 1 to 20: eCFR 10 CFR 429 subpart B, appendix A (read). Beyond: Soong, Fundamentals of Probability and Statistics for
// Engineers, table A.4, digilib.universitaspertamina.ac.id (its page was read to 21), and NIST/SEMATECH e-Handbook of
// Statistical Methods, 1.3.6.7.2 (from memory).
describe("Student's t", () => {
	test.each([
		[1, 12.706],
		[2, 4.303],
		[4, 2.776],
		[5, 2.571],
		[9, 2.262],
		[10, 2.228],
		[19, 2.093],
		[20, 2.086],
		[29, 2.045],
		[30, 2.042],
		[60, 2],
		[100, 1.984],
	])("upper 0.025, %d degrees of freedom: %d, and so the half-width of a mean", (df, printed) => {
		// values of variance 1: the half-width is t/√n
		const half = halfWidth({ count: df + 1, mean: 7, squares: df });
		expect(Math.abs((half ?? 0) * Math.sqrt(df + 1) - printed)).toBeLessThan(5e-4);
	});
});

test("the normal quantile that stands in Wilson's interval is 1.960", () => {
	// With no hit the upper end is z²/(n + z²), Wilson's formula with p = 0 (derived)
	const { high } = wilson(0, 100);
	expect(Math.abs(Math.sqrt((100 * high) / (1 - high)) - 1.96)).toBeLessThan(5e-4);
});

describe("quantiles of type 7", () => {
	/** Bins so narrow that every value has one of its own. */
	const quantiles = (values: readonly number[], ps: readonly number[]) => {
		const histogram = new Histogram(1e-3);
		for (const value of values) histogram.add(value);
		return histogram.quantiles(ps);
	};

	test("of eleven values: 25.5, 40, 42.5", () => {
		// docs.dolphindb.cn, quantile (read); defined by p(k) = (k − 1)/(n − 1), documentation of R's `quantile` (read)
		expect(quantiles([6, 47, 49, 15, 42, 41, 7, 39, 43, 40, 36], [0.25, 0.5, 0.75])).toEqual([25.5, 40, 42.5]);
	});

	test("of 1 to 5: 2, 3, 4", () => {
		// docs.rs/codec-eval, percentile (read)
		expect(quantiles([1, 2, 3, 4, 5], [0.25, 0.5, 0.75])).toEqual([2, 3, 4]);
	});
});
