import { Worker } from "node:worker_threads";
import { type RunPart, runBlocks } from "../analysis/index.ts";
import type { Scenario } from "../scenario/index.ts";

/** Blocks that a thread is given at a time. */
export const taskBlocks = 20;

type Span = readonly [first: number, last: number];

/**
 * Deals the blocks 0 … `blocks` − 1 out to threads that run `script`, and hands every part to `take`. What a thread that
 * died had in hand is worked out here, and so is all that is left once the last has died.
 */
export async function deal(
	scenario: Scenario,
	blocks: number,
	threads: number,
	take: (part: RunPart) => void,
	script: URL,
): Promise<void> {
	let next = 0;
	let living = threads;
	const nextSpan = (): Span | null => {
		if (next >= blocks) return null;
		const first = next;
		next = Math.min(first + taskBlocks, blocks);
		return [first, next];
	};
	const workHere = async (span: Span) => {
		take(runBlocks(scenario, ...span));
		await new Promise((resume) => setImmediate(resume)); // lets the other threads speak
	};
	const thread = () =>
		new Promise<void>((resolve, reject) => {
			const worker = new Worker(script, { workerData: scenario });
			let inHand: Span | null = null;
			const ask = () => {
				inHand = nextSpan();
				if (inHand === null) void worker.terminate();
				else worker.postMessage(inHand);
			};
			const end = async () => {
				living--;
				if (inHand !== null) await workHere(inHand);
				if (living > 0) return;
				for (let span = nextSpan(); span !== null; span = nextSpan())
					await workHere(span);
			};
			worker.on("message", (part: RunPart) => {
				try {
					take(part);
					ask();
				} catch (error) {
					reject(error);
				}
			});
			worker.on("error", () => {}); // its end is told of next
			worker.on("exit", () => end().then(resolve, reject));
			ask();
		});
	await Promise.all(Array.from({ length: threads }, thread));
}
