import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { Rehearsal, readScript, takeStep } from "../../src/rehearsal/index.ts";
import { debriefJson, debriefJsonSchema } from "../../src/results/index.ts";
import { readScenario } from "../../src/scenario/index.ts";
import { acts as allActs, cautionSentences, places } from "../../src/vocabulary/index.ts";
import { filesOf, here, lines, names, scenario, shell, spawned, temporary, written } from "./program.ts";

const { Ajv2020 } = await import("ajv/dist/2020.js");
const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(debriefJsonSchema);

const folder = temporary();
const acts = "next # to the alarm\nlook suction-line\nact free-suction-line\nlook edge\nwait 60\n";
const script = written(folder, "acts.txt", acts);
const kinked = scenario("rehearse-02");
/** One plain, one by volume, one told of a move, one handed over, one of two causes, one of none. */
const cases = names.filter((name) => /rehearse-(?:01|04|07|11|12|13)/.test(name));

/** The debrief of a call that prints it as JSON. */
async function debriefed(...words: string[]) {
	const { status, out, err } = await here("drill", ...words, "--json");
	expect({ status, err }).toEqual({ status: 0, err: "" });
	return JSON.parse(out);
}

describe("drill --script", () => {
	test.each(cases)("%s: the debrief is of its schema", async (name) => {
		const printed = await debriefed(join("scenarios", name), "--script", script);
		expect(validate(printed), JSON.stringify(validate.errors)).toBe(true);
		expect(printed.cautions).toEqual(cautionSentences);
	});

	test("plays the acts and says what was seen, what was hidden, and the caution before and after", async () => {
		const { status, out, err } = await here("drill", kinked, "--script", script);
		expect({ status, err }).toEqual({ status: 0, err: "" });
		expect(out).toContain("Alarm: suction path obstructed.");
		expect(out).toContain("> act free-suction-line\n");
		expect(out).toMatch(/mended after/);
		expect(out.replaceAll(/\s+/g, " ").split("need a clinician now").length).toBe(3);
		const before = out.slice(0, out.indexOf("> look suction-line"));
		expect(before).not.toMatch(/kink/);
	});

	test("the same seed and the same acts give the same debrief, here and through the functions that a page calls", async () => {
		const words = ["drill", kinked, "--script", script, "--seed", "b", "--json"];
		const [first, second] = [await here(...words), await here(...words)];
		expect(first.out).toBe(second.out);
		const rehearsal = new Rehearsal(readScenario(readFileSync(kinked, "utf8")), "b");
		for (const step of readScript(acts).steps) takeStep(rehearsal, step);
		expect(first.out).toBe(debriefJson(rehearsal.debrief()));
	});

	test("a seed moves the cause; without one it is the file's own", async () => {
		const onset = async (...words: string[]) =>
			(await debriefed(kinked, "--script", script, ...words)).causes[0].onsetMin;
		expect(await onset()).toBe(await onset("--seed", "slackwater"));
		expect(await onset()).not.toBe(await onset("--seed", "b"));
	});

	test("--generate draws new causes, also for a scenario without a rehearsal", async () => {
		const words = [scenario("thigh-short-dwell"), "--script", script];
		const drawn = async (seed: string) => (await debriefed(...words, "--generate", "--seed", seed)).causes;
		expect(await drawn("a")).toEqual(await drawn("a"));
		const some = [];
		for (const seed of ["b", "c", "d"]) some.push(await drawn(seed));
		expect(new Set(some.map((one) => JSON.stringify(one))).size).toBeGreaterThan(1);
	});
});

describe("drill in a pipe", () => {
	test("reads the acts from standard input and asks nothing", async () => {
		const { status, out, err } = await spawned(["drill", kinked], { input: acts });
		expect({ status, err }).toEqual({ status: 0, err: "" });
		expect(out).toBe((await here("drill", kinked, "--script", script)).out);
	});

	test("no act at all is a shift that is left at once", async () => {
		const { status, out } = await spawned(["drill", kinked], { input: "" });
		expect(status).toBe(0);
		expect(out).toContain("Nothing was looked at and nothing was done.");
	});

	test("takes the case from standard input where the acts are in a file", async () => {
		const { status, out } = await shell(`cat ${kinked} | $SLACKWATER drill - --script ${script} --json`, folder);
		expect(status).toBe(0);
		expect(out).toBe((await here("drill", kinked, "--script", script, "--json")).out);
	});
});

describe("drill --out", () => {
	test("writes the debrief as a page and as JSON, and again over its own", async () => {
		const out = join(folder, "report");
		for (let time = 0; time < 2; time++) {
			const { status, err } = await here("drill", kinked, "--script", script, "--out", out);
			expect({ status, err }).toEqual({ status: 0, err: "" });
		}
		const files = filesOf(out);
		expect(Object.keys(files)).toEqual(["debrief.json", "report.html"]);
		expect(validate(JSON.parse(files["debrief.json"] ?? ""))).toBe(true);
		for (const sentence of cautionSentences) expect(files["report.html"]).toContain(sentence);
	});

	test("does not write over the debrief of another case", async () => {
		const out = join(folder, "another");
		await here("drill", kinked, "--script", script, "--out", out);
		const { status, err } = await here("drill", scenario("rehearse-01"), "--script", script, "--out", out);
		expect(status).toBe(2);
		expect(err).toContain('the report of "Rehearsal 2: after the wash"');
	});
});

describe("drill --link", () => {
	test("prints a fragment in which the answer is not to be read, and plays it", async () => {
		const { status, out, err } = await here("drill", kinked, "--link");
		expect({ status, err }).toEqual({ status: 0, err: "" });
		expect(out).toMatch(/^#case=\S+\n$/);
		expect(await debriefed(out.trim(), "--script", script)).toEqual(await debriefed(kinked, "--script", script));
	});

	test("of a drawn case draws the same case again", async () => {
		const words = [kinked, "--generate", "--seed", "tuesday"];
		const { out } = await here("drill", ...words, "--link");
		expect(await debriefed(out.trim(), "--script", script)).toEqual(await debriefed(...words, "--script", script));
	});

	test("that was cut is refused", async () => {
		const { out } = await here("drill", kinked, "--link");
		const { status, err } = await here("drill", out.trim().slice(0, -9), "--script", script);
		expect(status).toBe(2);
		expect(err).toContain("cut or altered");
	});
});

test("everything that is wrong with a call is said at once, and nothing is printed or written", async () => {
	const bad = written(folder, "bad.txt", "look moon\ndance\n");
	const out = join(folder, "never");
	const {
		status,
		out: printed,
		err,
	} = await here("drill", scenario("thigh-short-dwell"), "--script", bad, "--seed", "", "--out", out);
	expect(status).toBe(2);
	expect(printed).toBe("");
	expect(lines(err)).toHaveLength(4);
	expect(err).toMatch(/--seed/);
	expect(err).toMatch(/rehearsal: part, or --generate/);
	expect(err).toMatch(/bad\.txt \(line 1\)/);
	expect(err).toMatch(/bad\.txt \(line 2\)/);
	expect(() => readFileSync(join(out, "report.html"))).toThrow();
});

test("the help names every look and act with its minutes, and its examples use options that there are", async () => {
	const { status, out } = await here("drill", "--help");
	expect(status).toBe(0);
	for (const name of [...places, ...allActs])
		expect(out).toMatch(new RegExp(`^ {2}(?:look|act) ${name} +[\\d.]+ min `, "m"));
	const examples = out.slice(out.indexOf("\nExamples:\n"));
	for (const flag of examples.match(/--[a-z]+/g) ?? []) expect(out).toMatch(new RegExp(`^ {2}${flag}\\b`, "m"));
});
