import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bracketedRoot } from "../../src/physics/index.ts";

describe("a bracketed root", () => {
	const cube = (x: number) => x ** 3 - 2;
	const slope = (x: number) => 3 * x * x;

	test("is found from either side, rising or falling", () => {
		expect(bracketedRoot(cube, slope, 0, 2, 1e-12)).toBeCloseTo(
			Math.cbrt(2),
			11,
		);
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
		expect(
			bracketedRoot(Math.atan, (x) => 1 / (1 + x * x), -1000, 1700, 1e-10),
		).toBeCloseTo(0, 9);
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
		expect(bracketedRoot(cube, () => -1, 0, 2, 1e-10)).toBeCloseTo(
			Math.cbrt(2),
			8,
		);
	});

	test("stays inside the bracket, and is as near as was asked for", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.001, max: 50, noNaN: true }),
				fc.double({ min: 0.05, max: 20, noNaN: true }),
				(root, tau) => {
					// the shape that drains have: linear less an exponential
					const f = (t: number) =>
						t - root - (tau * (1 - Math.exp(-t / tau))) / 2;
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

	test("is refused where the ends do not bracket one", () => {
		expect(() => bracketedRoot(cube, slope, 2, 3, 1e-9)).toThrow(
			"no root between 2 and 3: 6, 25",
		);
		expect(() => bracketedRoot(cube, slope, -3, -2, 1e-9)).toThrow(RangeError);
	});
});
