import { basename, join } from "node:path";
import {
	type DayResult,
	dayResult,
	replicationsFor,
} from "../analysis/index.ts";
import {
	checkScenario,
	type Problem,
	type Scenario,
	UnusableInput,
} from "../scenario/index.ts";
import type { ExitStatus } from "./failure.ts";
import {
	type Overrides,
	override,
	readOptions,
	type TypedOptions,
} from "./options.ts";
import { fileName } from "./quoted.ts";
import { readScenarioFile } from "./read-file.ts";
import { checkFolder } from "./report-folder.ts";
import { prepareReport } from "./report-thread.ts";
import { runScenario } from "./run-scenario.ts";
import { uninterrupted } from "./uninterrupted.ts";
import { version } from "./version.ts";
import { writeFolder } from "./write-folder.ts";

/**
 * Simulates the day and its replications, and writes the report folder; with `--json` prints the result instead.
 * `problems` are those of the command line. Throws UnusableInput with these and all others, CouldNotFinish.
 */
export async function day(
	files: readonly string[],
	typed: TypedOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	const overrides = readOptions(typed, problems);
	const [file] = files;
	if (files.length !== 1)
		problems.push({
			path: "day",
			expected: "one scenario file",
			received:
				file === undefined
					? "nothing"
					: `${files.length}: ${files.map(fileName).join(", ")}`,
		});
	const scenario =
		file === undefined ? null : readScenario(file, overrides, problems);
	const folder =
		typed.out ?? (typed.json === true ? null : join("out", nameOf(file ?? "")));
	if (folder !== null)
		await uninterrupted(() =>
			checkFolder(
				folder,
				scenario?.title ?? null,
				typed.force === true,
				problems,
			),
		);
	if (scenario === null || problems.length > 0)
		throw new UnusableInput(problems);

	const quiet = typed.quiet === true;
	const writer = prepareReport(folder !== null);
	const result = await simulate(scenario, overrides, quiet);
	const { dayJson } = await import("../report/json.ts");
	if (folder !== null) {
		const report = await writer(result);
		await uninterrupted(() => writeFolder(folder, report));
	}
	if (typed.json === true) process.stdout.write(dayJson(result));
	else if (!quiet && folder !== null)
		process.stdout.write(
			`The report is in ${fileName(join(folder, "report.html"))}\n`,
		);
	return 0;
}

/** Runs the replications that the scenario asks for, and again with more of them until the precision is reached. */
async function simulate(
	scenario: Scenario,
	{ workers, precision }: Overrides,
	quiet: boolean,
): Promise<DayResult> {
	for (let run = scenario; ; ) {
		const gathered = await runScenario(run, workers, quiet);
		const replications = replicationsFor(gathered.projection(), precision);
		if (replications === run.replications)
			return dayResult(run, gathered, version(), precision);
		run = { ...run, replications };
	}
}

/** The scenario of a file with the options laid over it; null where there are problems, which are added. */
function readScenario(
	file: string,
	overrides: Overrides,
	problems: Problem[],
): Scenario | null {
	const read = readScenarioFile(file);
	const checked =
		"problem" in read
			? { scenario: null, problems: [read.problem] }
			: checkScenario(read.text);
	problems.push(
		...checked.problems.map((problem) =>
			problem.path === "" ? { ...problem, path: fileName(file) } : problem,
		),
	);
	return checked.scenario === null
		? null
		: override(checked.scenario, overrides, problems);
}

/** The name of a report's folder: the file's own without its ending. */
function nameOf(file: string): string {
	const name = basename(file).replace(/\.(ya?ml|json)$/i, "");
	return ["", ".", "..", "-"].includes(name) ? "day" : name;
}
