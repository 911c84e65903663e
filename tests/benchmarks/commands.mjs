// The commands as a user waits for them, from the start of a process to its end: a comparison, a sweep on one and on two
// threads, a year of a ward. What is set against each other is run in turns; figures are medians.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { parse, stringify } from "yaml";
import { median } from "./median.mjs";

const { readScenario } = await import("../../dist/scenario/index.js");
const { armsOf, restsOnStudy, sweepPlan } = await import("../../dist/studies/index.js");

const short = (seconds) => Number(seconds.toFixed(3));
const read = (file) => readScenario(readFileSync(file, "utf8"));

/** Runs the built program; seconds from the start of its process to its end, and what it printed. Throws where it failed. */
function ran(...words) {
	const began = performance.now();
	const { status, stdout, stderr } = spawnSync(process.execPath, ["dist/cli/main.js", ...words, "--quiet"], {
		encoding: "utf8",
		maxBuffer: 1e9,
	});
	const seconds = (performance.now() - began) / 1000;
	if (status !== 0) throw new Error(`${words.join(" ")}: ${stderr}`);
	return { seconds, stdout };
}

/** Seconds of the median of so many runs. */
export const startToEnd = (times, ...words) =>
	short(median(Array.from({ length: times }, () => ran(...words).seconds)));

/** Gives `use` a folder that goes when it is done. */
export function withFolder(use) {
	const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
	try {
		return use(folder);
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** All regimens of the demo, with every assumption halved and doubled, to the written report; and without the latter. */
export function compare() {
	const file = "scenarios/compare-thigh.yaml";
	const scenario = read(file);
	const arms = armsOf(scenario, null);
	const varied = restsOnStudy(arms).study.arms;
	const days = (some) => some.length * scenario.replications * scenario.dressings.length * (scenario.horizonMin / 1440);
	const dressingDays = Math.round(days(arms) + days(varied));
	return withFolder((folder) => {
		const out = ["--out", join(folder, "report")];
		const seconds = startToEnd(3, "compare", file, ...out);
		return {
			seconds,
			dressingDays,
			microsecondsPerDay: Number(((seconds / dressingDays) * 1e6).toFixed(1)),
			regimensAloneSeconds: startToEnd(3, ...["compare", file, "--rests-on", "off", ...out]),
		};
	});
}

/** The grid of the demo on one thread and on two. Efficiency: the share of two threads' time that is put to use. */
export function sweep() {
	const file = "scenarios/sweep-thigh.yaml";
	// So many that the start of the process is the lesser part.
	const replications = 2000;
	const words = ["--json", "--replications", String(replications)];
	const rounds = Array.from({ length: 3 }, () =>
		["1", "2"].map((workers) => ran("sweep", file, ...words, "--workers", workers).seconds),
	);
	const speedUp = median(rounds.map(([one, two]) => one / two));
	const scenario = read(file);
	return {
		points: sweepPlan(scenario, scenario.sweep).points.length,
		replications,
		seconds1: short(median(rounds.map(([one]) => one))),
		seconds2: short(median(rounds.map(([, two]) => two))),
		speedUp: Number(speedUp.toFixed(2)),
		efficiency: Number((speedUp / 2).toFixed(2)),
	};
}

/** A year of the demo's hospital with twenty units and patients for them, its regimens as they are, on one thread. */
export function supply() {
	return withFolder((folder) => {
		const hospital = "scenarios/ward/hospital.yaml";
		const { compare: _, ...ward } = parse(readFileSync(hospital, "utf8"));
		ward.ward.units = 20;
		ward.ward.arrivals.rate = "2.6 /d";
		ward.horizon = "52 w";
		for (const kind of ward.ward.kinds)
			if (kind.file !== undefined) kind.file = relative(folder, join("scenarios/ward", kind.file));
		const file = join(folder, "year.yaml");
		writeFileSync(file, stringify(ward));
		const run = (replications) =>
			ran(...["supply", file, "--json", "--workers", "1"], ...["--replications", `${replications}`]);
		// What is the same for three and more replications (start, order rules) is in both and falls out of their difference.
		const [few, many] = [3, 10];
		const rounds = Array.from({ length: 3 }, () => [run(few), run(many)]);
		const each = median(rounds.map(([a, b]) => (b.seconds - a.seconds) / (many - few)));
		const once = median(rounds.map(([a]) => a.seconds)) - few * each;
		const { beds } = JSON.parse(rounds[0][1].stdout);
		return {
			beds: 20,
			days: 364,
			replications: many,
			seconds: short(median(rounds.map(([, b]) => b.seconds))),
			dressingDaysPerReplication: Math.round(beds.therapyDays.mean),
			dressingDaysPerSecond: Math.round(beds.therapyDays.mean / each),
			secondsFor50: Number((once + 50 * each).toFixed(1)),
		};
	});
}
