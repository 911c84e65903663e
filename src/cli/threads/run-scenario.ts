import type { Scenario } from "../../scenario/index.ts";
import { blockCount, ProjectionGathering } from "../../studies/index.ts";
import { type Effort, runJob, spans } from "./run-job.ts";

/** The tasks that the replications of a scenario make: of 20 blocks each. */
export const dayTasks = (scenario: Scenario) => spans(0, blockCount(scenario), 20);

/** Runs every replication of a scenario and gathers the projection; the answer is the same for any number of workers. */
export async function runScenario(scenario: Scenario, effort: Effort): Promise<ProjectionGathering> {
	const { replications, dressings, horizonMin } = scenario;
	const gathering = new ProjectionGathering(scenario);
	await runJob<"day">({ kind: "day", scenario }, dayTasks(scenario), {
		...effort,
		days: (replications * dressings.length * horizonMin) / 1440,
		total: replications,
		size: (part) => part.replications,
		take: (part) => gathering.add(part),
	});
	return gathering;
}
