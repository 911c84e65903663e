import { describe, expect, test } from "vitest";
import type { DayResult } from "../../src/analysis/day-result.ts";
import { waterLineChart } from "../../src/charts/index.ts";
import { document, options, textsOf, wordsOf } from "./chart-words.ts";
import { leakEarly, parts, quietHours, waterLineData } from "./day-examples.ts";

describe("the first two hours of a day", () => {
	const chart = (spanMin: number) =>
		waterLineChart(
			{ ...waterLineData(leakEarly()), spanMin },
			document,
			options,
		);

	test("hold what began in them and nothing later", () => {
		const words = wordsOf(chart(120));
		expect(words).toContain("From 07:00 to 09:00.");
		expect(words).toContain("4 fills in this time.");
		expect(words).toContain("07:28 seal leak, 17 min: nurse called");
		expect(words).not.toContain("source empty");
	});

	test("are the whole day where they are as long as it", () => {
		expect(chart(1440).outerHTML).toBe(
			waterLineChart(waterLineData(leakEarly()), document, options).outerHTML,
		);
	});

	test("of two days stand on the same heights", () => {
		const heights = (which: () => DayResult, other: () => DayResult) =>
			textsOf(
				waterLineChart(
					{ ...waterLineData(which()), spanMin: 120, beside: [parts(other())] },
					document,
					options,
				),
			).filter((text) => /^\d+ mL$/.test(text));
		expect(heights(quietHours, leakEarly)).toEqual(
			heights(leakEarly, quietHours),
		);
		expect(heights(quietHours, leakEarly)).toContain("100 mL");
	});
});
