import type { DayResult } from "../../results/index.ts";
import { type Problem, type Scenario, UnusableInput } from "../../scenario/index.ts";
import { dayResult, replicationsFor } from "../../studies/index.ts";
import { version } from "../files/own.ts";
import { readInput } from "../files/scenario-files.ts";
import type { Typed } from "../options/options.ts";
import type { Overrides } from "../options/overrides.ts";
import type { ExitStatus } from "../terminal/failure.ts";
import { runScenario } from "../threads/run-scenario.ts";
import { delivery } from "./deliver.ts";

/**
 * Simulates the day and its replications, and writes the report folder; with `--json` prints the result instead.
 * `problems` are those of the command line. Throws UnusableInput with these and all others, CouldNotFinish.
 */
export async function day(files: readonly string[], typed: Typed, problems: Problem[]): Promise<ExitStatus> {
	const { scenario, overrides, folder } = await readInput("day", files, typed, problems);
	if (scenario === null || problems.length > 0) throw new UnusableInput(problems);

	const deliver = delivery(folder, typed);
	return deliver({ kind: "day", result: await simulate(scenario, overrides) });
}

/** Runs the replications that the scenario asks for, and again with more of them until the precision is reached. */
async function simulate(scenario: Scenario, overrides: Overrides): Promise<DayResult> {
	const { precision, draw } = overrides;
	for (let run = scenario; ; ) {
		const gathered = await runScenario(run, overrides);
		const replications = replicationsFor(gathered.projection(), precision);
		if (replications === run.replications) return dayResult(run, gathered, version(), precision, draw);
		run = { ...run, replications };
	}
}
