import * as z from "zod";
import { name, record } from "./leaf.ts";
import { type QuantityRule, quantity, refuse } from "./quantity.ts";
import { clock } from "./schema-clock.ts";
import { depth, settings } from "./schema-regimen.ts";

/** Most points of a grid, and so most values of one axis. */
export const mostPoints = 10_000;

const pressureStep: QuantityRule = {
	unit: "mmHg",
	what: "a step of pressure",
	example: "25 mmHg",
	above: "0 mmHg",
	to: "700 mmHg",
};
const timeStep: QuantityRule = {
	unit: "min",
	what: "a step of time",
	example: "30 min",
	above: "0 min",
	to: "7 d",
};
const volumeStep: QuantityRule = {
	unit: "mL",
	what: "a step of volume",
	example: "10 mL",
	above: "0 mL",
	to: "2000 mL",
};
const apart: QuantityRule = {
	unit: "min",
	what: "a duration",
	example: "30 min",
	from: "0 min",
	to: "7 d",
};

/** The values of an axis: a list, or from one to another by a step. Doubled values are refused. */
function axis(leaf: z.ZodType<number>, step: QuantityRule, what: string) {
	return z
		.union(
			[
				z
					.array(leaf, { error: `a list of ${what}` })
					.min(1, { error: `one or more ${what}` })
					.max(mostPoints, { error: `at most ${mostPoints} ${what}` }),
				record(`a range of ${what}`, {
					from: leaf,
					to: leaf,
					by: quantity(step),
				}),
			],
			{
				error: `a list of ${what}, or a range of them with from:, to: and by:`,
			},
		)
		.transform((raw, context): number[] => {
			const values = Array.isArray(raw) ? raw : spread(raw);
			if (values === null)
				return refuse(
					context,
					raw,
					`at most ${mostPoints} ${what}`,
					undefined,
					"a range of more",
				);
			if (new Set(values).size < values.length)
				return refuse(
					context,
					raw,
					`${what} that are each another`,
					undefined,
					"one of them twice",
				);
			return values;
		})
		.meta({ description: `${what} to try: a list, or a range` });
}

/** From, from + by, … to, the end included where it is met; downwards where `to` is below. */
function spread({
	from,
	to,
	by,
}: {
	readonly from: number;
	readonly to: number;
	readonly by: number;
}): number[] | null {
	const count = Math.floor(Math.abs(to - from) / by + 1e-9) + 1;
	if (count > mostPoints) return null;
	const sign = to < from ? -1 : 1;
	return Array.from({ length: count }, (_, i) => from + sign * i * by);
}

const fill = settings.fill.transform((value, context): number =>
	typeof value === "number"
		? value
		: refuse(
				context,
				value,
				'a volume such as "50 mL": a grid varies how much is filled, not whether',
			),
);

export const sweepAxes = {
	dwell: axis(settings.dwell, timeStep, "dwells"),
	suction: axis(settings.suction, timeStep, "suction periods"),
	fill: axis(fill, volumeStep, "fills"),
	depth: axis(depth, pressureStep, "depths"),
	start: axis(clock, timeStep, "clock times of the first phase"),
	apart: axis(quantity(apart), timeStep, "shifts between dressings"),
};

export type SweepAxisKey = keyof typeof sweepAxes;

/** What `sweep` varies. */
export const sweep = record("a sweep", {
	dressing: name(
		"the id of a dressing",
		"the dressing that is varied; all of them where it is left out",
	).optional(),
	dwell: sweepAxes.dwell.optional(),
	suction: sweepAxes.suction.optional(),
	fill: sweepAxes.fill.optional(),
	depth: sweepAxes.depth.optional(),
	start: sweepAxes.start.optional(),
	apart: sweepAxes.apart.optional(),
});
