import {
	axisNames,
	type Constraint,
	type MeasureName,
	measureFact,
	type SweepAsked,
	type SweepAxisName,
} from "../analysis/index.ts";
import {
	mostPoints,
	type Problem,
	readSweep,
	type Scenario,
	type SweepGrid,
} from "../scenario/index.ts";
import { nearest } from "../scenario/nearest.ts";
import type { TypedOptions } from "./options.ts";
import { quoted } from "./quoted.ts";
import { readMeasure } from "./study-options.ts";

export interface TypedSweepOptions extends TypedOptions {
	readonly dwell?: string;
	readonly suction?: string;
	readonly fill?: string;
	readonly depth?: string;
	readonly start?: string;
	readonly apart?: string;
	readonly measures?: string;
	readonly keep?: string;
	readonly efficient?: string;
	readonly curve?: string;
}

/** `2 min, 5 min` as a list, `2 min to 20 min by 2 min` as a range, as they would stand in a file. */
function asInFile(typed: string): unknown {
	const [, from, to, by] = /^(.+?) to (.+?) by (.+)$/u.exec(typed.trim()) ?? [];
	return from === undefined
		? typed.split(",").map((value) => value.trim())
		: { from: from.trim(), to: to?.trim(), by: by?.trim() };
}

/** The grid of the file with the axes of the command line in the place of its own. */
export function readGrid(
	scenario: Scenario,
	typed: TypedSweepOptions,
	problems: Problem[],
): SweepGrid {
	const written = Object.fromEntries(
		axisNames.flatMap((name) => {
			const values = typed[name];
			return values === undefined ? [] : [[name, asInFile(values)]];
		}),
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

function checkGrid(
	scenario: Scenario,
	grid: SweepGrid,
	problems: Problem[],
): void {
	const points = Object.values(grid.axes).reduce(
		(product, values) => product * values.length,
		1,
	);
	if (points < 2 || points > mostPoints)
		problems.push({
			path: "sweep",
			expected:
				points < 2
					? "a grid of two points or more: values under sweep: in the file, or options such as --dwell"
					: `a grid of at most ${mostPoints} points`,
			received: `${points === 1 ? "one point" : `${points} points`}`,
		});
	for (const { id, regimens } of scenario.dressings) {
		if (grid.dressing !== null && grid.dressing !== id) continue;
		const { fill, dwell, suction } = grid.axes;
		const varied = dwell ?? suction ?? fill;
		if (regimens[0].fillMl > 0 || varied === undefined) continue;
		if (fill !== undefined && dwell !== undefined && suction !== undefined)
			continue;
		problems.push({
			path: "sweep",
			expected: `values of fill, dwell and suction, since dressing ${id} is on suction alone`,
			received: "some of them only",
		});
	}
}

/** `nightCalls<0.5, canisterLastsShift>=0.9` */
export function readConstraints(
	typed: string | undefined,
	problems: Problem[],
): readonly Constraint[] {
	if (typed === undefined) return [];
	return typed.split(",").flatMap((part) => {
		const [, name = "", test, limit = ""] =
			/^\s*([^<>=\s]+)\s*(<=|>=|<|>)\s*(\d+(?:\.\d+)?|\.\d+)\s*$/u.exec(part) ??
			[];
		if (test !== "<" && test !== "<=" && test !== ">" && test !== ">=") {
			problems.push({
				path: "--keep",
				expected: "conditions such as nightCalls<0.5, canisterLastsShift>=0.9",
				received: quoted(part.trim()),
			});
			return [];
		}
		const measure = readMeasure("--keep", name, problems);
		return measure === null ? [] : [{ measure, test, limit: Number(limit) }];
	});
}

/** `cost,nurseMin` or, where it is not plain which way is better, `meanExudateShare:lower`. */
export function readGoals(
	typed: string | undefined,
	problems: Problem[],
): SweepAsked["efficient"] {
	if (typed === undefined)
		return [
			{ measure: "meanExudateShare", better: "lower" },
			{ measure: "nurseMin", better: "lower" },
		];
	const parts = typed.split(",").map((part) => part.trim());
	if (parts.length < 2 || parts.length > 3)
		problems.push({
			path: "--efficient",
			expected: "two or three measures",
			received: quoted(typed),
		});
	return parts.flatMap((part) => {
		const [name = "", way] = part.split(":");
		const measure = readMeasure("--efficient", name, problems);
		if (measure === null) return [];
		const better = way ?? measureFact(measure).better;
		if (better === "lower" || better === "higher") return [{ measure, better }];
		problems.push({
			path: "--efficient",
			expected: `which way is better, as ${measure}:lower or ${measure}:higher`,
			received: quoted(part),
		});
		return [];
	});
}

/** The axis of the response curve: the one asked for, else the first of three values or more. */
export function readCurve(
	typed: string | undefined,
	grid: SweepGrid,
	problems: Problem[],
): SweepAxisName | null {
	const varied = axisNames.filter((name) => (grid.axes[name]?.length ?? 0) > 1);
	if (typed === undefined)
		return varied.find((name) => (grid.axes[name]?.length ?? 0) > 2) ?? null;
	const found = varied.find((name) => name === typed);
	if (found !== undefined) return found;
	const near = nearest(typed, varied);
	problems.push({
		path: "--curve",
		expected: `an axis of two values or more, of ${varied.join(", ")}`,
		received: quoted(typed),
		...(near === undefined ? {} : { suggestion: near }),
	});
	return null;
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
		...(grid.axes.start === undefined
			? []
			: (["callsIn.handOver", "callsIn.meals", "callsIn.smallHours"] as const)),
		...(grid.axes.apart === undefined ? [] : (["callsTogether"] as const)),
	];
}
