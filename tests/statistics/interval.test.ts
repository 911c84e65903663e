import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { normal, Substream } from "../../src/engine/index.ts";
import { addTo, Histogram, halfWidth, meanInterval, noMoments, wilson } from "../../src/statistics/index.ts";
import { quantileIntervals } from "../../src/statistics/quantile-interval.ts";

describe("the half-width of a mean", () => {
	test("is unknown below two values, and nought for a constant", () => {
		expect(halfWidth(noMoments())).toBeNull();
		expect(halfWidth({ count: 1, mean: 3, squares: 0 })).toBeNull();
		expect(halfWidth({ count: 2, mean: 3, squares: 0 })).toBe(0);
	});

	test("does not become NaN where rounding leaves a sum of squares just below nought", () => {
		expect(halfWidth({ count: 400, mean: 705, squares: -1e-12 })).toBe(0);
	});

	test("shrinks as one over the root of the number of values", () => {
		const of = (count: number) => halfWidth({ count, mean: 0, squares: 4 * (count - 1) }) ?? Number.NaN;
		expect(of(40_000) / of(10_000)).toBeCloseTo(0.5, 3);
	});

	test("covers the true mean in 95 of 100 samples of ten normals", () => {
		const stream = new Substream("interval", "coverage", 0);
		const samples = 4000;
		let covered = 0;
		for (let sample = 0; sample < samples; sample++) {
			const moments = noMoments();
			for (let i = 0; i < 10; i++) addTo(moments, 7 + 3 * normal(stream));
			const half = halfWidth(moments) ?? Number.NaN;
			if (Math.abs(moments.mean - 7) < half) covered++;
		}
		// four standard errors of a share of 0.95
		expect(Math.abs(covered / samples - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / samples));
	});
});

test("the interval of a mean lies evenly about it, and is none below two values", () => {
	expect(meanInterval({ count: 1, mean: 3, squares: 0 })).toBeNull();
	const moments = { count: 10, mean: 3, squares: 90 };
	// t(0.975, 9) = 2.262 in every table of Student's distribution (from memory); s/√n = 1
	const { low, high } = meanInterval(moments) ?? { low: 0, high: 0 };
	expect(low).toBeCloseTo(3 - 2.262, 3);
	expect(high).toBeCloseTo(3 + 2.262, 3);
});

describe("the interval of a quantile", () => {
	const histogram = new Histogram(1e-3);
	for (let value = 1; value <= 10; value++) histogram.add(value);

	test("has no bound on the side on which the values do not reach far enough", () => {
		// Of ten, three at the most lie below P10 with a chance of 0.987, two at the most with one of 0.930; P90 mirrors it.
		expect(quantileIntervals(histogram, [0.1, 0.5, 0.9])).toEqual([
			{ low: null, high: 4 },
			{ low: 2, high: 9 },
			{ low: 7, high: null },
		]);
	});

	test("of values too few for any has no bound at all", () => {
		const few = new Histogram(1e-3);
		for (const value of [1, 2, 3]) few.add(value);
		expect(quantileIntervals(few, [0.5])).toEqual([{ low: null, high: null }]);
	});
});

describe("Wilson's interval", () => {
	const counts = fc
		.integer({ min: 1, max: 2000 })
		.chain((count) => fc.record({ hits: fc.integer({ min: 0, max: count }), count: fc.constant(count) }));

	test("lies in 0…1, holds the share seen, and mirrors when hits and misses change places", () => {
		fc.assert(
			fc.property(counts, ({ hits, count }) => {
				const { low, high } = wilson(hits, count);
				expect(low).toBeGreaterThanOrEqual(0);
				expect(high).toBeLessThanOrEqual(1);
				expect(low).toBeLessThanOrEqual(hits / count);
				expect(high).toBeGreaterThanOrEqual(hits / count);
				const mirror = wilson(count - hits, count);
				expect(mirror.low).toBeCloseTo(1 - high, 12);
				expect(mirror.high).toBeCloseTo(1 - low, 12);
			}),
			{ seed: 1927 },
		);
	});

	test("rises with the hits and narrows with the count", () => {
		for (let hits = 1; hits <= 50; hits++) {
			expect(wilson(hits, 50).low).toBeGreaterThan(wilson(hits - 1, 50).low);
			expect(wilson(hits, 50).high).toBeGreaterThan(wilson(hits - 1, 50).high);
		}
		const width = (count: number) => {
			const { low, high } = wilson(count / 10, count);
			return high - low;
		};
		expect(width(400)).toBeLessThan(width(100));
		expect(width(100)).toBeLessThan(width(20));
	});
});
