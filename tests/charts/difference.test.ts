import { describe, expect, test } from "vitest";
import { type DifferenceRow, type DifferenceRowsData, differenceRows } from "../../src/charts/index.ts";
import { longWords, manyMeasures, sevenMeasures } from "./difference-examples.ts";
import { document, options, textsOf, wordsOf } from "./example.ts";

describe("the rows of differences", () => {
	const rowsOf = (data: DifferenceRowsData): Element[] => {
		const chart = differenceRows(data, document, options);
		return [...chart.querySelectorAll("g")].filter((group) =>
			data.rows.some((row) => group.querySelector(":scope > title")?.textContent === `${row.label}: ${row.verdict}`),
		);
	};

	test("have a dot and a bar where an interval is given, a hollow dot alone where none is", () => {
		const rows = rowsOf(sevenMeasures);
		expect(rows).toHaveLength(sevenMeasures.rows.length);
		rows.forEach((group, index) => {
			const given = sevenMeasures.rows[index]?.low !== null;
			expect(group.querySelectorAll("path")).toHaveLength(given ? 1 : 0);
			expect(group.querySelectorAll("circle.hollow")).toHaveLength(given ? 0 : 1);
		});
	});

	test("stand right of the middle where a has more, left where b has more, on it where neither has", () => {
		const one = (mean: number): DifferenceRow => ({
			label: `${mean}`,
			unit: "mL",
			meanA: mean,
			meanB: 0,
			mean,
			low: mean - 1,
			high: mean + 1,
			verdict: "",
			tone: "none",
		});
		const rows = rowsOf({ title: "", a: "a", b: "b", rows: [one(5), one(-5), one(0)] });
		const at = rows.map((group) => Number(group.querySelector("circle")?.getAttribute("cx")));
		const [more = 0, fewer = 0, none = 0] = at;
		expect(more).toBeGreaterThan(none);
		expect(more - none).toBeCloseTo(none - fewer, 1);
	});

	test("say both means, the verdict and the unit of each scale", () => {
		const texts = textsOf(differenceRows(sevenMeasures, document, options));
		for (const words of [
			"64.2 min",
			"71.4 min",
			"less: 7.2 min (6.5 to 7.9)",
			"−8",
			"8 min",
			"more with short",
			"more with long",
		])
			expect(texts).toContain(words);
	});

	test("name a difference that was found apart from one that was not in the text alternative", () => {
		expect(wordsOf(differenceRows(sevenMeasures, document, options))).toContain(
			"7 measures: a difference was found in five, none in one, one could not be judged.",
		);
	});

	test("are as many as were asked for, up to forty, one under the other", () => {
		const chart = differenceRows(manyMeasures, document, options);
		const texts = textsOf(chart);
		for (const { label } of manyMeasures.rows) expect(texts).toContain(label);
		const heights = [...chart.querySelectorAll("circle")].map((dot) => Number(dot.getAttribute("cy")));
		expect(heights).toHaveLength(40);
		expect(heights).toEqual(heights.toSorted((a, b) => a - b));
	});

	test("take hostile words for text", () => {
		const chart = differenceRows(longWords, document, options);
		expect(chart.querySelector("script, img")).toBeNull();
		expect(wordsOf(chart)).toContain("<script>alert(1)</script>");
	});
});
