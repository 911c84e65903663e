import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect } from "vitest";
import { here, type Ran } from "../cli/program.ts";

/** What one command may take at the most: processor seconds, and bytes that stay or pass. */
const most = { seconds: 20, bytes: 512e6 };

setFlagsFromString("--expose-gc");
const collectGarbage: () => void = runInNewContext("gc");
const heap = () => process.memoryUsage().heapUsed;
/** What other tests in this process hold: counted once, before the first command. */
let held: number | null = null;

/** Runs the program in this process and sees that it stays within bounds. */
export async function bounded(...words: string[]): Promise<Ran> {
	if (held === null) {
		collectGarbage();
		held = heap();
	}
	const [began, before] = [process.cpuUsage(), heap()];
	const ran = await here(...words);
	const seconds = process.cpuUsage(began).user / 1e6;
	expect(seconds).toBeLessThan(most.seconds);
	expect(heap() - before).toBeLessThan(most.bytes);
	// What lies about of earlier commands until it is collected is nobody's.
	if (heap() - held > most.bytes) collectGarbage();
	expect(heap() - held).toBeLessThan(most.bytes);
	return ran;
}
