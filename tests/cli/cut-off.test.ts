import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, test } from "vitest";
import {
	filesOf,
	here,
	type Ran,
	reportNames,
	shellStatus,
	spawned,
	temporary,
	written,
} from "./program.ts";
import { expectWhole, few, thigh, twoReports } from "./two-reports.ts";

const folder = temporary();
const references = twoReports();

describe("a run that is cut off", () => {
	const out = () => join(folder, "cut");
	/** Every file is written in two halves and every renaming takes its time, so that a moment in between can be met. */
	const slowDisk = () =>
		written(
			folder,
			"slow-disk.mjs",
			`import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
const { openSync, writeSync, closeSync, renameSync } = fs;
const wait = (ms) => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
fs.writeFileSync = (path, text) => {
	const file = openSync(path, "w");
	writeSync(file, text.slice(0, text.length / 2));
	wait(25);
	writeSync(file, text.slice(text.length / 2));
	closeSync(file);
};
fs.renameSync = (from, to) => {
	wait(15);
	renameSync(from, to);
};
syncBuiltinESMExports();
`,
		);

	interface Moment {
		readonly since: "start" | "writing";
		readonly ms: number;
	}

	/** Runs into `out` and sends a signal at a moment. */
	async function cut(
		signal: NodeJS.Signals,
		seed: string,
		moment: Moment,
	): Promise<Ran> {
		let watching: NodeJS.Timeout | undefined;
		const ran = await spawned(
			["day", thigh, ...few, "--seed", seed, "--out", out(), "--force"],
			{
				env: { NODE_OPTIONS: `--import=${pathToFileURL(slowDisk()).href}` },
				meanwhile: (child) => {
					const send = () => child.kill(signal);
					if (moment.since === "start") setTimeout(send, moment.ms);
					else
						watching = setInterval(() => {
							const names = readdirSync(out());
							if (!names.some((name) => name.startsWith(".partial-"))) return;
							clearInterval(watching);
							setTimeout(send, moment.ms);
						}, 1);
				},
			},
		);
		clearInterval(watching);
		return ran;
	}

	/** Writing takes about 9 × 25 ms, then renaming 9 × 15 ms. */
	const writingMs = 360;

	test("by SIGKILL, ten times at random moments, leaves no half file under a final name", async () => {
		await here("day", thigh, ...few, "--seed", "a", "--out", out());
		let killed = 0;
		for (let i = 0; i < 10; i++) {
			// Most of them while files are written or renamed, which any random moment seldom meets.
			const ran = await cut(
				"SIGKILL",
				i % 2 === 0 ? "b" : "a",
				i % 5 === 0
					? { since: "start", ms: Math.random() * 1000 }
					: { since: "writing", ms: Math.random() * writingMs },
			);
			if (shellStatus(ran) === 137) killed++;
			expect(ran.err).toBe("");
			expectWhole(out(), references);
			expect(Object.keys(filesOf(out()))).toEqual(
				expect.arrayContaining(reportNames),
			);
		}
		expect(killed).toBeGreaterThan(5);
	});

	test("and what a killed run left does not keep the next from its work", async () => {
		expect(readdirSync(out()).length).toBeGreaterThan(reportNames.length);
		const { status } = await here(
			"day",
			thigh,
			...few,
			"--seed",
			"b",
			"--out",
			out(),
		);
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
			for (const name of readdirSync(out()))
				if (name.startsWith("."))
					rmSync(join(out(), name), { recursive: true });
			await here("day", thigh, ...few, "--seed", "b", "--out", out());
			for (const moment of [
				{ since: "start", ms: 200 },
				{ since: "writing", ms: Math.random() * writingMs * 0.8 },
			] as const) {
				const ran = await cut(signal, "a", moment);
				expect(ran.err).toBe("");
				expect(shellStatus(ran)).toBe(status);
				expect(filesOf(out())).toEqual(
					references[moment.since === "start" ? 1 : 0],
				);
			}
		},
	);

	test("by SIGINT in a long run, threads and all, ends it at once with 130", async () => {
		const cwd = temporary();
		const before = performance.now();
		const ran = await spawned(
			["day", thigh, "--replications", "1000000", "--workers", "2"],
			{
				cwd,
				meanwhile: (child) => setTimeout(() => child.kill("SIGINT"), 1500),
			},
		);
		expect(shellStatus(ran)).toBe(130);
		expect(performance.now() - before).toBeLessThan(6000);
		expect(readdirSync(cwd)).toEqual([]);
	});
});
