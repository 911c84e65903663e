import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { filesOf, here, isSentence, lines, reportNames, scenario, temporary } from "./program.ts";
import { few, thigh, twoReports } from "./two-reports.ts";

const folder = temporary();

const references = twoReports();

describe("--out", () => {
	async function refused(out: string, what: RegExp): Promise<void> {
		const { status, out: printed, err } = await here("day", thigh, ...few, "--out", out);
		expect({ status, printed }).toEqual({ status: 2, printed: "" });
		expect(lines(err)).toHaveLength(1);
		expect(err.trim()).toSatisfy(isSentence);
		expect(err).toMatch(what);
	}

	test("the report of another scenario is not overwritten, unless by --force", async () => {
		const out = join(folder, "taken");
		await here("day", scenario("scripted-failures"), "--out", out);
		const before = filesOf(out);
		await refused(out, /holds the report of "One of each failure, for the trainee" \(--force overwrites it\)/);
		expect(filesOf(out)).toEqual(before);
		const forced = await here("day", thigh, ...few, "--seed", "a", "--out", out, "--force");
		expect(forced.status).toBe(0);
		expect(filesOf(out)).toEqual(references[0]);
	});

	test("an earlier report of the same scenario is", async () => {
		const out = join(folder, "again");
		for (const [index, seed] of ["a", "b"].entries()) {
			const { status } = await here("day", thigh, ...few, "--seed", seed, "--out", out);
			expect(status).toBe(0);
			expect(filesOf(out)).toEqual(references[index]);
		}
	});

	test("a folder of foreign files is refused, hidden ones and an empty folder are not", async () => {
		const out = join(folder, "foreign");
		mkdirSync(out);
		writeFileSync(join(out, "thesis.txt"), "ten years of work");
		await refused(out, /holds other files/);
		expect(Object.keys(filesOf(out))).toEqual(["thesis.txt"]);
		const hidden = join(folder, "hidden");
		mkdirSync(hidden);
		writeFileSync(join(hidden, ".keep"), "");
		const { status } = await here("day", thigh, ...few, "--out", hidden);
		expect(status).toBe(0);
		expect(Object.keys(filesOf(hidden))).toEqual([".keep", ...reportNames]);
	});

	test.each([
		["a list", "[]"],
		["no JSON", "{"],
		["null", "null"],
		["a title of the wrong kind", '{"scenario":{"title":7}}'],
	])("a day.json that is %s makes no report of a folder", async (what, text) => {
		const out = join(folder, `fake-${what}`);
		mkdirSync(out);
		writeFileSync(join(out, "day.json"), text);
		await refused(out, /holds other files/);
	});

	test("a pipe by the name of day.json is not waited for", async () => {
		const out = join(folder, "pipe");
		mkdirSync(out);
		execFileSync("mkfifo", [join(out, "day.json")]);
		await refused(out, /holds other files/);
	});

	test("a file, a way through a file, a place where nothing can be made", async () => {
		const file = join(folder, "a-file");
		copyFileSync(thigh, file);
		await refused(file, /a-file, which is a file$/m);
		await refused(join(file, "deeper", "still"), /part of the path is a file/);
		await refused("/proc/slackwater/report", /a folder that reports can be written to/);
		await refused(join(folder, "x".repeat(300)), /the name is too long/);
		symlinkSync(join(folder, "nowhere"), join(folder, "dangling"));
		await refused(join(folder, "dangling"), /which is a link to nothing/);
		expect(readFileSync(file, "utf8")).toBe(readFileSync(thigh, "utf8"));
	});

	test("folders on the way are made, and a link to a folder is followed", async () => {
		const deep = join(folder, "one", "two", "three");
		expect((await here("day", thigh, ...few, "--seed", "a", "--out", deep)).status).toBe(0);
		const link = join(folder, "link");
		symlinkSync(deep, link);
		expect((await here("day", thigh, ...few, "--seed", "b", "--out", `${link}/`)).status).toBe(0);
		expect(filesOf(deep)).toEqual(references[1]);
	});

	test("nothing else was left beside the reports", () => {
		expect(readdirSync(folder).filter((name) => /^\.|partial|trial/.test(name))).toEqual([]);
	});
});
