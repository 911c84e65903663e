import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FrequencyTable } from "../../src/statistics/frequency-table.ts";

const ps = [0, 0.1, 0.25, 0.5, 0.9, 1];
const values = fc.array(fc.integer({ min: -5, max: 40 }), { minLength: 1, maxLength: 200 });

function tallyOf(values: readonly number[]): FrequencyTable {
	const tally = new FrequencyTable();
	for (const value of values) tally.add(value);
	return tally;
}

describe("a tally of whole numbers", () => {
	test("has the count and the mean that the values have", () => {
		fc.assert(
			fc.property(values, (values) => {
				const tally = tallyOf(values);
				expect(tally.count).toBe(values.length);
				expect(tally.mean).toBe(values.reduce((sum, value) => sum + value, 0) / values.length);
			}),
			{ seed: 1 },
		);
	});

	test("gives as quantile the least value that a share p does not exceed", () => {
		fc.assert(
			fc.property(values, (values) => {
				const quantiles = tallyOf(values).quantiles(ps);
				ps.forEach((p, i) => {
					const reaches = (value: number) =>
						values.filter((other) => other <= value).length >= p * values.length - 1e-9;
					expect(quantiles[i]).toBe(Math.min(...values.filter(reaches)));
				});
			}),
			{ seed: 1996 },
		);
	});

	test("takes 55 of 100 for a share of 0.55, though the product is a hair more than 55", () => {
		expect(0.55 * 100).toBeGreaterThan(55);
		const tally = new FrequencyTable();
		tally.add(1, 55);
		tally.add(2, 45);
		expect(tally.quantiles([0.55])).toEqual([1]);
	});

	test("of parts merged in any order is that of all values", () => {
		fc.assert(
			fc.property(values, values, (first, second) => {
				const whole = tallyOf([...first, ...second]);
				const merged = tallyOf(second);
				merged.merge(tallyOf(first).parts());
				expect(merged.count).toBe(whole.count);
				expect(merged.parts()).toEqual(whole.parts());
			}),
			{ seed: 2 },
		);
	});

	test("travels as value and count by rising value", () => {
		expect(tallyOf([7, -1, 7, 12, 7]).parts()).toEqual([-1, 1, 7, 3, 12, 1]);
	});

	test("counts one value many times at once as if it had come so often", () => {
		const tally = new FrequencyTable();
		tally.add(3, 5);
		tally.add(3);
		expect([tally.count, tally.parts()]).toEqual([6, [3, 6]]);
	});

	test("is nought all over while it is empty", () => {
		const tally = new FrequencyTable();
		expect([tally.count, tally.mean]).toEqual([0, 0]);
		expect(tally.quantiles([0.1, 0.5])).toEqual([0, 0]);
		expect(tally.parts()).toEqual([]);
	});
});
