import { existsSync, readFileSync } from "node:fs";
import { checkScenario } from "../src/scenario/index.ts";
import { least } from "./scenario/sample.ts";

/**
 * How much work something was, without a clock on the wall: a machine that is busy with other things makes nobody's work
 * more. Small pieces of work are counted in readings of a small scenario, so that a slow machine makes no difference either.
 */

/** Microseconds of processor time of one reading of the least scenario; measured once. */
let readingMicros: number | null = null;

const userMicros = () => process.cpuUsage().user;

function oneReading(): number {
	if (readingMicros !== null) return readingMicros;
	const many = 100;
	// The first round is thrown away: what has just been loaded runs slowly.
	for (let round = 0; round < 2; round++) {
		const before = userMicros();
		for (let i = 0; i < many; i++) checkScenario(least);
		readingMicros = (userMicros() - before) / many;
	}
	return readingMicros ?? Number.NaN;
}

/** Processor time of a piece of work, in readings of the least scenario (about a millisecond each). */
export function readings(work: () => void): number {
	const one = oneReading();
	const before = userMicros();
	work();
	return (userMicros() - before) / one;
}

/** The same of work that is waited for. */
export async function readingsOf(work: () => Promise<void>): Promise<number> {
	const one = oneReading();
	const before = userMicros();
	await work();
	return (userMicros() - before) / one;
}

/** Whether the processor time of another process can be seen here. */
export const seesProcesses = existsSync("/proc/self/stat");
if (!seesProcesses)
	console.warn("SKIPPED: how soon an interrupt ends a run. The processor time of other processes cannot be seen here.");

/** Processor time that a process has taken so far, its threads included, in hundredths of a second; null once it is gone. */
export function ticksOf(pid: number): number | null {
	try {
		const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
		// The name, in brackets, may hold blanks; user and system time are the 12th and 13th after it (proc(5)).
		const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
		return fields[0] === "Z" ? null : Number(fields[11]) + Number(fields[12]);
	} catch {
		return null;
	}
}
