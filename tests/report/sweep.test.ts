import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { sweepHtml, sweepSvg, sweepTables } from "../../src/report/index.ts";
import { sweepJson, sweepJsonSchema } from "../../src/results/index.ts";
import { hostileText, readableText } from "./hostile.ts";
import { expectOneFile, expectSoundIds, expectSoundSvg, expectSoundTables, recordsOfCsv } from "./sound-report.ts";
import { type SweepPlan, sweep } from "./sweep-fixture.ts";

// ajv's build of draft 2020-12 is CommonJS; its class is the default of the module.
const { Ajv2020 } = await import("ajv/dist/2020.js");
const { document, DOMParser } = new JSDOM("").window;

const clocks: SweepPlan = {
	axes: { start: [360, 420, 480, 600], apart: [0, 30, 60] },
	dressings: [{ id: "thigh" }, { id: "hip" }],
};
const hostile: SweepPlan = {
	dressings: [{ id: hostileText }],
	scenario: { title: hostileText, seed: "+seed", solution: "=saline" },
	reason: `=1+2 ${hostileText}`,
};
const plans: readonly (readonly [string, SweepPlan])[] = [
	["a plane of dwell and suction", {}],
	["three settings", { axes: { dwell: [1, 5, 10], suction: [60, 120, 210], fill: [30, 50] } }],
	["one setting, no limits", { axes: { dwell: [1, 5, 20] }, plain: true }],
	["beginnings", clocks],
	["hostile texts", hostile],
];

const pageOf = (plan: SweepPlan): Document => new JSDOM(sweepHtml(sweep(plan), document)).window.document;
const textOf = (element: Element | null | undefined): string => (element?.textContent ?? "").replaceAll("\u00A0", " ");
const answersOf = (page: Document): string[] => [...page.querySelectorAll(".brief .answers li")].map(textOf);

describe("the report of a grid", () => {
	const page = pageOf({});
	const answers = answersOf(page);

	test("begins with the question: what other settings buy and cost against the current ones", () => {
		expect(textOf(page.querySelector("h1"))).toBe(
			"For this wound, what do other dwells and suction periods buy and cost against 50 mL for 5 min every 2 h, suction at −125 mmHg?",
		);
		expect(textOf(pageOf(clocks).querySelector("h1"))).toBe(
			"For these wounds, what does it buy and cost to begin at another time than 07:00, or to have the dressings out of step?",
		);
	});

	test("answers how many keep the limits, and which of them none betters", () => {
		expect(answers[0]).toBe("7 of 20 regimens keep calls at night (19:00 to 07:00) under 0.08 a day.");
		expect(answers[1]).toMatch(/^4 regimens are efficient where more washes and fewer breaches of the seal are wanted/);
	});

	test("holds the best in each measure against the current regimen, with its interval", () => {
		expect(answers).toContain(
			"Breaches of the seal, fewer is better: 0.0616 a day at 1 min, 6 h; fewer than now by 0.0532 a day (0.052 to 0.0545).",
		);
	});

	test("names no winner", () => {
		expect(answers.at(-1)).toContain("None of them is the best of all");
		expect(answers.at(-1)).toContain("The choice stays with the clinician");
	});

	test("gives what is neither better nor worse as a range", () => {
		expect(answers.some((one) => /^Washes: from 3\.88 a day \(10 min, 6 h\) to 23 a day /.test(one))).toBe(true);
		const wet = answersOf(pageOf({ measures: ["wetMin"] }));
		expect(wet.some((one) => /^Wet time \(fill and dwell\): from .+ to /.test(one))).toBe(true);
	});

	test("marks what lies outside common practice, and says why", () => {
		expect(answers.some((one) => one.startsWith("4 of 20 lie outside"))).toBe(true);
		expect(textOf(page.querySelector("#outside"))).toContain(
			"A dwell of 40 min is outside the 1 to 30 min that the defaults were set for. (4 regimens: 40 min, 1 h; 40 min, 2 h",
		);
		expect(textOf(page.querySelector("#outside"))).toContain("no advice to use them");
		expect(pageOf({ axes: { dwell: [1, 5], suction: [60, 120] } }).querySelector("#outside")).toBeNull();
	});

	test("draws a map of each measure, the efficient set and a response curve", () => {
		for (const id of ["design-map", "efficient", "response"])
			expect(page.querySelectorAll(`#${id} .wide svg[role=img]`).length).toBe(1);
		const map = textOf(page.querySelector("#design-map .wide svg"));
		for (const words of ["Washes", "Breaches of the seal", "3.5 h", "40 min"]) expect(map).toContain(words);
	});

	test("a single setting has a curve and no map; without limits and aims no set", () => {
		const single = pageOf({ axes: { dwell: [1, 5, 20] }, plain: true });
		expect(single.querySelector("#design-map")).toBeNull();
		expect(single.querySelector("#efficient")).toBeNull();
		expect(textOf(single.querySelector("#response h2"))).toBe("Dwell alone");
	});

	test("does not draw what is the same everywhere, and says so", () => {
		const clock = pageOf(clocks);
		expect(answersOf(clock).some((one) => one.startsWith("The same everywhere: washes 11.38 a day"))).toBe(true);
		expect(textOf(clock.querySelector("#design-map figcaption"))).toContain("washes");
	});

	test("shows what moves away from hand-over, meals and small hours where the beginning is varied", () => {
		const clock = pageOf(clocks);
		const chart = textOf(clock.querySelector("#begin .wide svg"));
		for (const words of ["hand-over", "meals", "small hours", "06:00", "10:00"]) expect(chart).toContain(words);
		expect(textOf(clock.querySelector("#begin table"))).toContain("Calls at hand-over, a day");
		expect(textOf(clock.querySelector("#apart table"))).toContain("Calls for two dressings at once");
		expect(page.querySelector("#begin, #apart")).toBeNull();
	});

	test("is the same bytes for the same result", () => {
		expect(sweepHtml(sweep(), new JSDOM("").window.document)).toBe(sweepHtml(sweep(), document));
	});
});

describe.each(plans)("the report of %s", (_, plan) => {
	const page = pageOf(plan);

	test("is one file without scripts or outside requests", () => expectOneFile(page));

	test("has unique ids, and references lead somewhere", () => expectSoundIds(page));

	test("sweep.json reads back as it was, and obeys its schema", () => {
		const result = sweep(plan);
		const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(sweepJsonSchema);
		const text = sweepJson(result);
		expect(text.startsWith('{\n  "format": "slackwater/sweep@1",')).toBe(true);
		expect(JSON.parse(text)).toEqual(result);
		expect(validate(JSON.parse(text)) ? [] : validate.errors).toEqual([]);
		expect(validate({ ...result, winner: 3 })).toBe(false);
		expect(validate({ ...result, measures: ["score"] })).toBe(false);
		const [first, ...rest] = result.points;
		expect(validate({ ...result, points: [{ ...first, at: "5 min" }, ...rest] })).toBe(false);
	});

	test("the map is a file that opens by itself", () => {
		expectSoundSvg(sweepSvg(sweep(plan), document), new DOMParser());
	});

	test("the tables are RFC 4180, hold every point and value, and nothing a spreadsheet would run", () => {
		const result = sweep(plan);
		const tables = sweepTables(result);
		expectSoundTables(tables);
		const points = recordsOfCsv(tables["points.csv"]);
		expect(points.length).toBe(result.points.length);
		expect(points.filter(({ efficient }) => efficient === "true").length).toBe(result.efficient?.points.length ?? 0);
		for (const row of recordsOfCsv(tables["values.csv"])) {
			const mark = result.marks.find(({ mark }) => mark === row.point);
			const from = mark ?? result.points[Number(row.point)];
			const value = Object.entries(from?.measures ?? {}).find(([name]) => name === row.measure)?.[1];
			expect(Number(row.mean)).toBe(value?.mean);
			expect(Number(row.difference)).toBe(value?.difference);
		}
	});
});

test("columns of points.csv carry the unit of their axis", () => {
	const [head] = (
		sweepTables(sweep({ axes: { dwell: [1, 5], fill: [30, 50], depth: [100, 125], start: [360, 420] } }))[
			"points.csv"
		] ?? ""
	).split("\r\n");
	expect(head).toBe("point,dwellMin,fillMl,depthMmHg,startClockMin,current,usual,kept,efficient,outside");
});

test("hostile titles, names and reasons stay text", () => {
	const page = pageOf(hostile);
	expect(page.querySelectorAll("script, img, [onerror]").length).toBe(0);
	expect(page.querySelector("#outside li")?.textContent).toContain(readableText.trim());
	expect(textOf(page.querySelector("header .facts"))).toContain("onerror");
});
