import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import studentQuantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, test } from "vitest";
import { Histogram, halfWidth, wilson } from "../../src/analysis/index.ts";

// Student's table credited to NIST/SEMATECH, pdfcoffee.com/student-t-distribution-table-pdf-free.html (read);
// df 1 to 20 also in eCFR 10 CFR 429 subpart B, appendix A (read).
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
	])(
		"upper 0.025, %d degrees of freedom: %d, and so the half-width of a mean",
		(df, printed) => {
			expect(Math.abs(studentQuantile(0.975, df) - printed)).toBeLessThan(5e-4);
			// values of variance 1: the half-width is t/√n
			const half = halfWidth({ count: df + 1, mean: 7, squares: df });
			expect(Math.abs((half ?? 0) * Math.sqrt(df + 1) - printed)).toBeLessThan(
				5e-4,
			);
		},
	);

	test.each([
		[0.05, 1.812],
		[0.005, 3.169],
	])("upper %d, 10 degrees of freedom: %d", (upper, printed) => {
		expect(Math.abs(studentQuantile(1 - upper, 10) - printed)).toBeLessThan(
			5e-4,
		);
	});
});

describe("the normal quantile", () => {
	// Last row of the same table, infinitely many degrees of freedom (read)
	test.each([
		[0.9, 1.282],
		[0.95, 1.645],
		[0.975, 1.96],
		[0.99, 2.326],
		[0.995, 2.576],
		[0.999, 3.09],
	])("at %d is %d", (p, printed) => {
		expect(Math.abs(normalQuantile(p, 0, 1) - printed)).toBeLessThan(5e-4);
	});

	test("that stands in Wilson's interval is 1.960", () => {
		// With no hit the upper end is z²/(n + z²), Wilson's formula with p = 0 (derived)
		const { high } = wilson(0, 100);
		expect(Math.abs(Math.sqrt((100 * high) / (1 - high)) - 1.96)).toBeLessThan(
			5e-4,
		);
	});
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
		expect(
			quantiles([6, 47, 49, 15, 42, 41, 7, 39, 43, 40, 36], [0.25, 0.5, 0.75]),
		).toEqual([25.5, 40, 42.5]);
	});

	test("of 1 to 5: 2, 3, 4", () => {
		// docs.rs/codec-eval, percentile (read)
		expect(quantiles([1, 2, 3, 4, 5], [0.25, 0.5, 0.75])).toEqual([2, 3, 4]);
	});
});
