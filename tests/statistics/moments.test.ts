import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addTo, type Moments, mergeInto, noMoments, variance } from "../../src/statistics/index.ts";

function momentsOf(values: readonly number[]): Moments {
	const moments = noMoments();
	for (const value of values) addTo(moments, value);
	return moments;
}

const values = fc.array(fc.double({ min: -1e4, max: 1e6, noNaN: true }), { maxLength: 120 });

/** Two passes over the values. */
function plainly(values: readonly number[]): Moments {
	if (values.length === 0) return noMoments();
	const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
	return { count: values.length, mean, squares: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) };
}

function expectClose(moments: Moments, expected: Moments): void {
	expect(moments.count).toBe(expected.count);
	expect(Math.abs(moments.mean - expected.mean)).toBeLessThan(1e-6);
	expect(Math.abs(moments.squares - expected.squares) / Math.max(1, expected.squares)).toBeLessThan(1e-9);
}

describe("moments", () => {
	test("taken in one by one are those of two passes", () => {
		fc.assert(
			fc.property(values, (values) => {
				expectClose(momentsOf(values), plainly(values));
			}),
			{ seed: 1962 },
		);
	});

	test("of blocks merged by index are those of all values", () => {
		fc.assert(
			fc.property(fc.array(values, { maxLength: 8 }), (blocks) => {
				const merged = noMoments();
				for (const block of blocks) mergeInto(merged, momentsOf(block));
				expectClose(merged, plainly(blocks.flat()));
			}),
			{ seed: 1979 },
		);
	});

	test("of the same blocks in the same order are the same to the last bit", () => {
		const blocks = Array.from({ length: 8 }, (_, k) =>
			Array.from({ length: 50 }, (_, i) => Math.sin(50 * k + i) * 1e5),
		);
		const merged = () => {
			const all = noMoments();
			for (const block of blocks) mergeInto(all, momentsOf(block));
			return all;
		};
		expect(merged()).toEqual(merged());
	});

	test("take in an empty block without a trace, and an empty start takes a block as it is", () => {
		const some = momentsOf([3, 5, 7.25]);
		const before = { ...some };
		mergeInto(some, noMoments());
		expect(some).toEqual(before);
		const none = noMoments();
		mergeInto(none, some);
		expect(none).toEqual(some);
	});

	test("do not change the block that is merged", () => {
		const block = momentsOf([1, 2]);
		mergeInto(momentsOf([5]), block);
		expect(block).toEqual(momentsOf([1, 2]));
	});

	test("of a constant have no variance, to the last bit", () => {
		const moments = noMoments();
		for (let k = 0; k < 20; k++) mergeInto(moments, momentsOf(new Array(50).fill(705.4712345)));
		expect(moments.mean).toBe(705.4712345);
		expect(variance(moments)).toBe(0);
	});

	test("have a variance from two values on, n − 1 in the divisor", () => {
		expect(variance(momentsOf([]))).toBeNaN();
		expect(variance(momentsOf([4]))).toBeNaN();
		expect(variance(momentsOf([4, 8]))).toBe(8);
	});
});
