import { expect } from "vitest";
import { here, type Ran } from "../cli/program.ts";

/** What one command may take at the most: processor seconds, and bytes that stay or pass. */
const most = { seconds: 20, bytes: 512e6 };

/** Runs the program in this process and sees that it stays within bounds. */
export async function bounded(...words: string[]): Promise<Ran> {
	const began = process.cpuUsage();
	const ran = await here(...words);
	const seconds = process.cpuUsage(began).user / 1e6;
	expect(seconds).toBeLessThan(most.seconds);
	expect(process.memoryUsage().heapUsed).toBeLessThan(most.bytes);
	return ran;
}
