import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import type { DayResult } from "../../src/analysis/day-result.ts";
import {
	canisterChart,
	heatStrip,
	sparkline,
	waterLineChart,
} from "../../src/charts/index.ts";
import {
	dayResult,
	longWash,
	pairedDay,
	quietDay,
	stepDown,
	troubledDay,
} from "./fixture.ts";

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

function parts(result: DayResult) {
	const [dressing, day, projection] = [
		result.scenario.dressings[0],
		result.dressings[0],
		result.projection.dressings[0],
	];
	if (dressing === undefined || day === undefined || projection === undefined)
		throw new Error("a result without a dressing");
	return { dressing, day, projection };
}

function waterLine(result: DayResult): SVGSVGElement {
	const { scenario, projection } = result;
	return waterLineChart(
		{
			title: scenario.title,
			clock: scenario,
			replications: projection.replications,
			roundShare: 0.8,
			...parts(result),
		},
		document,
		{ idPrefix: "example" },
	);
}

const oneCycle = (): DayResult =>
	dayResult([{ horizonMin: 180 }], {
		title: "One cycle",
		replications: 1,
		chance: "off",
	});
const firstHour = (): DayResult =>
	dayResult([{ horizonMin: 60, suctionMin: 20 }], {
		title: "The first hour",
		replications: 1,
	});

describe("the gallery", () => {
	test.each([
		["water-line-one-cycle", oneCycle],
		["water-line-first-hour", firstHour],
		["water-line-quiet", quietDay],
		["water-line-troubled", troubledDay],
		["water-line-no-fill", stepDown],
	] as const)("%s", async (name, result) => {
		await expect(fileText(waterLine(result()))).toMatchFileSnapshot(
			`gallery/${name}.svg`,
		);
	});

	test("heat-strip-day", async () => {
		const result = troubledDay();
		const chart = heatStrip(
			{
				title: "When an alarm is likely",
				clock: result.scenario,
				alarms: parts(result).projection.alarms,
				level: 0.05,
			},
			document,
			{ idPrefix: "example" },
		);
		await expect(fileText(chart)).toMatchFileSnapshot(
			"gallery/heat-strip-day.svg",
		);
	});

	test("heat-strip-weeks", async () => {
		const result = longWash();
		const chart = heatStrip(
			{
				title: "When an alarm is likely",
				clock: result.scenario,
				alarms: parts(result).projection.alarms,
				level: 0.05,
			},
			document,
			{ idPrefix: "example" },
		);
		await expect(fileText(chart)).toMatchFileSnapshot(
			"gallery/heat-strip-weeks.svg",
		);
	});

	test("canister", async () => {
		const result = troubledDay();
		const { dressing, projection } = parts(result);
		const data = {
			title: "Canister of the thigh",
			clock: result.scenario,
			canisterMl: dressing.canisterMl,
			roundShare: 0.8,
			band: projection.canisterLevel,
			changes: projection.canisterChanges,
		};
		await expect(
			fileText(canisterChart(data, document, { idPrefix: "example" })),
		).toMatchFileSnapshot("gallery/canister.svg");
	});

	test("sparkline", async () => {
		const { day } = parts(pairedDay());
		await expect(
			fileText(
				sparkline({ day, horizonMin: 1440 }, document, { idPrefix: "example" }),
			),
		).toMatchFileSnapshot("gallery/sparkline.svg");
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
