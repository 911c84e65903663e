import { describe, expect, test } from "vitest";
import { efficientSet } from "../../src/charts/index.ts";
import { crowdedPoints, twentyPoints } from "./efficient-set-examples.ts";
import { document, options, textsOf } from "./example.ts";

describe("the efficient set", () => {
	test("is joined from left to right, all others are pale", () => {
		const chart = efficientSet(twentyPoints, document, options);
		const efficient = twentyPoints.points.filter((point) => point.efficient);
		const joined = chart.querySelector("path.found-edge")?.getAttribute("d");
		const xs = [...(joined ?? "").matchAll(/[ML]([\d.]+),/g)].map(([, x]) => Number(x));
		expect(efficient.length).toBeGreaterThan(1);
		expect(xs).toHaveLength(efficient.length);
		expect(xs).toEqual(xs.toSorted((a, b) => a - b));
	});

	test("names every point of it: beside the point, or by a number where names would touch", () => {
		const texts = textsOf(efficientSet(twentyPoints, document, options));
		for (const { label, efficient } of twentyPoints.points) expect(texts.includes(label), label).toBe(efficient);
		const crowd = textsOf(efficientSet(crowdedPoints, document, options));
		crowdedPoints.points.forEach((point, index) => {
			expect(crowd).toContain(String(index + 1));
			expect(crowd.some((text) => text.startsWith(`${index + 1}: ${point.label}`))).toBe(true);
		});
	});
});
