import { describe, expect, test } from "vitest";
import { variance } from "../../src/statistics/index.ts";
import { momentsOf } from "../statistics/moments-of.ts";

/** b + 0.2, then 500 times b + 0.1 and b + 0.3. */
const numAcc = (b: number, tenths: (n: number) => number) => [
	tenths(10 * b + 2),
	...Array.from({ length: 500 }, () => [tenths(10 * b + 1), tenths(10 * b + 3)]).flat(),
];

// NIST StRD, univariate summary statistics: itl.nist.gov/div898/strd/univ/data/NumAcc1.dat to NumAcc4.dat (quoted);
// the mean and the standard deviation of the files are exact.
describe.each([
	["in one go", 2000],
	["in blocks of 50", 50],
	["in blocks of 7", 7],
])("NIST's hard cases of a standard deviation, %s", (_, size) => {
	test("NumAcc1: mean 10000002, sd 1, exactly", () => {
		const moments = momentsOf([10_000_001, 10_000_003, 10_000_002], size);
		expect(moments.mean).toBe(10_000_002);
		expect(Math.sqrt(variance(moments))).toBe(1);
	});

	// How close doubles may come: data such as 1 000 000.1 are not exact in them
	test.each([
		["NumAcc2", 1, 1e-15],
		["NumAcc3", 1e6, 1e-9],
		["NumAcc4", 1e7, 1e-8],
	])("%s: mean %d and 0.2, sd 0.1 to %d", (_name, b, within) => {
		const moments = momentsOf(
			numAcc(b, (n) => n / 10),
			size,
		);
		expect(moments.count).toBe(1001);
		expect(Math.abs(moments.mean / (b + 0.2) - 1)).toBeLessThan(2e-15);
		expect(Math.abs(Math.sqrt(variance(moments)) - 0.1)).toBeLessThanOrEqual(within);
	});
});
