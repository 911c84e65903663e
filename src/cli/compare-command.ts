import {
	type Arm,
	armsOf,
	blockCount,
	compareDrawings,
	compareResult,
	comparisonPrecision,
	comparisonStudy,
	drawnOf,
	type GroupSums,
	type MeasureTarget,
	mostReplications,
	type RestsOn,
	replicationsForTargets,
	restsOn,
	restsOnStudy,
} from "../analysis/index.ts";
import {
	type Problem,
	type Scenario,
	UnusableInput,
} from "../scenario/index.ts";
import { nearest } from "../scenario/nearest.ts";
import { deliver } from "./deliver.ts";
import type { ExitStatus } from "./failure.ts";
import { readInput } from "./input.ts";
import type { TypedOptions } from "./options.ts";
import { quoted } from "./quoted.ts";
import { prepareReport } from "./report-thread.ts";
import { StudyRun } from "./run-study.ts";
import { readMeasures, readTargets } from "./study-options.ts";
import { version } from "./version.ts";

export interface TypedCompareOptions extends TypedOptions {
	readonly between?: string;
	readonly measures?: string;
	readonly restsOn?: string;
}

/**
 * Runs the regimens of `compare:` on the same random numbers and writes what they differ in; with `--json` prints it instead.
 * `problems` are those of the command line. Throws UnusableInput with these and all others, CouldNotFinish.
 */
export async function compare(
	files: readonly string[],
	{ precision, ...typed }: TypedCompareOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	const measures = readMeasures("--measures", typed.measures, problems);
	const targets = readTargets(precision, problems);
	const wanted = onOff("--rests-on", typed.restsOn, problems);
	const { scenario, overrides, folder } = await readInput(
		"compare",
		files,
		typed,
		problems,
	);
	const arms =
		scenario === null ? [] : readArms(scenario, typed.between, problems);
	if (scenario === null || problems.length > 0)
		throw new UnusableInput(problems);

	const quiet = typed.quiet === true;
	const { workers } = overrides;
	const writer = prepareReport(folder !== null);
	const sums = await runComparison(scenario, arms, targets, workers, quiet);
	const drawn = drawnOf(
		arms.map((arm) => arm.scenario),
		sums.arms[0].count,
		overrides.draw,
	);
	const result = compareResult(scenario, arms, sums, {
		drawn,
		measures,
		targets,
		restsOn: wanted ? await whatItRestsOn(arms, workers, quiet) : null,
		version: version(),
	});
	const { compareJson } = await import("../report/compare-json.ts");
	await deliver(
		folder,
		{
			files: () =>
				writer({
					kind: "compare",
					result,
					drawings: compareDrawings(arms, drawn.replication, version()),
				}),
			json: () => compareJson(result),
			spoken: async () =>
				(await import("../report/spoken.ts")).spokenComparison(result),
		},
		typed,
	);
	return 0;
}

/** Runs the replications that the scenario asks for; with targets, on in batches until every paired difference is as precise, or no more are allowed. */
async function runComparison(
	scenario: Scenario,
	arms: readonly Arm[],
	targets: readonly MeasureTarget[],
	workers: number | undefined,
	quiet: boolean,
): Promise<GroupSums> {
	const open = targets.length > 0;
	const run = new StudyRun(
		comparisonStudy(
			open
				? arms.map(({ name, scenario: arm }) => ({
						name,
						scenario: { ...arm, replications: mostReplications },
					}))
				: arms,
		),
		workers,
		quiet,
	);
	for (let blocks = blockCount(scenario); ; ) {
		const [sums] = await run.to(blocks);
		if (!open) return sums;
		const replications = replicationsForTargets(
			comparisonPrecision(scenario, arms, sums, targets),
			sums.arms[0].count,
		);
		const needed = blockCount({ ...scenario, replications });
		if (needed <= blocks) return sums;
		blocks = needed;
	}
}

async function whatItRestsOn(
	arms: readonly Arm[],
	workers: number | undefined,
	quiet: boolean,
): Promise<RestsOn> {
	const study = restsOnStudy(arms);
	const run = new StudyRun(study.study, workers, quiet);
	return restsOn(arms, study, await run.to(blockCount(study.study.arms[0])));
}

/** The regimens that are compared: all of the file, or those of `--between`, in that order. */
function readArms(
	scenario: Scenario,
	between: string | undefined,
	problems: Problem[],
): Arm[] {
	const names = scenario.compare.map((patch) => patch.name);
	const asked = between?.split(",").map((name) => name.trim()) ?? null;
	for (const name of asked ?? []) {
		if (names.includes(name)) continue;
		const near = nearest(name, names);
		problems.push({
			path: "--between",
			expected: `names of regimens under compare: (${names.join(", ")})`,
			received: quoted(name),
			...(near === undefined ? {} : { suggestion: near }),
		});
	}
	const arms = armsOf(scenario, asked === null ? null : [...new Set(asked)]);
	if (arms.length < 2 && problems.length === 0)
		problems.push({
			path: asked === null ? "compare" : "--between",
			expected:
				"two regimens or more to set against each other (an empty item, such as `now: {}`, is the scenario's own)",
			received: arms.length === 0 ? "none" : `${quoted(arms[0].name)} alone`,
		});
	return arms;
}

function onOff(
	option: string,
	typed: string | undefined,
	problems: Problem[],
): boolean {
	if (typed !== undefined && typed !== "on" && typed !== "off")
		problems.push({
			path: option,
			expected: "on or off",
			received: quoted(typed),
		});
	return typed !== "off";
}
