import { describe, expect, test } from "vitest";
import { document, options, wordsOf } from "./example.ts";
import { comparisonExamples, examples, galleryExamples } from "./examples.ts";
import { galleryPage } from "./gallery-page.ts";

/** The chart as a file that opens by itself. */
function fileText(chart: SVGSVGElement): string {
	const file = document.implementation.createDocument("http://www.w3.org/2000/svg", "svg");
	file.documentElement.replaceWith(file.adoptNode(chart));
	return `${file.documentElement.outerHTML.replaceAll(/></g, ">\n<")}\n`;
}

describe("the gallery", () => {
	test.each(examples)("$name", async ({ name, draw, narrowPx }) => {
		await expect(fileText(draw(document, options))).toMatchFileSnapshot(`gallery/${name}.svg`);
		if (narrowPx === undefined) return;
		const narrow = draw(document, { ...options, widthPx: narrowPx });
		await expect(fileText(narrow)).toMatchFileSnapshot(`gallery/${name}-narrow.svg`);
	});

	test("stands in the reports as one page that is up to date", async () => {
		await expect(galleryPage(galleryExamples, document)).toMatchFileSnapshot("../../reports/gallery.html");
	});
});

describe("every chart", () => {
	test.each(examples)("says in words what it shows, as wide as it is asked to be: $name", ({ draw, narrowPx }) => {
		for (const widthPx of [900, narrowPx ?? 900]) {
			const chart = draw(document, { ...options, widthPx });
			expect(chart.getAttribute("role")).toBe("img");
			expect(wordsOf(chart).length).toBeGreaterThan(20);
			expect(chart.getAttribute("width")).toBe(String(widthPx));
			expect(Number(chart.getAttribute("height"))).toBeGreaterThan(20);
			expect(chart.outerHTML).not.toMatch(/NaN|Infinity|undefined/);
		}
	});

	test.each(examples)("leaves title and style sheet to the page that has them: $name", ({ draw }) => {
		const bare = draw(document, { ...options, titled: false, styled: false });
		expect(bare.querySelector("text.title, style")).toBeNull();
		expect(wordsOf(bare)).toBe(wordsOf(draw(document, options)));
	});

	test.each(comparisonExamples)("of a comparison is titled where it stands alone: $name", ({ draw }) => {
		expect(draw(document, options).querySelector("text.title")).not.toBeNull();
	});
});
