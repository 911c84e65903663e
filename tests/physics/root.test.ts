import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bracketedRoot } from "../../src/physics/index.ts";

describe("a bracketed root", () => {
	const cube = (x: number) => x ** 3 - 2;
	const slope = (x: number) => 3 * x * x;

	test("is found from either side, rising or falling", () => {
		expect(bracketedRoot(cube, slope, 0, 2, 1e-12)).toBeCloseTo(Math.cbrt(2), 11);
		expect(
			bracketedRoot(
				(x) => -cube(x),
				(x) => -slope(x),
				0,
				2,
				1e-12,
			),
		).toBeCloseTo(Math.cbrt(2), 11);
	});

	test("at an end of the bracket is that end, without looking further", () => {
		const f = (x: number) => x - 1;
		expect(bracketedRoot(f, () => Number.NaN, 1, 5, 1e-9)).toBe(1);
		expect(bracketedRoot(f, () => Number.NaN, -5, 1, 1e-9)).toBe(1);
	});

	test("is found where Newton alone would run away or stand still", () => {
		// arctan sends Newton off from far away; a step has no slope; a wrong slope misleads
		expect(bracketedRoot(Math.atan, (x) => 1 / (1 + x * x), -1000, 1700, 1e-10)).toBeCloseTo(0, 9);
		const step = (x: number) => (x < 0.3 ? -1 : 1);
		expect(bracketedRoot(step, () => 0, 0, 1, 1e-10)).toBeCloseTo(0.3, 9);
		expect(
			bracketedRoot(
				(x) => x ** 9,
				(x) => 9 * x ** 8,
				-1,
				1.5,
				1e-10,
			),
		).toBeCloseTo(0, 7);
		expect(bracketedRoot(cube, () => -1, 0, 2, 1e-10)).toBeCloseTo(Math.cbrt(2), 8);
	});

	test("stays inside the bracket, and is as near as was asked for", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.001, max: 50, noNaN: true }),
				fc.double({ min: 0.05, max: 20, noNaN: true }),
				(root, tau) => {
					// the shape that drains have: linear less an exponential
					const f = (t: number) => t - root - (tau * (1 - Math.exp(-t / tau))) / 2;
					const found = bracketedRoot(
						(t) => f(t) - f(root),
						(t) => 1 - Math.exp(-t / tau) / 2,
						0,
						200,
						1e-10,
					);
					expect(found).toBeGreaterThan(0);
					expect(Math.abs(found - root)).toBeLessThan(1e-9);
				},
			),
			{ seed: 1 },
		);
	});

	/** Looks for `root` of a straight line, with a slope that is `wrong` times its own; each question has to lie inside what is bracketed by then. */
	function asked(root: number, rise: number, wrong: number) {
		let [low, high, count] = [0, 1, 0];
		const found = bracketedRoot(
			(x) => {
				count++;
				const value = rise * (x - root);
				// The two ends come first.
				if (count > 2) {
					expect(x).toBeGreaterThan(low);
					expect(x).toBeLessThan(high);
					if (value / rise < 0) low = x;
					else high = x;
				}
				return value;
			},
			() => rise * wrong,
			0,
			1,
			1e-13,
		);
		return { found, count };
	}

	test("is asked for only inside what is still bracketed, and no oftener than bisection twice over, whatever the slope says", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.01, max: 0.99, noNaN: true }),
				fc.constantFrom(1, -1, 30),
				fc.constantFrom(1, -1),
				fc.double({ min: -6, max: 6, noNaN: true }),
				(root, rise, sign, lg) => {
					const { found, count } = asked(root, rise, sign * 2 ** lg);
					expect(Math.abs(found - root)).toBeLessThan(1e-10);
					expect(count).toBeLessThan(2 * Math.log2(1e13));
				},
			),
			{ numRuns: 300, seed: 3 },
		);
		// No step at all is no answer either.
		for (const rise of [1, -1]) expect(asked(0.3, rise, Number.POSITIVE_INFINITY).found).toBeCloseTo(0.3, 10);
	});

	test("doubles its digits with every step where the slope is right", () => {
		for (const sign of [1, -1]) {
			let count = 0;
			const found = bracketedRoot(
				(x) => {
					count++;
					return sign * (x * x - 2);
				},
				(x) => sign * 2 * x,
				0,
				2,
				1e-12,
			);
			expect(found).toBeCloseTo(Math.SQRT2, 14);
			// both ends, the middle, and 1.5, 1.417, 1.414216, 1.41421356237 (the Babylonian steps)
			expect(count).toBeLessThanOrEqual(8);
		}
	});

	test("bisects where Newton's steps hardly shrink: at a root of ninth order they do by a ninth", () => {
		let count = 0;
		bracketedRoot(
			(x) => {
				count++;
				return x ** 9;
			},
			(x) => 9 * x ** 8,
			-1,
			1.5,
			1e-10,
		);
		expect(count).toBeLessThan(2 * Math.log2(2.5e10));
	});

	test("is refused where the ends do not bracket one", () => {
		expect(() => bracketedRoot(cube, slope, 2, 3, 1e-9)).toThrow("no root between 2 and 3: 6, 25");
		expect(() => bracketedRoot(cube, slope, -3, -2, 1e-9)).toThrow(RangeError);
	});
});
