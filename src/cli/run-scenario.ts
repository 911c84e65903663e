import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import {
	blockCount,
	ProjectionGathering,
	type RunPart,
	runBlocks,
} from "../analysis/index.ts";
import type { Scenario } from "../scenario/index.ts";
import { Progress } from "./progress.ts";

/** Blocks that a thread is given at a time. */
const taskBlocks = 20;
/** Dressing-days below which starting a thread costs more than it saves. */
const worthThreads = 20_000;

/** Runs every replication of a scenario and gathers the projection; the answer is the same for any number of workers. */
export async function runScenario(
	scenario: Scenario,
	workers: number | undefined,
	quiet: boolean,
): Promise<ProjectionGathering> {
	const gathering = new ProjectionGathering(scenario);
	const progress = new Progress(scenario.replications, quiet);
	const blocks = blockCount(scenario);
	const days =
		(scenario.replications * scenario.dressings.length * scenario.horizonMin) /
		1440;
	const threads = Math.min(
		workers ?? (days < worthThreads ? 1 : availableParallelism()),
		Math.ceil(blocks / taskBlocks),
	);
	let done = 0;
	const take = (part: RunPart) => {
		gathering.add(part);
		done += part.replications;
		progress.update(done);
	};
	try {
		if (threads <= 1) {
			for (let first = 0; first < blocks; first += taskBlocks) {
				const part = runBlocks(
					scenario,
					first,
					Math.min(first + taskBlocks, blocks),
					(replications) => progress.update(done + replications),
				);
				take(part);
				// Lets a signal in.
				await new Promise((resume) => setImmediate(resume));
			}
		} else await deal(scenario, blocks, threads, take);
	} finally {
		progress.stop();
	}
	return gathering;
}

/** Deals the blocks out to threads. What a thread that died had in hand is worked out here instead. */
async function deal(
	scenario: Scenario,
	blocks: number,
	threads: number,
	take: (part: RunPart) => void,
): Promise<void> {
	let next = 0;
	const script = new URL(
		import.meta.url.endsWith(".ts") ? "./block-worker.ts" : "./block-worker.js",
		import.meta.url,
	);
	const work = () =>
		new Promise<void>((resolve, reject) => {
			const worker = new Worker(script, { workerData: scenario });
			let inHand: [number, number] | null = null;
			const ask = () => {
				if (next >= blocks) {
					inHand = null;
					void worker.terminate().then(() => resolve());
					return;
				}
				inHand = [next, Math.min(next + taskBlocks, blocks)];
				next = inHand[1];
				worker.postMessage(inHand);
			};
			worker.on("message", (part: RunPart) => {
				try {
					take(part);
					ask();
				} catch (error) {
					reject(error);
				}
			});
			worker.on("error", () => {});
			worker.on("exit", () => {
				if (inHand === null) return;
				try {
					take(runBlocks(scenario, inHand[0], inHand[1]));
					while (next < blocks) {
						const first = next;
						next = Math.min(next + taskBlocks, blocks);
						take(runBlocks(scenario, first, next));
					}
					resolve();
				} catch (error) {
					reject(error);
				}
			});
			ask();
		});
	await Promise.all(Array.from({ length: threads }, work));
}
