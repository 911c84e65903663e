// Prints figures of speed and memory; nothing is tested here. Run with `npm run bench`, `-- --json` for data.
import { readFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { beside } from "./beside.mjs";
import { compare, startToEnd, supply, sweep, withFolder } from "./commands.mjs";
import { median } from "./median.mjs";
import { page, pageLines } from "./page.mjs";

const { readScenario } = await import("../../dist/scenario/index.js");
const { TherapyDay } = await import("../../dist/therapy/index.js");
const { blockSize, ProjectionGathering, runBlocks } = await import("../../dist/studies/index.js");

const asData = process.argv.includes("--json");
const began = performance.now();
// With --json standard output is the data alone; what is done so far is told all the same.
const tell = (line) => (asData ? console.error(line) : console.log(line));
const file = "scenarios/thigh-short-dwell.yaml";
const scenario = readScenario(readFileSync(file, "utf8"));
const nothing = () => {};
const silent = {
	span: nothing,
	phase: nothing,
	pause: nothing,
	notice: nothing,
	alarmStarts: nothing,
	alarmEnds: nothing,
	canisterChange: nothing,
	sourceChange: nothing,
	offSuction: nothing,
	breach: nothing,
};

/** Dressing-days a second of processor time on one thread, with full chance. */
function daysPerSecond() {
	const day = new TherapyDay(scenario, silent);
	let replication = 0;
	const runs = Array.from({ length: 11 }, () => {
		const start = process.cpuUsage();
		for (let i = 0; i < 4000; i++) day.run(replication++, silent);
		return 4000 / (process.cpuUsage(start).user / 1e6);
	});
	return Math.round(median(runs.slice(2)));
}

/** Heap while the gathered answer of so many replications of four hours is held, MB: what counts is that it stays. */
function memoryMb(replications) {
	const many = { ...scenario, horizonMin: 240, replications };
	const gathering = new ProjectionGathering(many);
	const blocks = Math.ceil(replications / blockSize);
	for (let first = 0; first < blocks; first += 20) gathering.add(runBlocks(many, first, Math.min(first + 20, blocks)));
	globalThis.gc?.();
	const { heapUsed } = process.memoryUsage();
	gathering.projection(); // complains where a block is missing, and holds what was gathered until here
	return Number((heapUsed / 1e6).toFixed(1));
}

/** Does a part of the work and tells what it came to, in words. */
async function part(work, words) {
	const figures = await work();
	if (figures !== null) tell(words(figures));
	return figures;
}

tell(`${cpus()[0].model}, ${cpus().length} cores, Node ${process.version}`);
const result = {
	...beside(tell),
	day: await part(
		() => ({
			perSecond: daysPerSecond(),
			reportSeconds: withFolder((folder) => startToEnd(5, "day", file, "--out", join(folder, "report"))),
			helpSeconds: startToEnd(5, "--help"),
			memoryMb: [1e2, 1e4, 1e6].map((replications) => ({ replications, heap: memoryMb(replications) })),
		}),
		(day) => `dressing-days a second, one thread, full chance: ${day.perSecond}
start to written report, ${scenario.replications} replications: ${day.reportSeconds} s; --help: ${day.helpSeconds} s
heap after replications: ${day.memoryMb.map(({ replications, heap }) => `${replications}: ${heap} MB`).join(", ")}`,
	),
	compare: await part(
		compare,
		(all) =>
			`compare, start to written report: ${all.seconds} s for ${all.dressingDays} dressing-days, ${all.microsecondsPerDay} µs each; without what it rests on ${all.regimensAloneSeconds} s`,
	),
	sweep: await part(
		sweep,
		(all) =>
			`sweep of ${all.points} points, ${all.replications} replications each: ${all.seconds1} s on one thread, ${all.seconds2} s on two, speed-up ${all.speedUp}, efficiency ${all.efficiency}`,
	),
	supply: await part(
		supply,
		(all) =>
			`supply, ${all.beds} beds for ${all.days} days, one thread: ${all.replications} replications in ${all.seconds} s, ${all.dressingDaysPerSecond} dressing-days a second; 50 replications would take ${all.secondsFor50} s`,
	),
	page: await part(() => page(40, tell), pageLines),
	seconds: null,
};
result.seconds = Math.round((performance.now() - began) / 1000);
tell(`all of this: ${result.seconds} s`);
if (asData) console.log(JSON.stringify(result, null, "\t"));
