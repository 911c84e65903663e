import {
	type DayResult,
	dayResult,
	replicationsFor,
} from "../analysis/index.ts";
import {
	type Problem,
	type Scenario,
	UnusableInput,
} from "../scenario/index.ts";
import { deliver } from "./deliver.ts";
import type { ExitStatus } from "./failure.ts";
import { readInput } from "./input.ts";
import type { Overrides, TypedOptions } from "./options.ts";
import { prepareReport } from "./report-thread.ts";
import { runScenario } from "./run-scenario.ts";
import { version } from "./version.ts";

/**
 * Simulates the day and its replications, and writes the report folder; with `--json` prints the result instead.
 * `problems` are those of the command line. Throws UnusableInput with these and all others, CouldNotFinish.
 */
export async function day(
	files: readonly string[],
	typed: TypedOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	const { scenario, overrides, folder } = await readInput(
		"day",
		files,
		typed,
		problems,
	);
	if (scenario === null || problems.length > 0)
		throw new UnusableInput(problems);

	const quiet = typed.quiet === true;
	const writer = prepareReport(folder !== null);
	const result = await simulate(scenario, overrides, quiet);
	const { dayJson } = await import("../report/json.ts");
	await deliver(
		folder,
		{
			files: () => writer({ kind: "day", result }),
			json: () => dayJson(result),
			spoken: async () =>
				(await import("../report/spoken.ts")).spokenDay(result),
		},
		typed,
	);
	return 0;
}

/** Runs the replications that the scenario asks for, and again with more of them until the precision is reached. */
async function simulate(
	scenario: Scenario,
	{ workers, precision, draw }: Overrides,
	quiet: boolean,
): Promise<DayResult> {
	for (let run = scenario; ; ) {
		const gathered = await runScenario(run, workers, quiet);
		const replications = replicationsFor(gathered.projection(), precision);
		if (replications === run.replications)
			return dayResult(run, gathered, version(), precision, draw);
		run = { ...run, replications };
	}
}
