import exp from "@stdlib/math-base-special-exp";
import { describe, expect, test } from "vitest";

// Guards the chances that the shelves of tests/outside/stores.test.ts are held against: rows of one table are what another
// prints. Nothing here looks at the program.

/** Σ e^(−m)·m^i/i! for i ≤ k. */
function poissonCdf(k: number, mean: number): number {
	let term = exp(-mean);
	let sum = term;
	for (let i = 1; i <= k; i++) {
		term *= mean / i;
		sum += term;
	}
	return sum;
}

describe("the Poisson distribution", () => {
	test.each([
		[10, 0.58304],
		[12, 0.791556],
		[14, 0.916541527065],
		[16, 0.972958],
	])("P(X ≤ %i; 10) is %f", (k, printed) => {
		// Hopp and Spearman, Factory Physics 2.4.2, by nicky.vanforeest.com/inventorySystems/baseStock/baseStock.html (read)
		expect(Math.abs(poissonCdf(k, 10) - printed)).toBeLessThan(6e-7);
	});

	test("probabilities of a published table of the Poisson", () => {
		// umass.edu/wsp/statistics/tables/poisson2.html (read)
		for (const [k, mean, p] of [
			[10, 10, 0.1251],
			[5, 5, 0.1755],
			[15, 15, 0.1024],
		] as const)
			expect(Math.abs(poissonCdf(k, mean) - poissonCdf(k - 1, mean) - p)).toBeLessThan(1e-4);
	});

	test("P(X ≤ 8; 5) is 0.9319, P(X ≤ 9; 5) is 0.9682", () => {
		// sums of the same table (read)
		expect(poissonCdf(8, 5)).toBeCloseTo(0.9319, 4);
		expect(poissonCdf(9, 5)).toBeCloseTo(0.9682, 4);
	});
});
