import type { RestsOn } from "../../results/index.ts";
import { type Problem, type Scenario, UnusableInput } from "../../scenario/index.ts";
import { nearest } from "../../scenario/reading/nearest.ts";
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
	replicationsForTargets,
	sensitivityOf,
	sensitivityStudy,
} from "../../studies/index.ts";
import { mainMeasures } from "../../vocabulary/index.ts";
import { version } from "../files/own.ts";
import { readInput } from "../files/scenario-files.ts";
import { reader, type Typed } from "../options/options.ts";
import { type ExitStatus, refuse } from "../terminal/failure.ts";
import { quoted } from "../terminal/quoted.ts";
import type { Effort } from "../threads/run-job.ts";
import { studyRun } from "../threads/run-study.ts";
import { delivery } from "./deliver.ts";

/**
 * Runs the regimens of `compare:` on the same random numbers and writes what they differ in; with `--json` prints it instead.
 * `problems` are those of the command line. Throws UnusableInput with these and all others, CouldNotFinish.
 */
export async function compare(files: readonly string[], typed: Typed, problems: Problem[]): Promise<ExitStatus> {
	const read = reader(typed, problems);
	const measures = read("measures") ?? mainMeasures;
	const targets = read("precisionOfDifferences") ?? [];
	const wanted = read("restsOn") ?? true;
	const plain = { ...typed, precision: undefined }; // that of a day is of totals
	const { scenario, overrides, folder } = await readInput("compare", files, plain, problems);
	const arms = scenario === null ? [] : readArms(scenario, read("between") ?? null, problems);
	if (scenario === null || problems.length > 0) throw new UnusableInput(problems);

	const deliver = delivery(folder, typed);
	const sums = await runComparison(scenario, arms, targets, overrides);
	const scenarios = arms.map((arm) => arm.scenario);
	const drawn = drawnOf(scenarios, sums.arms[0].count, overrides.draw);
	const result = compareResult(scenario, arms, sums, {
		drawn,
		measures,
		targets,
		restsOn: wanted ? await whatItRestsOn(arms, overrides) : null,
		version: version(),
	});
	const drawings = () => compareDrawings(arms, drawn.replication, version());
	return deliver({ kind: "compare", result, drawings });
}

/** Runs the replications that the scenario asks for; with targets, on in batches until every paired difference is as precise, or no more are allowed. */
async function runComparison(
	scenario: Scenario,
	arms: readonly Arm[],
	targets: readonly MeasureTarget[],
	effort: Effort,
): Promise<GroupSums> {
	const open = targets.length > 0;
	const endless = ({ name, scenario: arm }: Arm) => ({ name, scenario: { ...arm, replications: mostReplications } });
	const run = studyRun(comparisonStudy(open ? arms.map(endless) : arms), effort);
	for (let blocks = blockCount(scenario); ; ) {
		const [sums] = await run(blocks);
		if (!open) return sums;
		const replications = replicationsForTargets(comparisonPrecision(scenario, arms, sums, targets), sums.arms[0].count);
		const needed = blockCount({ ...scenario, replications });
		if (needed <= blocks) return sums;
		blocks = needed;
	}
}

async function whatItRestsOn(arms: readonly Arm[], effort: Effort): Promise<RestsOn> {
	const study = sensitivityStudy(arms);
	const groups = await studyRun(study.study, effort)(blockCount(study.study.arms[0]));
	return sensitivityOf(arms, study, groups);
}

/** The regimens that are compared: all of the file, or those of `--between`, in that order. */
function readArms(scenario: Scenario, asked: readonly string[] | null, problems: Problem[]): Arm[] {
	const names = scenario.compare.map((patch) => patch.name);
	const known = `names of regimens under compare: (${names.join(", ")})`;
	for (const name of asked ?? [])
		if (!names.includes(name)) refuse(problems, "--between", known, quoted(name), nearest(name, names));
	const arms = armsOf(scenario, asked === null ? null : [...new Set(asked)]);
	if (arms.length < 2 && problems.length === 0)
		refuse(
			problems,
			asked === null ? "compare" : "--between",
			"two regimens or more to set against each other (an empty item, such as `now: {}`, is the scenario's own)",
			arms.length === 0 ? "none" : `${quoted(arms[0].name)} alone`,
		);
	return arms;
}
