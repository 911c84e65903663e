import { JSDOM } from "jsdom";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { differenceRow } from "../../../src/report/compare/pairs/difference-rows.ts";
import { pairsOf } from "../../../src/report/compare/pairs/pairs.ts";
import { questionOf, regimenLines } from "../../../src/report/compare/regimen-words.ts";
import { compareHtml, compareTables } from "../../../src/report/index.ts";
import { htmlMaker } from "../../../src/report/kit/html-element.ts";
import { pointsTable } from "../../../src/report/sweep/points-section.ts";
import { markOf, markValue, sweepQuestion } from "../../../src/report/sweep/sweep-words.ts";
import { compareJson, compareJsonSchema, sweepJson, sweepJsonSchema } from "../../../src/results/index.ts";
import {
	blockCount,
	StudyGathering,
	StudyRunner,
	studyTasks,
	sweepPlan,
	sweepResult,
	sweepStudy,
} from "../../../src/studies/index.ts";
import { unitWords } from "../../../src/words/index.ts";
import { unlikeComparison, unlikeScenario } from "./unlike-dressings.ts";

// ajv's build of draft 2020-12 is CommonJS; its class is the default of the module.
const { Ajv2020 } = await import("ajv/dist/2020.js");
const { document } = new JSDOM("").window;
const plain = (text: string | null | undefined) => (text ?? "").replaceAll("\u00A0", " ");

const result = unlikeComparison();
const regimen = (name: string) => {
	const found = result.regimens.find((one) => one.name === name);
	if (found === undefined) throw new Error(`no regimen ${name}`);
	return found;
};
const dressing = (name: string, id: string) => regimen(name).dressings.find((one) => one.id === id);
const question = (a: string, b: string) => plain(questionOf({ ...result, regimens: [regimen(a), regimen(b)] }));

describe("a comparison of two unlike dressings", () => {
	test("gives each dressing its own regimen, and all together none", () => {
		expect(dressing("now", "calf")).toMatchObject({
			regimen: { fillMl: 25, depthMmHg: 125 },
			canisterMl: 500,
			sourceMl: 500,
		});
		expect(dressing("now", "flank")).toMatchObject({
			regimen: { fillMl: 190, depthMmHg: 150 },
			canisterMl: 1000,
			sourceMl: 1000,
		});
		expect(dressing("now", "flank")?.regimens).toHaveLength(2);
		expect(dressing("now", "all")).toMatchObject({ regimen: null, regimens: [], canisterMl: null, sourceMl: null });
	});

	test("says of all together what every dressing has", () => {
		expect(dressing("alike", "all")).toMatchObject({
			regimen: { fillMl: 40, depthMmHg: 100, dwellMin: 8, suctionMin: 180 },
			// The flank is stepped down later, the calf is not.
			regimens: [],
			canisterMl: 500,
			sourceMl: 800,
		});
		expect(dressing("small", "all")).toMatchObject({ canisterMl: 300, sourceMl: null });
	});

	test.each([
		["now", ["calf"], 25],
		["longer", ["calf"], 25],
		["calf-deep", ["calf"], 25],
		["flank-less", ["flank"], 120],
		["alike", ["calf", "flank"], 40],
	] as const)("%s: the regimen beside the name says whose it is", (name, of, fillMl) => {
		expect(regimen(name).regimenOf).toEqual(of);
		expect(regimen(name).regimen.fillMl).toBe(fillMl);
	});

	test("prints a line for each dressing and none for all of them", () => {
		expect(regimenLines(regimen("now"), result).map(plain)).toEqual([
			"calf: 25 mL for 5 min, then 2 h of suction at −125 mmHg; canister 500 mL, solution 500 mL",
			"flank: 190 mL for 10 min, then 3 h 30 min of suction at −150 mmHg; from Wed 4 March 14:00 continuous suction at −100 mmHg, no fill; canister 1000 mL, solution 1000 mL",
		]);
		const days = result.regimens.map(() => ({ scenario: result.scenario, dressings: [] }));
		const page = new JSDOM(compareHtml(result, { days, firstHours: null }, document)).window.document;
		const lines = [...page.querySelectorAll(".brief .regimens dd")].map((one) => plain(one.textContent));
		expect(lines).toHaveLength(12);
		expect(lines.filter((line) => !/^(calf|flank): /u.test(line))).toEqual([]);
		// Canisters stand with the regimens that bring them, not with the wounds.
		for (const one of page.querySelectorAll(".brief .regimens p")) expect(one.textContent).not.toContain("canister");
	});

	test.each([
		[
			"now",
			"longer",
			"a 5 min dwell every 2 h (calf) and a 10 min dwell every 3.5 h (flank) buy and cost against 15 min every 2 h (calf) and 15 min every 3.5 h (flank)?",
		],
		["now", "calf-deep", "does suction at −125 mmHg (calf) buy and cost against at −150 mmHg (calf)?"],
		["now", "flank-less", "do fills of 190 mL (flank) buy and cost against of 120 mL (flank)?"],
		[
			"now",
			"small",
			"a 500 mL canister (calf) and a 1000 mL canister (flank) buy and cost against one of 300 mL (calf) and one of 300 mL (flank)?",
		],
		["now", "alike", "what does now buy and cost against alike?"],
	])("asks of %s and %s in the settings of the dressings that differ", (a, b, words) => {
		expect(question(a, b)).toContain(words);
	});

	test("is of its schema, and its table leaves the settings of all together empty", () => {
		const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(compareJsonSchema);
		expect(validate(JSON.parse(compareJson(result))), validate.errors?.[0]?.message).toBe(true);
		const { data } = Papa.parse<Record<string, string>>(compareTables(result)["regimens.csv"] ?? "", {
			header: true,
			skipEmptyLines: true,
		});
		const row = (name: string, id: string) => data.find((one) => one.regimen === name && one.dressing === id);
		expect(row("now", "all")).toMatchObject({ fillMl: "", canisterMl: "" });
		expect(row("now", "flank")).toMatchObject({ fillMl: "190", canisterMl: "1000" });
		expect(row("alike", "all")).toMatchObject({ fillMl: "40" });
	});
});

describe("the means of regimens", () => {
	test("have the digits of their own intervals, not those of the difference, in which the patients cancel out", () => {
		let compared = 0;
		const [pair] = pairsOf(result);
		if (pair === undefined) throw new Error("no pair of regimens");
		for (const one of result.differences.filter(({ a }) => a === "now")) {
			const row = differenceRow(one, pair);
			[one.a, one.b].forEach((name, side) => {
				const spread = dressing(name, one.dressing)?.measures[one.measure];
				const half = spread?.halfWidth95 ?? 0;
				const digits = row.decimals?.[side] ?? 0;
				if (half < 1e-9) return;
				compared++;
				// A half-width has at most two significant digits.
				expect(half * 10 ** digits, one.measure).toBeLessThan(100);
			});
			expect(row.unit).toBe(unitWords(one.measure, pair.scale));
		}
		expect(compared).toBeGreaterThan(200);
	});
});

describe("a grid over two unlike dressings", () => {
	const scenario = unlikeScenario();
	const plan = sweepPlan(scenario, { dressing: null, axes: { dwell: [5, 10], suction: [120] } });
	const study = sweepStudy(plan);
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	const blocks = blockCount(scenario);
	for (const task of studyTasks(study, 0, blocks)) gathering.add(runner.run(task));
	const swept = sweepResult(plan, gathering.groups(blocks), new Map(), {
		measures: ["washes"],
		constraints: [],
		efficient: [],
		curve: "dwell",
		version: "0",
	});

	test("is held against each dressing's own regimen", () => {
		expect(plain(sweepQuestion(swept))).toBe(
			"For these wounds, what do other dwells buy and cost against 25 mL for 5 min every 2 h, suction at −125 mmHg (calf) and 190 mL for 10 min every 3.5 h, suction at −150 mmHg (flank)?",
		);
		const current = markOf(swept, "current");
		expect(current?.dressings.map(({ id, fillMl }) => [id, fillMl])).toEqual([
			["calf", 25],
			["flank", 190],
		]);
		// Two dwells are no one place on an axis of dwells.
		expect(markValue(current, "dwell")).toBeNull();
		const table = pointsTable(htmlMaker(document), swept, {
			id: "t",
			caption: "",
			points: swept.points,
			measures: ["washes"],
			marks: true,
		});
		expect(plain(table.textContent)).toContain("5 min (calf) and 10 min (flank)");
		expect(
			new Ajv2020({ strict: true, allowUnionTypes: true }).compile(sweepJsonSchema)(JSON.parse(sweepJson(swept))),
		).toBe(true);
	});

	test("counts from the one dressing that is varied", () => {
		const own = sweepPlan(scenario, { dressing: "flank", axes: { dwell: [5, 10] } });
		expect(own.axes[0]?.current).toBe(10);
	});
});
