import * as z from "zod";
import type { SweepGrid } from "../meaning/scenario.ts";
import { problemsOf } from "../reading/issues.ts";
import { list, name, record, refuse } from "../reading/leaf.ts";
import { type Found, found, type Problem } from "../reading/problem.ts";
import { type QuantityRule, quantity, rule } from "../reading/quantity.ts";
import { asMap, read, stranger } from "../reading/raw.ts";
import { clock } from "./clock.ts";
import { settings } from "./dressing/regimen.ts";

/** Most points of a grid, and so most values of one axis. */
export const mostPoints = 10_000;

const step = (unit: string, of: string, example: string, most: string) =>
	rule(unit, `a step of ${of}`, `above 0 ${unit} and up to ${most}`, example);
const pressureStep = step("mmHg", "pressure", "25 mmHg", "700 mmHg");
const timeStep = step("min", "time", "30 min", "7 d");
const volumeStep = step("mL", "volume", "10 mL", "2000 mL");

/** The values of an axis: a list, or from one to another by a step. Doubled values are refused. */
function axis(leaf: z.ZodType<number>, step: QuantityRule, what: string) {
	const range = record(`a range of ${what}`, { from: leaf, to: leaf, by: quantity(step) });
	return z
		.union([list(leaf, `a list of ${what}`, mostPoints, what, { least: `one or more ${what}` }), range], {
			error: `a list of ${what}, or a range of them with from:, to: and by:`,
		})
		.transform((raw, context): number[] => {
			const values = Array.isArray(raw) ? raw : valuesOf(raw);
			if (values === null) return refuse(context, raw, `at most ${mostPoints} ${what}`, undefined, "a range of more");
			if (new Set(values).size < values.length)
				return refuse(context, raw, `${what} that are each another`, undefined, "one of them twice");
			return values;
		})
		.describe(`${what} to try: a list, or a range`);
}

/** From, from + by, … to, the end included where it is met; downwards where `to` is below. */
function valuesOf({ from, to, by }: { readonly [key in "from" | "to" | "by"]: number }): number[] | null {
	const count = Math.floor(Math.abs(to - from) / by + 1e-9) + 1;
	if (count > mostPoints) return null;
	const sign = to < from ? -1 : 1;
	return Array.from({ length: count }, (_, i) => from + sign * i * by);
}

const fill = settings.fill.transform((value, context): number =>
	typeof value === "number"
		? value
		: refuse(context, value, 'a volume such as "50 mL": a grid varies how much is filled, not whether'),
);
const apart = quantity(rule("min", "a duration", "from 0 min to 7 d", "30 min"));

const axes = {
	dwell: axis(settings.dwell, timeStep, "dwells"),
	suction: axis(settings.suction, timeStep, "suction periods"),
	fill: axis(fill, volumeStep, "fills"),
	depth: axis(settings.depth, pressureStep, "depths"),
	start: axis(clock, timeStep, "clock times of the first phase"),
	apart: axis(apart, timeStep, "shifts between dressings"),
};

/** What `sweep` varies. */
export const sweep = record("a sweep", {
	dressing: name("the id of a dressing", "the dressing that is varied; all of them where it is left out").optional(),
	...z.strictObject(axes).partial().shape,
});

/** A grid must name a dressing that is there and have no more points than anyone would wait for. */
export function crossSweep(written: unknown, dressings: readonly { readonly id?: unknown }[]): Found[] {
	const sweep = asMap(written);
	const faults = stranger(sweep.dressing, dressings, ["sweep", "dressing"]);
	const points = Object.entries(axes)
		.map(([key, axis]) => read(axis, sweep[key])?.length ?? 1)
		.reduce((product, length) => product * length, 1);
	if (points > mostPoints) faults.push(found(["sweep"], `a grid of at most ${mostPoints} points`, `one of ${points}`));
	if (sweep.apart !== undefined && dressings.length < 2) {
		const expected = "two dressings or more, for cycles to be in step or out of step";
		faults.push(found(["sweep", "apart"], expected, "one dressing"));
	}
	return faults;
}

export function resolveSweep({ dressing, ...axes }: z.output<typeof sweep>): SweepGrid {
	const given = Object.entries(axes).filter(([, values]) => values !== undefined);
	return { dressing: dressing ?? null, axes: Object.fromEntries(given) };
}

/** Reads the axes of a grid, written as they would be under `sweep:`, for these dressings; with everything that is wrong with them. */
export function readSweep(
	data: unknown,
	dressings: readonly { readonly id: string }[],
): { readonly axes: SweepGrid["axes"]; readonly problems: readonly Problem[] } {
	const parsed = sweep.safeParse(data);
	const problems = [
		...problemsOf(parsed.error?.issues ?? [], { sweep: data }, ["sweep"]),
		...crossSweep(data, dressings),
	];
	return {
		axes: parsed.success ? resolveSweep(parsed.data).axes : {},
		problems: problems.map(({ keys: _, ...problem }) => problem),
	};
}
