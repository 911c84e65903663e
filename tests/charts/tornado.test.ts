import { describe, expect, test } from "vitest";
import { tornado } from "../../src/charts/index.ts";
import { document, options, textsOf, wordsOf } from "./example.ts";
import { eightAssumptions } from "./tornado-examples.ts";

describe("the tornado", () => {
	const labels = (data: typeof eightAssumptions): string[] => {
		const texts = textsOf(tornado(data, document, options));
		return texts.filter((text) => data.rows.some((row) => row.label === text));
	};

	test("has the assumption that moves the difference most at the top", () => {
		expect(labels(eightAssumptions)).toEqual([
			"rate of breaches of a wet seal",
			"how much a turn loosens the seal",
			"capacity of the foam",
			"rate of breaches of a dry seal",
			"exudate",
			"time until a nurse comes at night",
		]);
	});

	test("keeps an assumption that turns the verdict before one that reaches further, and counts the rest", () => {
		const data = { ...eightAssumptions, top: 1 };
		expect(labels(data)).toEqual(["how much a turn loosens the seal"]);
		const texts = textsOf(tornado(data, document, options));
		expect(texts).toContain("turns");
		expect(texts).toContain("7 assumptions more are not drawn: none of them moves it by more than 0.053 a day.");
	});

	test("says what turns the verdict, by word", () => {
		const words = wordsOf(tornado(eightAssumptions, document, options));
		expect(words).toContain("1 assumption would turn the verdict.");
		expect(words).toContain(
			"how much a turn loosens the seal (0.02): −0.03 a day at half, 0.014 a day at twice; the verdict turns.",
		);
	});
});
