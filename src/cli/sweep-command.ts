import {
	along,
	blockCount,
	clockOfPoint,
	type SweepClock,
	type SweepPlan,
	sweepPlan,
	sweepResult,
	sweepStudy,
} from "../analysis/index.ts";
import { type Problem, UnusableInput } from "../scenario/index.ts";
import { deliver } from "./deliver.ts";
import type { ExitStatus } from "./failure.ts";
import { readInput } from "./input.ts";
import { prepareReport } from "./report-thread.ts";
import { runScenario } from "./run-scenario.ts";
import { StudyRun } from "./run-study.ts";
import { readMeasures } from "./study-options.ts";
import {
	readConstraints,
	readCurve,
	readGoals,
	readGrid,
	type TypedSweepOptions,
	usualMeasures,
} from "./sweep-options.ts";
import { Unfinished } from "./unfinished.ts";
import { version } from "./version.ts";

/**
 * Runs a grid of regimens on the same random numbers and maps what each gives; with `--json` prints it instead. Goes on where
 * an earlier run of the same sweep was stopped. `problems` are those of the command line. Throws UnusableInput with these
 * and all others, CouldNotFinish.
 */
export async function sweep(
	files: readonly string[],
	typed: TypedSweepOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	const constraints = readConstraints(typed.keep, problems);
	const efficient = readGoals(typed.efficient, problems);
	const asked =
		typed.measures === undefined
			? null
			: readMeasures("--measures", typed.measures, problems);
	const { scenario, overrides, folder } = await readInput(
		"sweep",
		files,
		typed,
		problems,
	);
	const grid = scenario === null ? null : readGrid(scenario, typed, problems);
	const curve = grid === null ? null : readCurve(typed.curve, grid, problems);
	if (scenario === null || grid === null || problems.length > 0)
		throw new UnusableInput(problems);

	const quiet = typed.quiet === true;
	const { workers } = overrides;
	const writer = prepareReport(folder !== null);
	const plan = sweepPlan(scenario, grid);
	const study = sweepStudy(plan);
	const unfinished =
		folder === null ? null : new Unfinished(folder, study, version());
	const stopTelling = unfinished === null ? () => {} : tellHowToGoOn();
	const groups = await new StudyRun(study, workers, quiet).to(
		blockCount(scenario),
		unfinished?.parts,
		(part) => unfinished?.note(part),
	);
	const clocks = await clocksOf(plan, workers, quiet);
	stopTelling();
	const result = sweepResult(plan, groups, clocks, {
		measures: asked ?? usualMeasures(grid),
		constraints,
		efficient,
		curve,
		version: version(),
	});
	const { sweepJson } = await import("../report/sweep-json.ts");
	await deliver(
		folder,
		{
			files: () => writer({ kind: "sweep", result }),
			json: () => sweepJson(result),
			spoken: async () =>
				(await import("../report/spoken.ts")).spokenSweep(result),
		},
		typed,
	);
	unfinished?.remove();
	return 0;
}

/** When canisters and alarms are likely, for each clock time of the first phase. */
async function clocksOf(
	plan: SweepPlan,
	workers: number | undefined,
	quiet: boolean,
): Promise<ReadonlyMap<number, SweepClock>> {
	const clocks = new Map<number, SweepClock>();
	if (!plan.axes.some(({ name }) => name === "start")) return clocks;
	for (const point of along(plan, "start")) {
		const { scenario } = plan.points[point];
		const gathered = await runScenario(scenario, workers, quiet);
		const { dressings } = gathered.projection();
		clocks.set(point, clockOfPoint(dressings, plan.dressing));
	}
	return clocks;
}

/**
 * An interrupt says that nothing is lost, and then has its way; a second one on its heels does not cut the sentence off.
 * Returns the function that ends this.
 */
function tellHowToGoOn(): () => void {
	const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;
	const stop = () => {
		for (const signal of signals) process.off(signal, tell);
	};
	const tell = (signal: NodeJS.Signals) => {
		process.stderr.write(
			"\nslackwater: stopped. What is finished is kept: the same command goes on from there.\n",
		);
		stop();
		process.kill(process.pid, signal);
	};
	for (const signal of signals) process.on(signal, tell);
	return stop;
}
