// Prints figures of speed and memory; nothing is tested here. Run with `npm run bench`, `-- --json` for data.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { beside } from "./beside.mjs";
import { median } from "./median.mjs";

const { readScenario } = await import("../../dist/scenario/index.js");
const { TherapyDay } = await import("../../dist/therapy/index.js");
const { runBlocks, blockSize } = await import("../../dist/analysis/index.js");

const asData = process.argv.includes("--json");
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
		const began = process.cpuUsage();
		for (let i = 0; i < 4000; i++) day.run(replication++, silent);
		return 4000 / (process.cpuUsage(began).user / 1e6);
	});
	return Math.round(median(runs.slice(2)));
}

/** Seconds from the start of the process to its end. */
function startToEnd(...args) {
	const runs = Array.from({ length: 5 }, () => {
		const began = performance.now();
		spawnSync(process.execPath, ["dist/cli/main.js", ...args]);
		return (performance.now() - began) / 1000;
	});
	return Number(median(runs).toFixed(3));
}

function reportSeconds() {
	const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
	const out = join(folder, "report");
	const seconds = startToEnd("day", file, "--out", out, "--quiet");
	rmSync(folder, { recursive: true });
	return seconds;
}

/** Heap after so many replications of four hours, MB: what counts is that it stays. */
function memoryMb(replications) {
	runBlocks(
		{ ...scenario, horizonMin: 240, replications },
		0,
		Math.ceil(replications / blockSize),
	);
	globalThis.gc?.();
	return Number((process.memoryUsage().heapUsed / 1e6).toFixed(1));
}

tell(`${cpus()[0].model}, ${cpus().length} cores, Node ${process.version}`);
const queues = beside(tell);
const day = {
	perSecond: daysPerSecond(),
	reportSeconds: reportSeconds(),
	helpSeconds: startToEnd("--help"),
	memoryMb: [1e2, 1e4, 1e6].map((replications) => ({
		replications,
		heap: memoryMb(replications),
	})),
};
tell(
	`dressing-days a second, one thread, full chance: ${day.perSecond}
start to written report, 400 replications: ${day.reportSeconds} s; --help: ${day.helpSeconds} s
heap after replications: ${day.memoryMb.map(({ replications, heap }) => `${replications}: ${heap} MB`).join(", ")}`,
);
// Each of these takes its figures when there is something to measure: null until then.
const result = {
	...queues,
	day,
	compare: null,
	sweep: null,
	supply: null,
	page: null,
};
if (asData) console.log(JSON.stringify(result, null, "\t"));
