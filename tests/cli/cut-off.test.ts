import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, test } from "vitest";
import { seesProcesses } from "../processor-time.ts";
import { interrupted } from "./interrupted.ts";
import { filesOf, here, type Ran, reportNames, shellStatus, spawned, temporary, written } from "./program.ts";
import { expectWhole, few, thigh, twoReports } from "./two-reports.ts";

const folder = temporary();
const references = twoReports();

describe("a run that is cut off", () => {
	const out = () => join(folder, "cut");
	/**
	 * Every file is written in two halves, and the signal comes between the two, or before a file is renamed: at the
	 * so many-th of these moments. No clock has a say in it.
	 */
	const cuttingDisk = () =>
		written(
			folder,
			"cutting-disk.mjs",
			`import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
const { openSync, writeSync, closeSync, renameSync } = fs;
let moments = 0;
const moment = () => {
	if (++moments === Number(process.env.CUT_AT)) process.kill(process.pid, process.env.CUT_BY);
};
fs.writeFileSync = (path, text) => {
	const file = openSync(path, "w");
	writeSync(file, text.slice(0, text.length / 2));
	moment();
	writeSync(file, text.slice(text.length / 2));
	closeSync(file);
};
fs.renameSync = (from, to) => {
	moment();
	renameSync(from, to);
};
syncBuiltinESMExports();
`,
		);
	/** Every file is written, then renamed. */
	const moments = 2 * reportNames.length;

	/** When a signal comes: as soon as the process runs, or at one of the moments of its writing. */
	type When = "at the start" | number;

	/** Runs into `out`, and is cut off. */
	async function cut(signal: NodeJS.Signals, seed: string, when: When): Promise<Ran> {
		const writing = {
			NODE_OPTIONS: `--import=${pathToFileURL(cuttingDisk()).href}`,
			CUT_BY: signal,
			CUT_AT: String(when),
		};
		return spawned(
			["day", thigh, ...few, "--seed", seed, "--out", out(), "--force"],
			when === "at the start"
				? { meanwhile: (child) => child.on("spawn", () => child.kill(signal)) }
				: { env: writing },
		);
	}

	test("by SIGKILL, ten times at random moments, leaves no half file under a final name", async () => {
		await here("day", thigh, ...few, "--seed", "a", "--out", out());
		for (let i = 0; i < 10; i++) {
			// Most of them while files are written or renamed, which any random moment seldom meets.
			const ran = await cut(
				"SIGKILL",
				i % 2 === 0 ? "b" : "a",
				i % 5 === 0 ? "at the start" : 1 + Math.floor(Math.random() * moments),
			);
			expect(shellStatus(ran)).toBe(137);
			expect(ran.err).toBe("");
			expectWhole(out(), references);
			expect(Object.keys(filesOf(out()))).toEqual(expect.arrayContaining(reportNames));
		}
	});

	test("and what a killed run left does not keep the next from its work", async () => {
		expect(readdirSync(out()).length).toBeGreaterThan(reportNames.length);
		const { status } = await here("day", thigh, ...few, "--seed", "b", "--out", out());
		expect(status).toBe(0);
		for (const [name, text] of Object.entries(references[1] ?? {}))
			expect(filesOf(out())[name] === text, name).toBe(true);
	});

	test.each([
		["SIGINT", 130],
		["SIGTERM", 143],
	] as const)(
		"by %s leaves nothing partial: before writing the earlier report, in the middle of it the new one",
		async (signal, status) => {
			for (const name of readdirSync(out())) if (name.startsWith(".")) rmSync(join(out(), name), { recursive: true });
			await here("day", thigh, ...few, "--seed", "b", "--out", out());
			for (const when of ["at the start", 1 + Math.floor(Math.random() * moments)] as const) {
				const ran = await cut(signal, "a", when);
				expect(ran.err).toBe("");
				expect(shellStatus(ran)).toBe(status);
				expect(filesOf(out())).toEqual(references[when === "at the start" ? 1 : 0]);
			}
		},
	);

	test("by SIGINT in the midst of a long run, threads and all, ends it with 130 and works no further", async () => {
		const cwd = temporary();
		const { meanwhile, ticks } = interrupted("SIGINT");
		const ran = await spawned(["day", thigh, "--replications", "1000000", "--workers", "2"], { cwd, meanwhile });
		expect(shellStatus(ran)).toBe(130);
		// What is left of the million replications would take ten times what was done.
		if (seesProcesses) expect(ticks.before).toBeGreaterThan(0);
		expect(ticks.after).toBeLessThanOrEqual(ticks.before / 2);
		expect(readdirSync(cwd)).toEqual([]);
	});
});
