import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { smallWard } from "../ward/small-ward.ts";
import { interrupted } from "./interrupted.ts";
import {
	filesOf,
	here,
	isSentence,
	lines,
	scenario,
	shell,
	shellStatus,
	spawned,
	temporary,
	written,
} from "./program.ts";
import type { Report } from "./two-reports.ts";

const folder = temporary();
const ward = written(folder, "ward.yaml", smallWard());
const acts = written(folder, "acts.txt", "next\nlook suction-line\nnext\n");
const seeds = ["a", "b"] as const;
type Seed = (typeof seeds)[number];
const part = (seed: Seed, number: number) => join(folder, `parts-${seed}`, `part-${number}-of-2.json`);
/** A scenario that says its seed itself. */
const seeded = (seed: Seed) => join(folder, `seeded-${seed}.yaml`);

/** Every command that writes something: what it reads, and options with which either seed leads to another report of one title. */
interface Command {
	readonly files: (seed: Seed) => readonly string[];
	readonly options: (seed: Seed, replications?: number) => readonly string[];
	/** Whether it has --json. */
	readonly prints: boolean;
	/** Whether its work is dealt out to threads. */
	readonly threads: boolean;
}
const running = (file: string, few: number, ...options: readonly string[]): Command => ({
	files: () => [file],
	options: (seed, replications = few) => [...["--seed", seed, "--replications", `${replications}`, ...options]],
	prints: true,
	threads: true,
});
const commands: Readonly<Record<string, Command>> = {
	day: running(scenario("thigh-short-dwell"), 1050),
	compare: running(...([scenario("compare-thigh"), 550, "--rests-on", "off"] as const), ...["--between", "short,long"]),
	sweep: running(
		...([scenario("thigh-short-dwell"), 60, "--dwell", "3 min, 5 min"] as const),
		...["--suction", "1 h, 2 h"],
	),
	supply: running(ward, 20),
	gather: { files: (seed) => [part(seed, 2), part(seed, 1)], options: () => [], prints: true, threads: false },
	drill: {
		files: () => [scenario("rehearse-02")],
		options: (seed) => ["--seed", seed, "--script", acts],
		prints: true,
		threads: false,
	},
	page: { files: (seed) => [seeded(seed)], options: () => [], prints: false, threads: false },
};
const names = Object.keys(commands);
const withThreads = names.filter((name) => commands[name].threads);
const printing = names.filter((name) => commands[name].prints);

function words(name: string, seed: Seed, replications?: number): string[] {
	const { files, options } = commands[name];
	return [name, ...files(seed), ...options(seed, replications), "--quiet"];
}

/** What each command writes for the seeds when nothing goes wrong. */
const whole: Record<string, Record<Seed, Report>> = {};

beforeAll(async () => {
	const { out } = await here("check", "--full", scenario("thigh-short-dwell"));
	for (const seed of seeds) {
		writeFileSync(seeded(seed), out.replace(/^seed: .*$/mu, `seed: ${seed}`));
		for (const shard of ["1/2", "2/2"])
			await here(...words("supply", seed), ...["--shard", shard, "--out", join(folder, `parts-${seed}`)]);
	}
	for (const name of names) {
		const report = async (seed: Seed) => {
			const place = join(folder, `${name}-${seed}`);
			const ran = await here(...words(name, seed), "--out", place);
			expect(ran, name).toMatchObject({ status: 0, out: "", err: "" });
			return filesOf(place);
		};
		whole[name] = { a: await report("a"), b: await report("b") };
		const [a, b] = seeds.map((seed) => JSON.stringify(whole[name][seed]));
		expect(a === b, name).toBe(false);
	}
});

/** The files of a report's folder that a user sees. */
const seen = (place: string): Report =>
	Object.fromEntries(Object.entries(filesOf(place)).filter(([name]) => !name.startsWith(".")));

/** Hidden files that are no part of the bargain: only what is finished of a sweep may stay. */
const left = (place: string) => readdirSync(place).filter((name) => /^\.(?!unfinished-)/u.test(name));

/** That a folder shows a report's files. Compared one by one: to lay two long texts side by side for a message would take minutes. */
function expectReport(files: Report, report: Report): void {
	expect(Object.keys(files)).toEqual(Object.keys(report));
	for (const [file, text] of Object.entries(files)) expect(text === report[file], `${file} is another`).toBe(true);
}

/** Makes a folder that holds the report of seed a. */
function earlier(name: string, place: string): void {
	mkdirSync(place);
	for (const [file, text] of Object.entries(whole[name].a)) written(place, file, text);
}

describe.each(names)("%s", (name) => {
	test("whose input is not there says so by its name, and the earlier report stays", async () => {
		const place = join(folder, `${name}-vanished`);
		earlier(name, place);
		const { files, options } = commands[name];
		const gone = files("b").map((file) => `${file}.gone`);
		const { status, out, err } = await here(...[name, ...gone, ...options("b"), "--out", place]);
		expect({ status, out }).toEqual({ status: 2, out: "" });
		expect(lines(err)).toHaveLength(gone.length);
		for (const [i, line] of lines(err).entries()) {
			expect(line).toSatisfy(isSentence);
			expect(line).toContain(gone[i]);
			expect(line).toMatch(/it is not there$/u);
		}
		expectReport(filesOf(place), whole[name].a);
	});

	test("into a place where nothing can be made is refused in a sentence", async () => {
		const { status, out, err } = await here(...[...words(name, "a"), "--out", "/proc/slackwater/report"]);
		expect({ status, out }).toEqual({ status: 2, out: "" });
		expect(lines(err)).toHaveLength(1);
		expect(err.trim()).toSatisfy(isSentence);
	});

	// A sweep keeps what is finished under a name of its own for each seed, so that two of one seed share it.
	test.each<readonly Seed[]>(name === "sweep" ? [seeds, ["a", "a"]] : [seeds])(
		"twice at the same time into one folder, with the seeds %s and %s: both end well, with whole files",
		async (...both) => {
			const place = join(folder, `${name}-shared-${both.join("")}`);
			const runs = await Promise.all(both.map((seed) => spawned([...words(name, seed), "--out", place])));
			for (const ran of runs) expect(ran).toMatchObject({ status: 0, err: "" });
			const files = filesOf(place);
			expect(Object.keys(files)).toEqual(Object.keys(whole[name].a));
			for (const [file, text] of Object.entries(files))
				expect(
					both.some((seed) => whole[name][seed][file] === text),
					`${file} is half written`,
				).toBe(true);
		},
	);
});

describe.each(printing)("%s --json", (name) => {
	const command = () => `$SLACKWATER ${[...words(name, "a"), "--json"].map((word) => `'${word}'`).join(" ")}`;

	test("into a pipe that is closed early ends with 0 and says nothing", async () => {
		const { out, err } = await shell(`${command()} | head -1; echo "status \${PIPESTATUS[0]}"`, folder);
		expect({ out, err }).toEqual({ out: "{\nstatus 0\n", err: "" });
	});

	test.skipIf(!existsSync("/dev/full"))("to where nothing can be written: one sentence and status 1", async () => {
		const { status, err } = await shell(`${command()} > /dev/full`, folder);
		expect(status).toBe(1);
		expect(err).toBe("slackwater: nothing can be written to standard output: there is no space left on the disk\n");
	});
});

describe.each(withThreads)("%s that is interrupted in its work", (name) => {
	test("ends with 130 and works no further, and the earlier report stays", async () => {
		const place = join(folder, `${name}-cut`);
		earlier(name, place);
		// More than is done before the signal comes; a ward takes no more.
		const many = name === "supply" ? 100_000 : 400_000;
		const { meanwhile, ticks } = interrupted("SIGINT");
		const ran = await spawned([...words(name, "b", many), "--workers", "2", "--out", place], { meanwhile });
		expect(shellStatus(ran)).toBe(130);
		expect(ticks.after).toBeLessThanOrEqual(ticks.before / 2);
		expectReport(seen(place), whole[name].a);
		expect(left(place)).toEqual([]);
	});
});

describe.each(withThreads)("%s on two threads", (name) => {
	test("that die with their first task in hand: it is done again, and the bytes are the same", async () => {
		const dying = written(
			folder,
			"dies.mjs",
			`import { appendFileSync } from "node:fs";
import { isMainThread, parentPort } from "node:worker_threads";
if (!isMainThread)
	parentPort.on("message", () => {
		appendFileSync(process.env.DEATHS, "died\\n");
		process.exit(3);
	});
`,
		);
		const place = join(folder, `${name}-deaths`);
		const deaths = join(folder, `${name}-deaths.txt`);
		const ran = await spawned([...words(name, "a"), "--workers", "2", "--out", place], {
			env: { NODE_OPTIONS: `--import=${pathToFileURL(dying).href}`, DEATHS: deaths },
		});
		expect(ran).toMatchObject({ status: 0, out: "", err: "" });
		expectReport(filesOf(place), whole[name].a);
		// Two of the work, and one that would have drawn the report where a command has it.
		expect(lines(readFileSync(deaths, "utf8")).length).toBeGreaterThan(1);
	});
});

/** A small disk of its own for every command; null where none can be mounted. */
const disk = join(temporary(), "disk");
const mounted = ((): boolean => {
	try {
		mkdirSync(disk);
		execFileSync("mount", ["-t", "tmpfs", "-o", "size=16m", "tmpfs", disk], { stdio: "ignore" });
		return true;
	} catch {
		console.warn("SKIPPED: full and read-only disks. They need the right to mount a small one.");
		return false;
	}
})();
afterAll(() => {
	if (mounted) execFileSync("umount", [disk]);
});

describe.skipIf(!mounted).each(names)("%s on a small disk", (name) => {
	afterEach(() => {
		for (const file of readdirSync(disk)) rmSync(join(disk, file), { recursive: true });
	});

	test("that fills up: status 1 and one sentence, the earlier report whole; with space again it ends well", async () => {
		const old = join(disk, "report");
		earlier(name, old);
		const bytes = Buffer.byteLength(Object.values(whole[name].b).join(""));
		const ballast = join(disk, "ballast");
		for (const [free, place] of [
			[bytes / 2, old],
			[bytes / 2, join(disk, "another")],
			[0, old],
		] as const) {
			const { bavail, bsize } = statfsSync(disk);
			writeFileSync(ballast, new Uint8Array(bavail * bsize - Math.round(free)));
			const { status, out, err } = await here(...[...words(name, "b"), "--out", place]);
			expect({ status, out }).toEqual({ status: 1, out: "" });
			expect(err).toMatch(
				/^slackwater: (?:the report could not be written to|what is finished could not be kept in) .*: there is no space left on the disk\n$/u,
			);
			expectReport(seen(old), whole[name].a);
			expect(left(old)).toEqual([]);
			expect(left(disk)).toEqual([]);
			if (existsSync(join(disk, "another"))) expect(seen(join(disk, "another"))).toEqual({});
			rmSync(ballast);
		}
		const another = join(disk, "another");
		const ran = await here(...words(name, "b"), "--out", another);
		expect(ran).toMatchObject({ status: 0, err: "" });
		expectReport(filesOf(another), whole[name].b);
	});

	test("as the place itself, though it is another disk than the folder above, takes the report", async () => {
		const ran = await here(...words(name, "b"), "--out", disk);
		expect(ran).toMatchObject({ status: 0, err: "" });
		expectReport(seen(disk), whole[name].b);
	});

	test("that is read-only: refused in a sentence, the earlier report whole", async () => {
		const old = join(disk, "report");
		earlier(name, old);
		execFileSync("mount", ["-o", "remount,ro", disk]);
		try {
			for (const place of [old, join(disk, "another")]) {
				const { status, out, err } = await here(...[...words(name, "b"), "--out", place]);
				expect({ status, out }).toEqual({ status: 2, out: "" });
				expect(lines(err)).toHaveLength(1);
				expect(err.trim()).toSatisfy(isSentence);
				expect(err).toMatch(/the disk is read-only/u);
				expectReport(filesOf(old), whole[name].a);
			}
		} finally {
			execFileSync("mount", ["-o", "remount,rw", disk]);
		}
	});
});
