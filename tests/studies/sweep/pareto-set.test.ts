import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Goal, paretoSet } from "../../../src/studies/sweep/pareto-set.ts";

const places = (count: number) => Array.from({ length: count }, (_, i) => i);

describe("efficient points", () => {
	test("are those that none betters in one goal without being worse in another", () => {
		const goals: Goal[] = [
			{ better: "lower", values: [1, 2, 3, 2, 4] },
			{ better: "higher", values: [1, 3, 3, 2, 9] },
		];
		// 2 costs more than 1 for the same, 3 costs the same as 1 and gives less
		expect(paretoSet(goals, places(5))).toEqual([0, 1, 4]);
	});

	test("stand or fall together where they are equal", () => {
		const goals: Goal[] = [{ better: "lower", values: [2, 1, 1, 3] }];
		expect(paretoSet(goals, places(4))).toEqual([1, 2]);
	});

	test("are sought among the candidates alone", () => {
		const goals: Goal[] = [{ better: "lower", values: [2, 1, 3] }];
		expect(paretoSet(goals, [0, 2])).toEqual([0]);
	});

	test("are the same whether less of a thing or more of its opposite is wanted", () => {
		const column = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 8, maxLength: 8 });
		fc.assert(
			fc.property(column, column, (a, b) => {
				const least = paretoSet(
					[
						{ better: "lower", values: a },
						{ better: "lower", values: b },
					],
					places(8),
				);
				const opposite = paretoSet(
					[
						{ better: "lower", values: a },
						{ better: "higher", values: b.map((value) => -value) },
					],
					places(8),
				);
				expect(least.length).toBeGreaterThan(0);
				expect(opposite).toEqual(least);
			}),
			{ seed: 1 },
		);
	});
});
