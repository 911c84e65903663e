import { describe, expect, test } from "vitest";
import { waterLineChart } from "../../src/charts/index.ts";
import type { DayResult } from "../../src/results/index.ts";
import { leakEarly, oneCycle, quietHours, twoHours, waterLineData } from "./day-examples.ts";
import { document, options, textsOf, wordsOf } from "./example.ts";
import { dayResult, longWash, stepDown, troubledDay } from "./fixture.ts";

describe("the first two hours of a day", () => {
	const chart = (spanMin: number) => waterLineChart({ ...waterLineData(leakEarly()), spanMin }, document, options);

	test("hold what began in them and nothing later", () => {
		const words = wordsOf(chart(120));
		expect(words).toContain("From 07:00 to 09:00.");
		expect(words).toContain("4 fills in this time.");
		expect(words).toContain("07:28 seal leak, 17 min: nurse called");
		expect(words).not.toContain("source empty");
	});

	test("are the whole day where they are as long as it", () => {
		expect(chart(1440).outerHTML).toBe(waterLineChart(waterLineData(leakEarly()), document, options).outerHTML);
	});

	test("of two days stand on the same heights", () => {
		const heights = (which: DayResult, other: DayResult) =>
			textsOf(waterLineChart(twoHours(which, other), document, options)).filter((text) => /^\d+ mL$/.test(text));
		expect(heights(quietHours(), leakEarly())).toEqual(heights(leakEarly(), quietHours()));
		expect(heights(quietHours(), leakEarly())).toContain("100 mL");
	});
});

const waterLine = (result: DayResult): SVGSVGElement => waterLineChart(waterLineData(result), document, options);

describe("every water line", () => {
	test("says in words what it shows", () => {
		const words = wordsOf(waterLine(troubledDay()));
		expect(words).toContain("Thigh wound after debridement, second day");
		expect(words).toContain("11 fills, 550 mL of solution in");
		expect(words).toContain("13:25 seal leak, 17 min: nurse called");
		expect(words).toContain("large output, 38 min: still standing");
	});

	test("keeps a bounded number of path points over four weeks of cycles", () => {
		const path = waterLine(longWash()).querySelector("path.water")?.getAttribute("d") ?? "";
		// Four points a px of width, upper and lower edge of the area.
		expect(path.split(/[ML]/).length).toBeLessThan(2 * 4 * 960);
	});

	test("counts many alarms in lanes instead of labelling each", () => {
		const texts = textsOf(waterLine(longWash()));
		expect(texts).toContain("×26");
		expect(texts).toContain("×14");
	});

	test("shows no source and no cycle where nothing is filled", () => {
		const texts = textsOf(waterLine(stepDown()));
		expect(texts).not.toContain("solution left");
		expect(texts.some((text) => text.startsWith("The first minutes, enlarged"))).toBe(true);
	});

	test("draws no band where there is one replication", () => {
		expect(waterLine(oneCycle()).querySelector(".canister-band")).toBeNull();
		expect(waterLine(troubledDay()).querySelector(".canister-band")).not.toBeNull();
	});

	test("takes a hostile title for text", () => {
		const hostile = `</script><img src=x onerror=alert(1)> ]]> "&' \u0000\u0008\uD800`;
		const result = dayResult([{}], { title: hostile });
		const chart = waterLine(result);
		expect(chart.querySelector("img, script")).toBeNull();
		const title = chart.querySelector("title")?.textContent ?? "";
		expect(title).toBe(`Water line: </script><img src=x onerror=alert(1)> ]]> "&' \uFFFD\uFFFD\uFFFD`);
	});
});
