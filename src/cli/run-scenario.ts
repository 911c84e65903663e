import { availableParallelism } from "node:os";
import {
	blockCount,
	ProjectionGathering,
	type RunPart,
	runBlocks,
} from "../analysis/index.ts";
import type { Scenario } from "../scenario/index.ts";
import { deal, taskBlocks } from "./deal.ts";
import { Progress } from "./progress.ts";

/** Dressing-days below which starting a thread costs more than it saves. */
const worthThreads = 20_000;

const blockWorker = new URL(
	import.meta.url.endsWith(".ts") ? "./block-worker.ts" : "./block-worker.js",
	import.meta.url,
);

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
		if (threads > 1) await deal(scenario, blocks, threads, take, blockWorker);
		else
			for (let first = 0; first < blocks; first += taskBlocks)
				take(
					runBlocks(
						scenario,
						first,
						Math.min(first + taskBlocks, blocks),
						(replications) => progress.update(done + replications),
					),
				);
	} finally {
		progress.stop();
	}
	return gathering;
}
