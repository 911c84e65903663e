import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type CompareResult, compareJsonSchema } from "../../src/results/index.ts";
import { filesOf, here, isSentence, lines, scenario, spawned, temporary, written } from "./program.ts";

const { Ajv2020 } = await import("ajv/dist/2020.js");
const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(compareJsonSchema);

const folder = temporary();
const thigh = scenario("compare-thigh");
const quick = ["--replications", "100", "--rests-on", "off"];
const compared = async (...words: string[]): Promise<CompareResult> =>
	JSON.parse((await here("compare", ...words, "--json")).out);
const differences = (result: CompareResult, measure: string) =>
	result.differences.filter((one) => one.measure === measure);

describe("compare --json", () => {
	test("is of its schema, with every pair of regimens, and nothing else is on standard output", async () => {
		const { status, out, err } = await here("compare", thigh, "--json", ...quick);
		expect({ status, err }).toEqual({ status: 0, err: "" });
		const result: CompareResult = JSON.parse(out);
		expect(validate(result), JSON.stringify(validate.errors)).toBe(true);
		expect(differences(result, "washes")).toHaveLength(10);
		expect(result.regimens.map(({ name }) => name)).toEqual([
			"short",
			"long",
			"short-begin-fill",
			"suction-alone",
			"again",
		]);
	});

	test("the same bytes for one, two and three workers", async () => {
		const outs = [];
		for (const workers of ["1", "2", "3"])
			outs.push(
				(
					await spawned([
						"compare",
						thigh,
						"--json",
						"--replications",
						"1030",
						"--between",
						"short,long",
						"--rests-on",
						"off",
						"--workers",
						workers,
					])
				).out,
			);
		expect(outs[0].length).toBeGreaterThan(1000);
		expect(outs[1] === outs[0]).toBe(true);
		expect(outs[2] === outs[0]).toBe(true);
	});

	test("with chance off the differences are those of the two days", async () => {
		const result = await compared(thigh, ...quick, "--chance", "off", "--between", "short,long");
		expect(differences(result, "instilledMl")[0]).toMatchObject({
			mean: 250,
			low95: 250,
			high95: 250,
			kind: "differs",
			shareAHigher: 1,
		});
		expect(differences(result, "washes")[0].mean).toBe(5);
	});

	test("says what it rests on: every assumption at half and at twice its value", async () => {
		const { restsOn } = await compared(thigh, "--replications", "50", "--between", "short,long");
		const row = restsOn?.rows.find(({ name }) => name === "breach.wetScale");
		const effect = row?.effects.find(({ measure }) => measure === "breaches");
		// A shorter scale breaches sooner: more leaks, and more between the regimens.
		expect(effect?.half).toBeLessThan(effect?.base ?? Number.NaN);
		expect(effect?.twice).not.toBeNull();
		expect(restsOn?.rows.map(({ name }) => name)).toEqual(
			expect.arrayContaining(["exudate", "care.response.night", "kink.rate"]),
		);
		expect(restsOn?.rows.length).toBeGreaterThan(40);
	});
});

describe("precision", () => {
	test("runs on until the difference is as precise as asked for, and says what it reached", async () => {
		const result = await compared(thigh, ...quick, "--between", "short,long", "--precision", "breaches=0.05");
		expect(result.replications).toBeGreaterThan(100);
		expect(result.precision).toMatchObject([{ measure: "breaches", target: 0.05, reached: true }]);
		expect(result.precision[0].halfWidth).toBeLessThanOrEqual(0.05);
	});

	test("replications that were run on to are those of a run of so many", async () => {
		const asked = ["--between", "short,long", "--rests-on", "off"];
		const precise = await compared(thigh, ...asked, "--replications", "100", "--precision", "breaches=0.05");
		const whole = await compared(thigh, ...asked, "--replications", String(precise.replications));
		expect(precise.differences).toEqual(whole.differences);
	});
});

describe("what is wrong", () => {
	test("is said all at once: measures, regimens, half-widths", async () => {
		const { status, out, err } = await here(
			"compare",
			thigh,
			"--json",
			"--between",
			"shrot,long",
			"--measures",
			"washes,nightcalls",
			"--precision",
			"breaches=0,leaks=1",
			"--rests-on",
			"maybe",
		);
		expect({ status, out }).toEqual({ status: 2, out: "" });
		expect(lines(err).every(isSentence)).toBe(true);
		expect(err).toMatch(/--measures.*did you mean nightCalls\?/u);
		expect(err).toMatch(/--between.*did you mean short\?/u);
		expect(err).toMatch(/--precision.*"breaches=0"/u);
		expect(err).toMatch(/--precision.*"leaks"/u);
		expect(err).toMatch(/--rests-on.*"maybe"/u);
	});

	test("is one regimen alone, or none", async () => {
		const alone = await here("compare", thigh, "--between", "short");
		expect(alone.status).toBe(2);
		expect(alone.err).toMatch(/--between.*two regimens or more.*"short" alone/u);
		const none = await here("compare", scenario("thigh-short-dwell"));
		expect(none.err).toMatch(/compare.*two regimens or more.*none/u);
	});

	test("a regimen that changes nothing is noted by check and run like any", async () => {
		const { status, err } = await here("check", thigh);
		expect(status).toBe(0);
		expect(err).toMatch(/compare\.again.*as compare\.short/u);
	});
});

test("a report of a comparison is not written over that of a day, nor over another's", async () => {
	const out = join(folder, "mixed");
	const day = scenario("compare-thigh");
	await spawned(["day", day, "--out", out, "--replications", "10"]);
	const before = filesOf(out);
	const ran = await spawned(["compare", thigh, "--out", out, ...quick]);
	expect(ran.status).toBe(2);
	expect(ran.err).toMatch(/--out.*written by day/u);
	expect(filesOf(out)).toEqual(before);
});

test("the folder of a comparison holds its report, drawing, data and tables", async () => {
	const out = join(folder, "whole");
	const file = written(
		folder,
		"two.yaml",
		`slackwater: 1
title: two
replications: 60
dressings:
  - id: thigh
    wound: { tissue: soft-tissue, exudate: 120 mL/d }
    foam: [{ area: 100 cm2, thickness: 1.6 cm }]
    regimen: { depth: -125 mmHg, fill: 40 mL, dwell: 5 min, suction: 2 h }
happenings: [{ at: 4 min, dressing: thigh, what: transfer }]
compare: { suction-first: { begin: suction }, fill-first: { begin: fill }, small: { canister: 300 mL } }
`,
	);
	const ran = await spawned(["compare", file, "--out", out, "--rests-on", "off"]);
	expect(ran).toMatchObject({ status: 0, err: "" });
	expect(Object.keys(filesOf(out))).toEqual(
		expect.arrayContaining(["compare.json", "differences.csv", "differences.svg", "report.html"]),
	);
	const result: CompareResult = JSON.parse(filesOf(out)["compare.json"]);
	const changes = result.differences.find(
		({ a, b, measure }) => a === "suction-first" && b === "small" && measure === "canisterChanges",
	);
	expect(changes?.mean).toBeLessThan(0);
});
