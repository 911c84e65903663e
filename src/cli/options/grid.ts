import { mostPoints, type Problem, readSweep, type Scenario, type SweepGrid } from "../../scenario/index.ts";
import { nearest } from "../../scenario/reading/nearest.ts";
import { type AxisName, axisNames, type MeasureName } from "../../vocabulary/index.ts";
import { refuse } from "../terminal/failure.ts";
import { quoted } from "../terminal/quoted.ts";
import { reader, type Typed } from "./options.ts";

/** The grid of the file with the axes of the command line in the place of its own. */
export function readGrid(scenario: Scenario, typed: Typed, problems: Problem[]): SweepGrid {
	const axis = reader(typed, problems);
	const written = Object.fromEntries(
		axisNames.flatMap((name) => (typed[name] === undefined ? [] : [[name, axis(name)]])),
	);
	const read = readSweep(written, scenario.dressings);
	problems.push(
		...read.problems.map((problem) => ({
			...problem,
			path: problem.path.replace(/^sweep\.?/u, "--").replace(/^--$/u, "sweep"),
		})),
	);
	const grid: SweepGrid = {
		dressing: scenario.sweep?.dressing ?? null,
		axes: { ...scenario.sweep?.axes, ...read.axes },
	};
	if (read.problems.length === 0) checkGrid(scenario, grid, problems);
	return grid;
}

function checkGrid(scenario: Scenario, grid: SweepGrid, problems: Problem[]): void {
	const points = Object.values(grid.axes).reduce((product, values) => product * values.length, 1);
	const more = "a grid of two points or more: values under sweep: in the file, or options such as --dwell";
	if (points < 2) refuse(problems, "sweep", more, points === 1 ? "one point" : `${points} points`);
	if (points > mostPoints) refuse(problems, "sweep", `a grid of at most ${mostPoints} points`, `${points} points`);
	for (const { id, regimens } of scenario.dressings) {
		if (grid.dressing !== null && grid.dressing !== id) continue;
		const { fill, dwell, suction } = grid.axes;
		const varied = dwell ?? suction ?? fill;
		if (regimens[0].fillMl > 0 || varied === undefined) continue;
		if (fill !== undefined && dwell !== undefined && suction !== undefined) continue;
		const all = `values of fill, dwell and suction, since dressing ${id} is on suction alone`;
		refuse(problems, "sweep", all, "some of them only");
	}
}

/** The axis of the response curve: the one asked for, else the first of three values or more. */
export function readCurve(typed: string | undefined, grid: SweepGrid, problems: Problem[]): AxisName | null {
	const varied = axisNames.filter((name) => (grid.axes[name]?.length ?? 0) > 1);
	if (typed === undefined) return varied.find((name) => (grid.axes[name]?.length ?? 0) > 2) ?? null;
	const found = varied.find((name) => name === typed);
	const expected = `an axis of two values or more, of ${varied.join(", ")}`;
	if (found === undefined) refuse(problems, "--curve", expected, quoted(typed), nearest(typed, varied));
	return found ?? null;
}

/** What is mapped where the reader asked for nothing. */
export function usualMeasures(grid: SweepGrid): readonly MeasureName[] {
	return [
		"washes",
		"meanExudateShare",
		"wetMin",
		"instilledMl",
		"canisterChanges",
		"breaches",
		"alarms",
		"nightCalls",
		"nurseMin",
		"cost",
		...(grid.axes.start === undefined ? [] : (["callsIn.handOver", "callsIn.meals", "callsIn.smallHours"] as const)),
		...(grid.axes.apart === undefined ? [] : (["callsTogether"] as const)),
	];
}
