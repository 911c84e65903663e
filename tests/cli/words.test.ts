import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { here, isSentence, lines, scenario, spawned, temporary, written } from "./program.ts";

const folder = temporary();
const thigh = scenario("thigh-short-dwell");
const broken = written(
	folder,
	"broken.yaml",
	`slackwater: 1
title: Much is wrong here
horizon: 5
dressing: []
`,
);

/** Refused: status 2, nothing on standard output, sentences of the program's own. */
async function refused(...words: string[]): Promise<string[]> {
	const { status, out, err } = await here(...words);
	expect(status, err).toBe(2);
	expect(out).toBe("");
	for (const line of lines(err)) {
		expect(line).toMatch(/^slackwater: /);
		expect(line).toSatisfy(isSentence);
	}
	return lines(err);
}

describe("help and version", () => {
	test("help shows the commands, an example and every exit status", async () => {
		const { status, out, err } = await here("--help");
		expect({ status, err }).toEqual({ status: 0, err: "" });
		expect(out).toMatch(/^ {2}check .*<file\.\.\.>/m);
		expect(out).toMatch(/^ {2}day .*<file>/m);
		expect(out).toMatch(/^Examples:\n {2}slackwater /m);
		for (const code of [0, 1, 2, 130]) expect(out).toMatch(new RegExp(`^ {2}${code} +\\w`, "m"));
	});

	test.each([
		[["check", "--help"], "slackwater check"],
		[["day", "--help"], "slackwater day"],
		[["help", "day"], "slackwater day"],
		[["day", "-h", "--seed"], "slackwater day"],
	])("%j is the help of a command, with an example", async (words, example) => {
		const { status, out } = await here(...words);
		expect(status).toBe(0);
		expect(out.slice(out.indexOf("\nExamples:\n"))).toContain(`  ${example}`);
	});

	test("every example of the help names options that the command has", async () => {
		for (const command of ["check", "day"]) {
			const { out } = await here(command, "--help");
			const examples = lines(out).filter((line) => line.startsWith("  slackwater "));
			expect(examples.length).toBeGreaterThan(1);
			for (const flag of examples.join(" ").match(/--[a-z]+/g) ?? [])
				expect(out).toMatch(new RegExp(`^ {2}${flag}\\b`, "m"));
		}
	});

	test("the version is that of the manifest", async () => {
		const { default: manifest } = await import("../../package.json");
		const { status, out } = await here("--version");
		expect({ status, out }).toEqual({ status: 0, out: `${manifest.version}\n` });
	});

	test("no words at all: the help, but on standard error and as a mistake", async () => {
		const { status, out, err } = await here();
		expect({ status, out }).toEqual({ status: 2, out: "" });
		expect(err).toContain("Usage: slackwater <command>");
	});
});

describe("a command line that cannot be obeyed", () => {
	test("a misspelt command is named with its near miss, and the rest is looked at all the same", async () => {
		const found = await refused("dya", broken, "--chance", "maybe");
		expect(found[0]).toBe(
			'slackwater: the command: expected one of check, day, compare, sweep, drill, page, supply, gather, received "dya"; did you mean day?',
		);
		expect(found.join("\n")).toMatch(/--chance: .*"maybe"/);
		expect(found.join("\n")).toMatch(/horizon \(line 3\): /);
	});

	test("a command unlike any is refused, its options with it", async () => {
		const found = await refused("tango", "--sede=4", "--help");
		expect(found).toHaveLength(2);
		expect(found[1]).toMatch(/--sede: .*did you mean --seed\?$/);
	});

	test("no command among the options", async () => {
		expect((await refused("--json"))[0]).toMatch(/the command: .*received nothing/);
	});

	test("unknown options, bad values, wanting values, too many files and all that is wrong with the file, in one go", async () => {
		const found = await refused(
			"day",
			broken,
			"another.yaml",
			"--replicatons",
			"300",
			"--frobnicate",
			"--json=yes",
			"--chance",
			"maybe",
			"--horizon",
			"-5 h",
			"--workers",
			"0",
			"--seed",
			"",
			"--out",
			broken,
			"--replications",
		);
		const whole = found.join("\n");
		for (const part of [
			/--replicatons: expected an option of day, .*did you mean --replications\?/,
			/--frobnicate: expected an option of day \(--seed, .*--help\)/,
			/--json: expected no value, received "yes"/,
			/--chance: expected on or off, received "maybe"/,
			/--horizon: expected a duration .*received "-5 h"/,
			/--workers: expected a whole number from 1 to 64, received "0"/,
			/--seed: expected 1 to 200 characters .*received ""/,
			/--replications: expected <n>, received nothing/,
			/day: expected one scenario file, received 2: /,
			/--out: expected a new folder, .*which is a file/,
			/dressings \(line 1\): expected .*received nothing/,
			/horizon \(line 3\): expected .*received 5/,
			/dressing \(line 4\): expected .*did you mean dressings\?/,
		])
			expect(whole).toMatch(part);
		expect(found).toHaveLength(13);
	});

	test("an option stands where a value should: the value is missing, the option counts", async () => {
		expect(await refused("day", thigh, "--seed", "--chance", "of")).toEqual([
			"slackwater: --seed: expected <text>, received nothing",
			'slackwater: --chance: expected on or off, received "of"',
		]);
	});

	test.each(["check", "day"])(
		"%s without a file says that one is missing, beside what else is wrong",
		async (command) => {
			const found = await refused(command, "--quite");
			expect(found[0]).toMatch(/--quite: .*did you mean --quiet\?/);
			expect(found[1]).toMatch(new RegExp(`${command}: expected .*file.*, received nothing`));
		},
	);

	test.each([
		["--replications", ["0", "-1", "1.5", "1e3", "many", "1000001", " 5"]],
		["--workers", ["0", "65", "two"]],
		["--horizon", ["5", "0 h", "29 d", "5 mL", "NaN h", ""]],
		["--chance", ["ON", "true", ""]],
		["--seed", ["", "a\tb", "x".repeat(201)]],
		["--out", [""]],
	])("%s refuses what is not its value", async (option, values) => {
		for (const value of values) {
			const [line, ...others] = await refused("day", thigh, option, value);
			expect(line).toContain(`${option}: expected `);
			expect(others).toEqual([]);
		}
	});

	test("what a terminal would obey is shown, not sent", async () => {
		const [line] = await refused("\u001b[2J\u202e");
		expect(line).toContain('received "\\u{1b}[2J\\u{202e}"');
	});

	test("options of check that contradict each other", async () => {
		const found = await refused("check", thigh, broken, "--full", "--json");
		expect(found[0]).toMatch(/--full: expected one scenario file/);
		expect(found[1]).toMatch(/--full: expected no --json beside it/);
		expect(found.join("\n")).toMatch(/broken\.yaml: horizon \(line 3\)/);
	});
});

test("a process that was refused leaves with status 2, says why and writes nothing", async () => {
	const cwd = temporary();
	const { status, out, err } = await spawned(["day", broken, "--replicatons", "9"], { cwd });
	expect({ status, out }).toEqual({ status: 2, out: "" });
	expect(lines(err)).toHaveLength(4);
	expect(lines(err).every(isSentence)).toBe(true);
	expect(readdirSync(cwd)).toEqual([]);
	expect(readdirSync(join(folder))).toEqual(["broken.yaml"]);
});
