import { describe, expect, test } from "vitest";
import { type DesignMapData, designMap } from "../../src/charts/index.ts";
import { threeMaps } from "./design-map-examples.ts";
import { document, options, textsOf, wordsOf } from "./example.ts";

describe("the design map", () => {
	test("writes the number in every cell that was run, and none in those that were not", () => {
		const texts = textsOf(designMap(threeMaps, document, options));
		for (const number of ["11.4", "6.5", "23.2", "1161"]) expect(texts).toContain(number);
		const chart = designMap(threeMaps, document, options);
		// Two cells are missing, and the key shows what that looks like.
		expect(chart.querySelectorAll("rect.absent")).toHaveLength(3);
	});

	test("marks the current and the usual regimen on each map by shapes of their own", () => {
		const chart = designMap(threeMaps, document, options);
		const maps = threeMaps.maps.length;
		expect(chart.querySelectorAll("circle")).toHaveLength(maps + 1);
		expect(chart.querySelectorAll("rect.ink-edge")).toHaveLength(maps + 1);
		expect(textsOf(chart)).toContain("does not keep: night calls under 0.5");
	});

	test("shades what is more stronger, and maps of one measure on one scale", () => {
		const cell = (value: number, x: number) => ({ x, y: 0, value });
		const map = (facet: string, values: readonly number[]) => ({
			measure: "Washes",
			unit: "",
			decimals: 0,
			facet,
			cells: values.map(cell),
		});
		const data: DesignMapData = {
			title: "",
			x: { label: "dwell", values: ["1", "2"] },
			y: { label: "suction", values: ["1"] },
			maps: [map("first", [0, 50]), map("second", [50, 100])],
		};
		const steps = [...designMap(data, document, options).querySelectorAll("rect[class^=shade]")].map((rect) =>
			rect.getAttribute("class"),
		);
		expect(steps).toEqual(["shade0", "shade3", "shade3", "shade6"]);
	});

	test("says the least and the most of each measure and where, and what the marked ones have", () => {
		const words = wordsOf(designMap(threeMaps, document, options));
		expect(words).toContain(
			"Washes, a day: from 3.8 at 20 min and 6 h to 23.2 at 1 min and 1 h; the current regimen 11.4; the site's usual regimen 6.5.",
		);
	});
});
