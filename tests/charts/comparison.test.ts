import { describe, expect, test } from "vitest";
import { differenceRows } from "../../src/charts/index.ts";
import { document, options, wordsOf } from "./chart-words.ts";
import { comparisonExamples } from "./comparison-examples.ts";
import { longWords } from "./difference-examples.ts";

describe("every chart of a comparison", () => {
	test.each(comparisonExamples)(
		"says in words what it shows, wide and narrow: $name",
		({ draw }) => {
			for (const widthPx of [900, 360]) {
				const chart = draw(document, { ...options, widthPx });
				expect(chart.getAttribute("role")).toBe("img");
				expect(wordsOf(chart).length).toBeGreaterThan(20);
				expect(chart.getAttribute("width")).toBe(String(widthPx));
				expect(Number(chart.getAttribute("height"))).toBeGreaterThan(40);
				expect(chart.outerHTML).not.toMatch(/NaN|Infinity|undefined/);
			}
		},
	);

	test.each(comparisonExamples)(
		"keeps its title to its text alternative where the page has one: $name",
		({ draw }) => {
			const titled = draw(document, options);
			const bare = draw(document, { ...options, titled: false, styled: false });
			expect(titled.querySelector("text.title")).not.toBeNull();
			expect(bare.querySelector("text.title, style")).toBeNull();
			expect(wordsOf(bare)).toBe(wordsOf(titled));
		},
	);

	test("takes hostile words for text", () => {
		const chart = differenceRows(longWords, document, options);
		expect(chart.querySelector("script, img")).toBeNull();
		expect(wordsOf(chart)).toContain("<script>alert(1)</script>");
	});
});
