import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blocksIn, InBlockOrder, mergeMoments, noMoments, replicationsIn } from "../../src/statistics/index.ts";

const five = { size: 2, replications: 5 };

describe("blocks of replications", () => {
	test("are as many as hold them all, the last one shorter", () => {
		expect(blocksIn(five)).toBe(3);
		expect([0, 1, 2, 3].map((block) => replicationsIn(block, five))).toEqual([[0, 1], [2, 3], [4], []]);
		expect(blocksIn({ size: 50, replications: 100 })).toBe(2);
	});
});

describe("parts that are handed on by block", () => {
	test("come in the same order, however they were dealt out and whenever they end", () => {
		const parts = [
			{ first: 0, blocks: 2 },
			{ first: 2, blocks: 1 },
			{ first: 3, blocks: 3 },
			{ first: 6, blocks: 1 },
		];
		fc.assert(
			fc.property(fc.shuffledSubarray(parts, { minLength: parts.length }), (dealt) => {
				const taken: number[] = [];
				const order = new InBlockOrder<number>((first) => taken.push(first));
				for (const { first, blocks } of dealt) order.add(first, blocks, first);
				order.complete(7);
				expect(taken).toEqual([0, 2, 3, 6]);
			}),
		);
	});

	test("are refused where one comes again, whether it has been handed on or waits", () => {
		const order = new InBlockOrder<string>(() => {}, " of group 1");
		order.add(0, 2, "a");
		order.add(4, 2, "c");
		for (const first of [0, 1, 4])
			expect(() => order.add(first, 1, "again")).toThrow(new RangeError(`block ${first} of group 1 came twice`));
		expect(order.next).toBe(2);
	});

	test("are missed where one has not come, or more than there are", () => {
		const order = new InBlockOrder<string>(() => {});
		order.add(0, 2, "a");
		order.add(3, 1, "c");
		expect(() => order.complete(4)).toThrow(new RangeError("block 2 of 4 is missing"));
		expect(() => order.complete(1)).toThrow(RangeError);
		order.add(2, 1, "b");
		order.complete(4);
	});
});

test("moments of a block are merged place by place", () => {
	const into = [noMoments(), noMoments()];
	mergeMoments(into, [
		{ count: 2, mean: 1, squares: 2 },
		{ count: 1, mean: 5, squares: 0 },
	]);
	mergeMoments(into, [{ count: 2, mean: 3, squares: 2 }, noMoments()]);
	expect(into).toEqual([
		{ count: 4, mean: 2, squares: 8 },
		{ count: 1, mean: 5, squares: 0 },
	]);
});
