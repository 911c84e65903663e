import { describe, expect, test } from "vitest";
import { wilson } from "../../src/statistics/index.ts";

describe("Wilson's 95 % interval of a proportion", () => {
	// Newcombe 1998, Statistics in Medicine 17:857–872, table I, score method without correction (from memory)
	test.each([
		[81, 263, 0.2553, 0.3662],
		[15, 148, 0.0624, 0.1605],
		[0, 20, 0, 0.1611],
		[1, 29, 0.0061, 0.1718],
	])("%d of %d: %d to %d", (hits, count, low, high) => {
		const interval = wilson(hits, count);
		expect(Math.abs(interval.low - low)).toBeLessThan(5.01e-5);
		expect(Math.abs(interval.high - high)).toBeLessThan(5.01e-5);
	});

	test("its ends are where the score test is at its limit: (p̂ − p)² = z²·p(1 − p)/n", () => {
		// Wilson 1927, Journal of the American Statistical Association 22:209–212 (from memory, recomputed)
		for (const [hits, count] of [
			[81, 263],
			[1, 400],
			[399, 400],
			[3, 7],
		]) {
			const { low, high } = wilson(hits, count);
			for (const p of [low, high])
				expect(Math.abs(hits / count - p) / Math.sqrt((p * (1 - p)) / count)).toBeCloseTo(1.959963984540054, 9);
		}
	});

	test("never leaves 0…1, and none of n mirrors all of n", () => {
		// by symmetry of the formula (derived)
		for (const count of [1, 2, 50, 400]) {
			const [none, all] = [wilson(0, count), wilson(count, count)];
			expect(none.low).toBe(0);
			expect(all.high).toBe(1);
			expect(all.low).toBeCloseTo(1 - none.high, 12);
			expect(none.high).toBeLessThan(1);
		}
	});
});
