import { readFileSync, rmSync, truncateSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { checkFormat } from "../../src/cli/commands/check-json.ts";
import { maxExpectedEvents, readScenario, type Scenario } from "../../src/scenario/index.ts";
import { readingsOf } from "../processor-time.ts";
import { meaning } from "../scenario/meant.ts";
import { least } from "../scenario/sample.ts";
import { bytesRead } from "./bytes-read.ts";
import { filesOf, here, isSentence, lines, names, scenario, shell, spawned, temporary, written } from "./program.ts";

const { Ajv2020 } = await import("ajv/dist/2020.js");
const validate = new Ajv2020({ allErrors: true }).compile(z.toJSONSchema(checkFormat));
const folder = temporary();

test("every scenario of the project is sound, all in one call", async () => {
	const { status, out, err } = await here("check", ...names.map(fullPath));
	expect(status).toBe(0);
	// A fistula is not treated in the model, and a comparison with itself is in the demo on purpose: both are noted.
	expect(err).toMatch(
		/^\S+abdomen-fistula\.yaml: note: abdomen: A large or sudden output [^\n]+\n\S+compare-thigh\.yaml: note: compare\.again: [^\n]+\n$/,
	);
	expect(lines(out)).toEqual(names.map((name) => `${fullPath(name)}: sound`));
});

const fullPath = (name: string) => scenario(name.replace(/\.yaml$/, ""));

test("of sound and broken files together every problem is told, each behind its file, and the status is 2", async () => {
	const broken = written(folder, "two-faults.yaml", `${least}horizon: 5\nx: 1\n`);
	const { status, out, err } = await here("check", scenario("heavy-slough"), broken, join(folder, "nothing-here.yaml"));
	expect(status).toBe(2);
	expect(out).toBe(`${scenario("heavy-slough")}: sound\n`);
	expect(lines(err)).toHaveLength(3);
	expect(err).toContain(`${broken}: horizon (line 8): expected a duration`);
	expect(err).toContain(`${broken}: x (line 9): expected one of the keys`);
	expect(err).toContain(
		`${join(folder, "nothing-here.yaml")}: expected a scenario file that can be read, received nothing: it is not there`,
	);
});

test("--quiet says nothing of sound files", async () => {
	const { status, out, err } = await here("check", "--quiet", scenario("heavy-slough"));
	expect({ status, out, err }).toEqual({ status: 0, out: "", err: "" });
});

describe("check --json", () => {
	test("is of its schema, for sound, broken and absent files, and nothing else is on standard output", async () => {
		const broken = written(folder, "b.yaml", `${least}chanse: off\n`);
		const late = written(
			folder,
			"late.yaml",
			`${least}horizon: 3 h\nhappenings: [{ at: 5 h, dressing: thigh, what: turn }]\n`,
		);
		const { status, out, err } = await here("check", "--json", scenario("two-dressings"), broken, folder, late);
		expect({ status, err }).toEqual({ status: 2, err: "" });
		const printed = JSON.parse(out);
		expect(validate(printed), JSON.stringify(validate.errors)).toBe(true);
		expect(printed.files[0]).toEqual({ file: scenario("two-dressings"), sound: true, problems: [], notes: [] });
		expect(printed.files[1].problems).toEqual([
			{
				path: "chanse",
				expected: expect.stringMatching(/^one of the keys /),
				received: 'the key "chanse"',
				suggestion: "chance",
				line: 8,
				column: 1,
			},
		]);
		expect(printed.files[2].problems[0].received).toBe("a folder");
		expect(printed.files[3]).toMatchObject({ sound: true, problems: [] });
		expect(printed.files[3].notes).toHaveLength(1);
	});

	test("the schema refuses a sound file with problems, a broken one without, and an unknown format", () => {
		const file = { file: "a", sound: true, problems: [], notes: [] };
		const of = (one: object) => ({ format: "slackwater/check@1", files: [one] });
		expect(validate(of(file))).toBe(true);
		expect(validate(of({ ...file, sound: false }))).toBe(false);
		expect(validate(of({ ...file, problems: [{ path: "", expected: "a", received: "b" }] }))).toBe(false);
		expect(validate({ ...of(file), format: "slackwater/check@2" })).toBe(false);
	});
});

test.each(names)("%s and what check --full prints of it are the same scenario", async (name) => {
	const { status, out } = await here("check", "--full", fullPath(name));
	expect(status).toBe(0);
	const full = written(folder, name, out);
	const again = await here("check", "--full", full);
	expect(again.status).toBe(0);
	const given = readScenario(readFileSync(fullPath(name), "utf8"));
	expect(given.defaulted.length).toBeGreaterThan(0);
	expect(meant(readScenario(out))).toEqual(meant(given));
});

/** What both mean; which constants a file names itself is not part of it. */
const meant = (scenario: Scenario) => meaning({ ...scenario, overridden: [] });

describe("an input that must not be read is refused in one sentence", () => {
	/** Refused by `check`, `day` and with little work. */
	async function refused(file: string, what: RegExp): Promise<void> {
		await here("day"); // loads what it needs
		const work = await readingsOf(async () => {
			for (const words of [["check"], ["day", "--json"]]) {
				const { status, out, err } = await here(...words, file);
				expect({ status, out }).toEqual({ status: 2, out: "" });
				expect(lines(err)).toHaveLength(1);
				expect(err.trim()).toSatisfy(isSentence);
				expect(err).toMatch(what);
			}
		});
		expect(work).toBeLessThan(4000);
	}

	test("a file of 100 MB, by its size, before it is read", async () => {
		const file = written(folder, "large.yaml", least);
		truncateSync(file, 100_000_000);
		await here("day"); // loads what it needs
		const read = await bytesRead(file, () => refused(file, /at most 1000000 bytes, received 100000000 bytes/));
		expect(read).toBe(0);
		rmSync(file);
	});

	test("and the bytes of a file that is read are counted", async () => {
		const file = written(folder, "sound.yaml", least);
		const read = await bytesRead(file, async () => {
			expect((await here("check", file)).status).toBe(0);
		});
		expect(read).toBe(Buffer.byteLength(least));
	});

	test("an endless pipe, after a byte more than is allowed", async () => {
		const { status, out, err } = await shell("yes | $SLACKWATER check /dev/stdin", folder);
		expect({ status, out }).toEqual({ status: 2, out: "" });
		expect(err).toMatch(/at most 1000000 bytes, received more\n$/);
	});

	test("aliases that multiply", async () => {
		const levels = Array.from(
			{ length: 12 },
			(_, i) => `l${i + 1}: &l${i + 1} [${Array(9).fill(`*l${i}`).join(", ")}]`,
		);
		const text = `l0: &l0 [lol]\n${levels.join("\n")}\n`;
		await refused(written(folder, "bomb.yaml", text), /alias counts/);
	});

	test.each([
		["a list, 20,000 deep", "[".repeat(20_000)],
		["a closed list, 20,000 deep", "[".repeat(20_000) + "]".repeat(20_000)],
		["maps, 20,000 deep", '{"a":'.repeat(20_000)],
		["dashes, 20,000 deep", `${"- ".repeat(20_000)}x`],
	])("%s", async (_, text) => {
		await refused(written(folder, "deep.yaml", text), /deep/);
	});

	test("a repeated key", async () => {
		await refused(
			written(folder, "twice.yaml", `${least}title: Again\n`),
			/title \(line 8\): expected each key once, received it again/,
		);
	});

	test("two documents, an empty file, bytes that are no text", async () => {
		await refused(written(folder, "documents.yaml", `${least}---\n${least}`), /expected one document, received 2/);
		await refused(written(folder, "empty.yaml", ""), /an empty file/);
		await refused(written(folder, "control.yaml", `${least}# \u0007\n`), /a control character/);
	});

	test("a scenario of more events than the stated number", async () => {
		const dressings = Array.from(
			{ length: 40 },
			(_, i) =>
				`  - { id: d${i}, wound: { tissue: soft-tissue, exudate: 160 mL/d }, foam: [{ area: 240 cm2, thickness: 1 cm }], regimen: { depth: -125 mmHg, fill: 6 mL, dwell: 1 min, suction: 5 min } }`,
		);
		const text = `slackwater: 1\ntitle: Endless\nhorizon: 28 d\ndressings:\n${dressings.join("\n")}\n`;
		await refused(
			written(folder, "endless.yaml", text),
			new RegExp(`at most ${maxExpectedEvents} events a replication`),
		);
	});

	test("an option may not make it endless either", async () => {
		const dressings = Array.from(
			{ length: 40 },
			(_, i) =>
				`  - { id: d${i}, wound: { tissue: soft-tissue, exudate: 160 mL/d }, foam: [{ area: 240 cm2, thickness: 1 cm }], regimen: { depth: -125 mmHg, fill: 6 mL, dwell: 1 min, suction: 5 min } }`,
		);
		const text = `slackwater: 1\ntitle: Near the end\nhorizon: 1 d\ndressings:\n${dressings.join("\n")}\n`;
		const file = written(folder, "nearly.yaml", text);
		expect((await here("check", file)).status).toBe(0);
		const { status, err } = await here("day", file, "--json", "--horizon", "28 d");
		expect(status).toBe(2);
		expect(err).toMatch(/--horizon: expected .*at most \d+ events/);
	});
});

describe("where an input comes from", () => {
	test("a vanished file, a folder, a way through a file, a link to itself", async () => {
		const cases: [string, string][] = [
			[join(folder, "gone.yaml"), "nothing: it is not there"],
			[folder, "a folder"],
			[join(scenario("heavy-slough"), "x.yaml"), "nothing: part of the path is a file, not a folder"],
		];
		for (const [file, received] of cases) {
			const { status, out, err } = await here("day", file, "--json");
			expect({ status, out }).toEqual({ status: 2, out: "" });
			expect(err).toBe(`slackwater: ${file}: expected a scenario file that can be read, received ${received}\n`);
		}
	});

	test("a pipe is read, by either name, of a shell or of another program", async () => {
		for (const name of ["-", "/dev/stdin"]) {
			const piped = await shell(`cat ${scenario("heavy-slough")} | $SLACKWATER check ${name}`, folder);
			expect(piped).toMatchObject({ status: 0, out: `${name}: sound\n` });
		}
		const socket = await spawned(["check", "/dev/stdin"], { input: least });
		expect(socket).toMatchObject({ status: 0, out: "/dev/stdin: sound\n" });
	});

	test("nothing was written beside the inputs", () => {
		expect(Object.keys(filesOf(folder)).every((name) => name.endsWith(".yaml"))).toBe(true);
	});
});
