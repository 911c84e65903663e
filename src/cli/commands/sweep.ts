import type { SweepClock } from "../../results/index.ts";
import { type Problem, UnusableInput } from "../../scenario/index.ts";
import type { SweepAsked, SweepPlan } from "../../studies/index.ts";
import { along, blockCount, clockOfPoint, sweepPlan, sweepResult, sweepStudy } from "../../studies/index.ts";
import { version } from "../files/own.ts";
import { readInput } from "../files/scenario-files.ts";
import { Unfinished } from "../files/unfinished.ts";
import { stopSignals } from "../files/uninterrupted.ts";
import { readCurve, readGrid, usualMeasures } from "../options/grid.ts";
import { reader, type Typed } from "../options/options.ts";
import type { ExitStatus } from "../terminal/failure.ts";
import type { Effort } from "../threads/run-job.ts";
import { runScenario } from "../threads/run-scenario.ts";
import { studyRun } from "../threads/run-study.ts";
import { delivery } from "./deliver.ts";

/**
 * Runs a grid of regimens on the same random numbers and maps what each gives; with `--json` prints it instead. Goes on where
 * an earlier run of the same sweep was stopped. `problems` are those of the command line. Throws UnusableInput with these
 * and all others, CouldNotFinish.
 */
export async function sweep(files: readonly string[], typed: Typed, problems: Problem[]): Promise<ExitStatus> {
	const read = reader(typed, problems);
	const constraints = read("keep") ?? [];
	const efficient = read("efficient") ?? usualGoals;
	const asked = read("measures");
	const { scenario, overrides, folder } = await readInput("sweep", files, typed, problems);
	const grid = scenario === null ? null : readGrid(scenario, typed, problems);
	const curve = grid === null ? null : readCurve(read("curve"), grid, problems);
	if (scenario === null || grid === null || problems.length > 0) throw new UnusableInput(problems);

	const deliver = delivery(folder, typed);
	const plan = sweepPlan(scenario, grid);
	const study = sweepStudy(plan);
	const unfinished = folder === null ? null : new Unfinished(folder, study, version());
	const stopTelling = unfinished === null ? () => {} : tellHowToGoOn();
	const groups = await studyRun(study, overrides)(blockCount(scenario), unfinished?.parts, (part) =>
		unfinished?.note(part),
	);
	const clocks = await clocksOf(plan, overrides);
	stopTelling();
	const result = sweepResult(plan, groups, clocks, {
		measures: asked ?? usualMeasures(grid),
		constraints,
		efficient,
		curve,
		version: version(),
	});
	const status = await deliver({ kind: "sweep", result });
	unfinished?.remove();
	return status;
}

/** What is traded off where the reader asked for nothing. */
const usualGoals: SweepAsked["efficient"] = [
	{ measure: "meanExudateShare", better: "lower" },
	{ measure: "nurseMin", better: "lower" },
];

/** When canisters and alarms are likely, for each clock time of the first phase. */
async function clocksOf(plan: SweepPlan, effort: Effort): Promise<ReadonlyMap<number, SweepClock>> {
	const clocks = new Map<number, SweepClock>();
	if (!plan.axes.some(({ name }) => name === "start")) return clocks;
	for (const point of along(plan, "start")) {
		const { scenario } = plan.points[point];
		const { dressings } = (await runScenario(scenario, effort)).projection();
		clocks.set(point, clockOfPoint(dressings, plan.dressing));
	}
	return clocks;
}

/**
 * An interrupt says that nothing is lost, and then has its way; a second one on its heels does not cut the sentence off.
 * Returns the function that ends this.
 */
function tellHowToGoOn(): () => void {
	const stop = () => {
		for (const signal of stopSignals) process.off(signal, tell);
	};
	const tell = (signal: NodeJS.Signals) => {
		process.stderr.write("\nslackwater: stopped. What is finished is kept: the same command goes on from there.\n");
		stop();
		process.kill(process.pid, signal);
	};
	for (const signal of stopSignals) process.on(signal, tell);
	return stop;
}
