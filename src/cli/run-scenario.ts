import {
	type BlockTask,
	blockCount,
	ProjectionGathering,
} from "../analysis/index.ts";
import type { Scenario } from "../scenario/index.ts";
import { Progress } from "./progress.ts";
import { runJob } from "./run-job.ts";

/** Blocks that a thread is given at a time. */
const taskBlocks = 20;

/** The tasks that the replications of a scenario make. */
export function dayTasks(scenario: Scenario): BlockTask[] {
	const blocks = blockCount(scenario);
	return Array.from({ length: Math.ceil(blocks / taskBlocks) }, (_, i) => ({
		first: i * taskBlocks,
		last: Math.min((i + 1) * taskBlocks, blocks),
	}));
}

/** Runs every replication of a scenario and gathers the projection; the answer is the same for any number of workers. */
export async function runScenario(
	scenario: Scenario,
	workers: number | undefined,
	quiet: boolean,
): Promise<ProjectionGathering> {
	const gathering = new ProjectionGathering(scenario);
	const progress = new Progress(scenario.replications, quiet);
	let done = 0;
	try {
		await runJob<"day">({ kind: "day", scenario }, dayTasks(scenario), {
			workers,
			days:
				(scenario.replications *
					scenario.dressings.length *
					scenario.horizonMin) /
				1440,
			take: (part) => {
				gathering.add(part);
				done += part.replications;
				progress.update(done);
			},
			progress: (replications) => progress.update(done + replications),
		});
	} finally {
		progress.stop();
	}
	return gathering;
}
