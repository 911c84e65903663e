import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { distance, nearest } from "../../../src/scenario/reading/nearest.ts";

const word = fc.string({ maxLength: 12 });

describe("near misses", () => {
	test.each([
		["dwel", "dwell"],
		["dwlel", "dwell"],
		["Dwell", "dwell"],
		["dressing_change", "dressingChange"],
		["suciton", "suction"],
	])("%s was meant as %s", (written, meant) => {
		expect(nearest(written, ["fill", "dwell", "suction", "dressingChange"])).toBe(meant);
	});

	test("of a word like none nothing is said", () => {
		expect(nearest("colour", ["fill", "dwell"])).toBeUndefined();
		expect(nearest("x", ["id", "at"])).toBeUndefined();
	});

	test("a swap of neighbours counts once", () => {
		expect(distance("ab", "ba")).toBe(1);
		expect(distance("dwell", "dwlel")).toBe(1);
	});

	test("the distance is 0 for equal words only, the same both ways, and never more than the longer word", () => {
		fc.assert(
			fc.property(word, word, (a, b) => {
				expect(distance(a, b)).toBe(distance(b, a));
				expect(distance(a, b) === 0).toBe(a === b);
				expect(distance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
			}),
		);
	});
});
