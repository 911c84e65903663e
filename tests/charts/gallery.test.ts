import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import type { DayResult } from "../../src/analysis/day-result.ts";
import { waterLineChart } from "../../src/charts/index.ts";
import { comparisonExamples } from "./comparison-examples.ts";
import { dayExamples, oneCycle, waterLineData } from "./day-examples.ts";
import { dayResult, longWash, stepDown, troubledDay } from "./fixture.ts";
import { galleryPage } from "./gallery-page.ts";

const document = new JSDOM("").window.document;

/** The chart as a file that opens by itself. */
function fileText(chart: SVGSVGElement): string {
	const file = document.implementation.createDocument(
		"http://www.w3.org/2000/svg",
		"svg",
	);
	file.documentElement.replaceWith(file.adoptNode(chart));
	return `${file.documentElement.outerHTML.replaceAll(/></g, ">\n<")}\n`;
}

const waterLine = (result: DayResult): SVGSVGElement =>
	waterLineChart(waterLineData(result), document, { idPrefix: "example" });

const examples = [...dayExamples, ...comparisonExamples];

describe("the gallery", () => {
	test.each(examples)("$name", async ({ name, draw, narrowPx }) => {
		await expect(
			fileText(draw(document, { idPrefix: "example" })),
		).toMatchFileSnapshot(`gallery/${name}.svg`);
		if (narrowPx === undefined) return;
		await expect(
			fileText(draw(document, { idPrefix: "example", widthPx: narrowPx })),
		).toMatchFileSnapshot(`gallery/${name}-narrow.svg`);
	});

	test("stands in the reports as one page that is up to date", async () => {
		await expect(galleryPage(examples, document)).toMatchFileSnapshot(
			"../../reports/gallery.html",
		);
	});
});

describe("every water line", () => {
	test("says in words what it shows", () => {
		const chart = waterLine(troubledDay());
		const [title, description] = (chart.getAttribute("aria-labelledby") ?? "")
			.split(" ")
			.map((id) => chart.querySelector(`#${id}`)?.textContent);
		expect(chart.getAttribute("role")).toBe("img");
		expect(title).toBe("Water line: Thigh wound after debridement, second day");
		expect(description).toContain("11 fills, 550 mL of solution in");
		expect(description).toContain("13:25 seal leak, 17 min: nurse called");
		expect(description).toContain("large output, 38 min: still standing");
	});

	test("keeps a bounded number of path points over four weeks of cycles", () => {
		const path =
			waterLine(longWash()).querySelector("path.water")?.getAttribute("d") ??
			"";
		// Four points a px of width, upper and lower edge of the area.
		expect(path.split(/[ML]/).length).toBeLessThan(2 * 4 * 960);
	});

	test("counts many alarms in lanes instead of labelling each", () => {
		const texts = [...waterLine(longWash()).querySelectorAll("text")].map(
			(text) => text.textContent,
		);
		expect(texts).toContain("×26");
		expect(texts).toContain("×14");
	});

	test("shows no source and no cycle where nothing is filled", () => {
		const texts = [...waterLine(stepDown()).querySelectorAll("text")].map(
			(text) => text.textContent ?? "",
		);
		expect(texts).not.toContain("solution left");
		expect(
			texts.some((text) => text.startsWith("The first minutes, enlarged")),
		).toBe(true);
	});

	test("draws no band where there is one replication", () => {
		expect(waterLine(oneCycle()).querySelector(".canister-band")).toBeNull();
		expect(
			waterLine(troubledDay()).querySelector(".canister-band"),
		).not.toBeNull();
	});

	test("takes a hostile title for text", () => {
		const hostile = `</script><img src=x onerror=alert(1)> ]]> "&' \u0000\u0008\uD800`;
		const result = dayResult([{}], { title: hostile });
		const chart = waterLine(result);
		expect(chart.querySelector("img, script")).toBeNull();
		const title = chart.querySelector("title")?.textContent ?? "";
		expect(title).toBe(
			`Water line: </script><img src=x onerror=alert(1)> ]]> "&' \uFFFD\uFFFD\uFFFD`,
		);
	});
});
