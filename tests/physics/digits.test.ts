import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { supportedDigits } from "../../src/physics/index.ts";
import { plainNumber } from "../../src/words/index.ts";

/** From a hundred-millionth to ten million, as many of each size. */
const sizes = fc.double({ min: -5.9, max: 7, noNaN: true }).map((power) => 10 ** power);
const means = fc.double({ min: -1e5, max: 1e5, noNaN: true });

/** The step of the last digit. */
const stepOf = (halfWidth: number) => 10 ** -(supportedDigits(halfWidth) ?? 0);

describe("the digits that an interval supports", () => {
	test.each([
		[0.34, 1],
		[0.19, 2],
		[0.012, 3],
		[0.0021, 3],
		[2.4, 0],
		[1.4, 1],
		[24, 0],
		[234, -1],
		[2340, -2],
	])("a half-width of %d is told to the digit %i after the point", (halfWidth, digits) => {
		expect(supportedDigits(halfWidth)).toBe(digits);
	});

	test("a number without doubt has no limit, and rounding of the machine is no doubt", () => {
		for (const none of [null, 0, 1e-12, 8e-7, Number.NaN, -1]) expect(supportedDigits(none)).toBeNull();
	});

	test("are never more than two of the half-width, and its value is within a half-width of what is printed", () => {
		fc.assert(
			fc.property(sizes, means, (halfWidth, mean) => {
				const step = stepOf(halfWidth);
				expect(halfWidth / step).toBeLessThan(100 * (1 + 1e-9));
				const digits = supportedDigits(halfWidth) ?? 0;
				const shown = Number(plainNumber(mean, digits).replace("−", "-"));
				expect(Math.abs(shown - mean)).toBeLessThanOrEqual(halfWidth / 3);
				// What is printed stands on the step of the last digit: no digit beyond it.
				expect(Math.abs(shown / step - Math.round(shown / step))).toBeLessThan(1e-3);
			}),
		);
	});

	test("are never so few that the ends print alike", () => {
		fc.assert(
			fc.property(sizes, means, (halfWidth, mean) => {
				const digits = supportedDigits(halfWidth) ?? 0;
				const ends = [mean - halfWidth, mean, mean + halfWidth].map((value) => plainNumber(value, digits));
				expect(new Set(ends).size).toBe(3);
			}),
		);
	});
});
