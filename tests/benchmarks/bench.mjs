// Prints figures of speed and memory; nothing is tested here. Run with `npm run bench`.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";

const { readScenario } = await import("../../dist/scenario/index.js");
const { TherapyDay } = await import("../../dist/therapy/index.js");
const { runBlocks, blockSize } = await import("../../dist/analysis/index.js");

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
const median = (values) => values.sort((a, b) => a - b)[values.length >> 1];

function daysPerSecond() {
	const day = new TherapyDay(scenario, silent);
	let replication = 0;
	const runs = Array.from({ length: 9 }, () => {
		const began = process.cpuUsage().user;
		for (let i = 0; i < 5000; i++) day.run(replication++, silent);
		return 5000 / ((process.cpuUsage().user - began) / 1e6);
	});
	return median(runs.slice(2));
}

function reportSeconds() {
	const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
	const runs = Array.from({ length: 5 }, () => {
		const began = performance.now();
		spawnSync(process.execPath, [
			"dist/cli/main.js",
			"day",
			file,
			"--out",
			join(folder, "report"),
			"--quiet",
		]);
		return (performance.now() - began) / 1000;
	});
	rmSync(folder, { recursive: true });
	return median(runs);
}

function memoryMb(replications) {
	const part = { ...scenario, replications };
	runBlocks(part, 0, Math.ceil(replications / blockSize));
	globalThis.gc?.();
	return process.memoryUsage().heapUsed / 1e6;
}

console.log(`${cpus()[0].model}, Node ${process.version}`);
console.log(
	`dressing-days a second, one thread, full chance: ${Math.round(daysPerSecond())}`,
);
console.log(
	`start to written report, 400 replications: ${reportSeconds().toFixed(2)} s`,
);
console.log(
	`heap after 1,000 replications: ${memoryMb(1000).toFixed(1)} MB; after 100,000: ${memoryMb(100000).toFixed(1)} MB`,
);
