import { readFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parseDocument } from "yaml";
import { dayJsonSchema } from "../../src/results/index.ts";
import { maxScenarioBytes } from "../../src/scenario/index.ts";
import { filesOf, here, lines, names, reportNames, root, scenario, spawned, temporary, written } from "./program.ts";

const { Ajv2020 } = await import("ajv/dist/2020.js");
const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(dayJsonSchema);

const folder = temporary();

describe("day --json", () => {
	test.each(names)("of %s is of its schema, and nothing else is on standard output", async (name) => {
		const file = scenario(name.replace(/\.yaml$/, ""));
		const { status, out, err } = await here("day", file, "--json", "--replications", "120");
		expect({ status, err }).toEqual({ status: 0, err: "" });
		const printed = JSON.parse(out);
		expect(validate(printed), JSON.stringify(validate.errors)).toBe(true);
		expect(printed.scenario.replications).toBe(120);
	});

	test("writes no file without --out, and prints the bytes of day.json with it", async () => {
		const cwd = temporary();
		const words = ["day", scenario("two-dressings"), "--json"];
		const alone = await spawned(words, { cwd });
		expect(alone).toMatchObject({ status: 0, err: "" });
		expect(filesOf(cwd)).toEqual({});
		const out = join(cwd, "report");
		const both = await here(...words, "--out", out);
		expect(both.out).toBe(alone.out);
		const files = filesOf(out);
		expect(Object.keys(files)).toEqual(reportNames);
		expect(files["day.json"]).toBe(alone.out);
	});
});

test("one, two and three workers and a second run give the same bytes", async () => {
	const day = (...more: string[]) =>
		here("day", scenario("thigh-short-dwell"), "--json", "--replications", "3000", ...more);
	const once = await day();
	expect(JSON.parse(once.out).projection.replications).toBe(3000);
	for (const workers of ["1", "2", "3"]) {
		const threaded = await spawned([
			"day",
			scenario("thigh-short-dwell"),
			"--json",
			"--replications",
			"3000",
			"--workers",
			workers,
		]);
		expect(threaded).toMatchObject({ status: 0, err: "" });
		expect(threaded.out === once.out, `${workers} workers`).toBe(true);
	}
});

describe("an option acts as the same value in the file would", () => {
	const source = readFileSync(scenario("two-dressings"), "utf8");
	const dayOf = async (values: Record<string, unknown>, ...options: string[]): Promise<string> => {
		const document = parseDocument(source);
		for (const [key, value] of Object.entries(values)) document.set(key, value);
		const file = written(folder, "laid-over.yaml", document.toString());
		const { status, out, err } = await here("day", file, "--json", ...options);
		expect({ status, err }).toEqual({ status: 0, err: "" });
		return out;
	};
	const few = ["--replications", "60"];

	test.each([
		["seed", "neap-3"],
		["replications", "75"],
		["horizon", "30 h"],
		["chance", "off"],
	])("--%s %s", async (option, value) => {
		const inFile = await dayOf({ replications: 60, [option]: option === "replications" ? Number(value) : value });
		const typed = await dayOf({}, ...few, `--${option}`, value);
		expect(typed === inFile).toBe(true);
		expect(typed).not.toBe(await dayOf({}, ...few));
		expect(JSON.parse(typed).scenario).toMatchObject({
			[option === "horizon" ? "horizonMin" : option]:
				option === "horizon" ? 1800 : option === "replications" ? 75 : value,
		});
	});

	test("a value may stand behind an equals sign, an option before the file", async () => {
		const { out } = await here("--seed=neap-3", "day", "--replications=60", scenario("two-dressings"), "--json");
		expect(out).toBe(await dayOf({}, ...few, "--seed", "neap-3"));
	});
});

test("--quiet says nothing; without it one line says where the report is", async () => {
	const out = join(folder, "quiet");
	const words = ["day", scenario("scripted-failures"), "--out", out];
	expect(await here(...words, "--quiet")).toEqual({ status: 0, signal: null, out: "", err: "" });
	expect((await here(...words)).out).toBe(`The report is in ${join(out, "report.html")}\n`);
});

test("without --out the report goes to out/NAME", async () => {
	const cwd = temporary();
	const { status, out } = await spawned(["day", scenario("scripted-failures")], { cwd });
	expect({ status, out }).toEqual({ status: 0, out: "The report is in out/scripted-failures/report.html\n" });
	expect(Object.keys(filesOf(join(cwd, "out", "scripted-failures")))).toEqual(reportNames);
});

test("--draw draws a replication by its number, and refuses one that there is not", async () => {
	const words = ["day", scenario("thigh-short-dwell"), "--replications", "60"];
	const drawn = async (...more: string[]) => JSON.parse((await here(...words, "--json", ...more)).out).trace;
	expect(await drawn("--draw", "7")).toMatchObject({ replication: 7, typicalOf: null });
	expect(await drawn()).toMatchObject({ typicalOf: 60 });
	const { status, err } = await here(...words, "--json", "--draw", "60");
	expect(status).toBe(2);
	expect(err).toContain('--draw: expected a replication from 0 to 59, received "60"');
});

test("of a file called ...yaml the report goes to a folder under out all the same", async () => {
	const cwd = temporary();
	written(cwd, "...yaml", readFileSync(scenario("scripted-failures"), "utf8"));
	const { status } = await spawned(["day", "--", "...yaml"], { cwd });
	expect(status).toBe(0);
	expect(Object.keys(filesOf(cwd))).toEqual(["...yaml", "out"]);
	expect(Object.keys(filesOf(join(cwd, "out", "day")))).toEqual(reportNames);
});

test("no output holds a path, the host, the user, the day it was made on or the place of the clock", async () => {
	const cwd = temporary();
	const words = ["day", scenario("two-dressings"), "--replications", "60", "--out", "report", "--json"];
	const home = await spawned(words, { cwd, env: { TZ: "UTC", LANG: "C" } });
	const away = await spawned(words, {
		cwd: temporary(),
		env: { TZ: "Pacific/Apia", LANG: "ar_EG.UTF-8", LC_ALL: "ar_EG.UTF-8", HOSTNAME: "elsewhere" },
	});
	expect(home).toMatchObject({ status: 0, err: "" });
	expect(away.out === home.out).toBe(true);
	const now = new Date();
	const today = [
		now.toISOString().slice(0, 10),
		now.toDateString(),
		now.toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" }),
		now.toLocaleDateString("en-GB", { day: "numeric", month: "long" }),
	];
	const secrets = [cwd, root, process.cwd(), "/tmp/", "file:", hostname(), ...today];
	for (const [name, text] of Object.entries({ ...filesOf(join(cwd, "report")), "standard output": home.out }))
		for (const secret of secrets) expect(text.includes(secret), `${name} holds ${secret}`).toBe(false);
});

test("a file just short of the limit is read", async () => {
	const text = readFileSync(scenario("scripted-failures"), "utf8");
	const padded = `${text}#${"x".repeat(maxScenarioBytes - Buffer.byteLength(text) - 1)}`;
	const file = written(folder, "brim.yaml", padded);
	const { status, out } = await here("day", file, "--json");
	expect(status).toBe(0);
	expect(lines(out).length).toBeGreaterThan(10);
});
