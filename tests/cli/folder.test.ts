import { execFileSync } from "node:child_process";
import {
	copyFileSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	rmSync,
	statfsSync,
	symlinkSync,
	writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
	filesOf,
	here,
	isSentence,
	lines,
	type Ran,
	reportNames,
	scenario,
	shellStatus,
	spawned,
	temporary,
	written,
} from "./program.ts";

const thigh = scenario("thigh-short-dwell");
const folder = temporary();
const few = ["--replications", "50"];

/** The same scenario under two seeds: whatever is found whole is one of these. */
const references: Record<string, string>[] = [];
beforeAll(async () => {
	for (const seed of ["a", "b"]) {
		const out = join(folder, `reference-${seed}`);
		const { status } = await here(
			"day",
			thigh,
			...few,
			"--seed",
			seed,
			"--out",
			out,
		);
		expect(status).toBe(0);
		references.push(filesOf(out));
	}
	expect(references[0]?.["phases.csv"]).not.toBe(references[1]?.["phases.csv"]);
});

/** Every file that stands under its final name is whole. */
function expectWhole(out: string): void {
	for (const [name, text] of Object.entries(filesOf(out))) {
		if (name.startsWith(".")) continue;
		expect(reportNames).toContain(name);
		const whole = references.some((reference) => reference[name] === text);
		expect(whole, `${name} is half written`).toBe(true);
	}
}

describe("--out", () => {
	async function refused(out: string, what: RegExp): Promise<void> {
		const {
			status,
			out: printed,
			err,
		} = await here("day", thigh, ...few, "--out", out);
		expect({ status, printed }).toEqual({ status: 2, printed: "" });
		expect(lines(err)).toHaveLength(1);
		expect(err.trim()).toSatisfy(isSentence);
		expect(err).toMatch(what);
	}

	test("the report of another scenario is not overwritten, unless by --force", async () => {
		const out = join(folder, "taken");
		await here("day", scenario("scripted-failures"), "--out", out);
		const before = filesOf(out);
		await refused(
			out,
			/holds the report of "One of each failure, for the trainee" \(--force overwrites it\)/,
		);
		expect(filesOf(out)).toEqual(before);
		const forced = await here(
			"day",
			thigh,
			...few,
			"--seed",
			"a",
			"--out",
			out,
			"--force",
		);
		expect(forced.status).toBe(0);
		expect(filesOf(out)).toEqual(references[0]);
	});

	test("an earlier report of the same scenario is", async () => {
		const out = join(folder, "again");
		for (const [index, seed] of ["a", "b"].entries()) {
			const { status } = await here(
				"day",
				thigh,
				...few,
				"--seed",
				seed,
				"--out",
				out,
			);
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
	])(
		"a day.json that is %s makes no report of a folder",
		async (what, text) => {
			const out = join(folder, `fake-${what}`);
			mkdirSync(out);
			writeFileSync(join(out, "day.json"), text);
			await refused(out, /holds other files/);
		},
	);

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
		await refused(
			"/proc/slackwater/report",
			/a folder that reports can be written to/,
		);
		await refused(join(folder, "x".repeat(300)), /the name is too long/);
		symlinkSync(join(folder, "nowhere"), join(folder, "dangling"));
		await refused(join(folder, "dangling"), /which is a link to nothing/);
		expect(readFileSync(file, "utf8")).toBe(readFileSync(thigh, "utf8"));
	});

	test("folders on the way are made, and a link to a folder is followed", async () => {
		const deep = join(folder, "one", "two", "three");
		expect(
			(await here("day", thigh, ...few, "--seed", "a", "--out", deep)).status,
		).toBe(0);
		const link = join(folder, "link");
		symlinkSync(deep, link);
		expect(
			(await here("day", thigh, ...few, "--seed", "b", "--out", `${link}/`))
				.status,
		).toBe(0);
		expect(filesOf(deep)).toEqual(references[1]);
	});

	test("nothing else was left beside the reports", () => {
		expect(
			readdirSync(folder).filter((name) => /^\.|partial|trial/.test(name)),
		).toEqual([]);
	});
});

test("two runs into one new folder at the same time both end well, with whole files", async () => {
	const out = join(folder, "shared");
	const runs = await Promise.all(
		["a", "b"].map((seed) =>
			spawned(["day", thigh, ...few, "--seed", seed, "--out", out]),
		),
	);
	for (const run of runs) expect(run).toMatchObject({ status: 0, err: "" });
	expect(Object.keys(filesOf(out))).toEqual(reportNames);
	expectWhole(out);
});

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
			expectWhole(out());
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

const disk = join(temporary(), "disk");
const mounted = ((): boolean => {
	try {
		mkdirSync(disk);
		execFileSync("mount", ["-t", "tmpfs", "-o", "size=4m", "tmpfs", disk], {
			stdio: "ignore",
		});
		return true;
	} catch {
		console.warn(
			"SKIPPED: a full disk. It needs the right to mount a small one.",
		);
		return false;
	}
})();
afterAll(() => {
	if (mounted) execFileSync("umount", [disk]);
});

describe.skipIf(!mounted)("on a disk that fills up", () => {
	test("a run ends with status 1 and one sentence; the earlier report is whole and no part of the new one is left", async () => {
		const out = join(disk, "report");
		const before = await here(
			"day",
			thigh,
			...few,
			"--seed",
			"a",
			"--out",
			out,
		);
		expect(before.status).toBe(0);
		const { bavail, bsize } = statfsSync(disk);
		const reportBytes = Object.values(filesOf(out)).join("").length;
		const ballast = bavail * bsize - Math.round(reportBytes / 2);
		writeFileSync(join(disk, "ballast"), new Uint8Array(ballast));
		for (const place of [out, join(disk, "another")]) {
			const {
				status,
				out: printed,
				err,
			} = await here("day", thigh, ...few, "--seed", "b", "--out", place);
			expect({ status, printed }).toEqual({ status: 1, printed: "" });
			expect(err).toMatch(
				/^slackwater: the report could not be written to .*: there is no space left on the disk\n$/,
			);
			expect(readdirSync(disk)).toEqual(["ballast", "report"]);
			expect(filesOf(out)).toEqual(references[0]);
		}
	});

	test("the disk itself as --out takes a report, though it is another disk than the folder above", async () => {
		execFileSync("rm", ["-r", join(disk, "report"), join(disk, "ballast")]);
		const { status, err } = await here(
			"day",
			thigh,
			...few,
			"--seed",
			"b",
			"--out",
			disk,
		);
		expect({ status, err }).toEqual({ status: 0, err: "" });
		expect(filesOf(disk)).toEqual(references[1]);
	});
});
