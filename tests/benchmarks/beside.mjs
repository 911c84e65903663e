// The engine beside others at the same work: interleaved, the median of five ratios of processor time.
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { median } from "./median.mjs";

const here = (name) => new URL(name, import.meta.url).pathname;
const rounds = 5;

/** How each is run, by name; those that this machine lacks are told of and left out. */
function runners(folder, tell) {
	const node = (queue) => [process.execPath, here("queues.mjs"), queue];
	const all = { project: node("engine"), flatqueue: node("flatqueue"), "heap-js": node("heap-js") };
	const program = join(folder, "queues");
	const made = spawnSync("g++", ["-O2", "-o", program, here("queues.cpp")]);
	if (made.status === 0) all.cpp = [program];
	else tell("SKIPPED: C++, as there is no g++ that compiles queues.cpp");
	const simpy = spawnSync("python3", ["-c", "import simpy"]);
	if (simpy.status === 0) all.simpy = ["python3", here("queues.py")];
	else tell("SKIPPED: SimPy, as there is no python3 that has it");
	return all;
}

/** Events a second of everybody, and the median ratio of the engine's to theirs. `events` in one run. */
function race(all, events, args) {
	const speeds = {};
	const results = {};
	for (let round = 0; round < rounds; round++) {
		for (const [name, [command, ...first]] of Object.entries(all)) {
			// Python takes minutes for what the others do in a second; once is enough to say how many times.
			if (name === "simpy" && round > 0) continue;
			const text = execFileSync(command, [...first, ...args], { encoding: "utf8" });
			const [seconds, result] = text.split(" ").map(Number);
			speeds[name] = [...(speeds[name] ?? []), events / seconds];
			results[name] = result;
		}
	}
	// The same draws lead to the same waits, but for the last bits of the host's logarithm.
	const gap = Math.abs(results.cpp / results.project - 1);
	if (gap > 1e-6) throw new Error(`C++ did other work: ${JSON.stringify(results)}`);
	const figures = { project: Math.round(median(speeds.project)) };
	for (const name of Object.keys(speeds).filter((one) => one !== "project")) {
		figures[name] = Math.round(median(speeds[name]));
		const ratios = speeds[name].map((other, i) => speeds.project[i] / other);
		figures[name === "cpp" ? "ratio" : `to ${name}`] = Number(median(ratios).toFixed(3));
	}
	return { cpp: null, ratio: null, ...figures };
}

export function beside(tell) {
	const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
	try {
		const all = runners(folder, tell);
		const mm1 = race(all, 2e6, ["mm1", "1000000"]);
		tell(`M/M/1, events a second: ${words(mm1)}`);
		const hold = [1e3, 1e4, 1e5, 1e6].map((pending) => {
			const figures = race(all, 5e5, ["hold", `${pending}`, "500000"]);
			tell(`hold, ${pending} pending: ${words(figures)}`);
			return { pending, ...figures };
		});
		return { mm1, hold };
	} finally {
		rmSync(folder, { recursive: true });
	}
}

const words = (figures) =>
	Object.entries(figures)
		.filter(([, value]) => value !== null)
		.map(([name, value]) => `${name} ${value}`)
		.join(", ");
