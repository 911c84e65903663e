import { describe, expect, test } from "vitest";
import { responseCurve } from "../../src/charts/index.ts";
import { document, options, textsOf } from "./example.ts";
import { threeCurves } from "./response-curve-examples.ts";

describe("the response curve", () => {
	test("marks the current value by a line in every panel", () => {
		const chart = responseCurve(threeCurves, document, options);
		const lines = [...chart.querySelectorAll("line.ink-edge:not(.dashed)")];
		expect(lines).toHaveLength(threeCurves.curves.length + 1);
		expect(new Set(lines.map((line) => line.getAttribute("x1"))).size).toBe(1);
		expect(textsOf(chart)).toContain("current: 5 min");
	});

	test("draws no band where no interval could be given", () => {
		const chart = responseCurve(threeCurves, document, options);
		const bands = [...chart.querySelectorAll("path.found-band")].map((path) => path.getAttribute("d") !== "");
		expect(bands).toEqual([true, true, false]);
	});
});
