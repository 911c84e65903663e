import type { SweepPoint, SweepResult } from "../../results/index.ts";
import { type AxisName, type MeasureName, measuresAsRead } from "../../vocabulary/index.ts";
import { decimalsFor, plainNumber } from "../../words/index.ts";

/** Places of the points in the efficient set. */
export const efficientPlaces = (result: SweepResult): ReadonlySet<number> => new Set(result.efficient?.points ?? []);

/** Every measure that the points carry. */
export const carriedMeasures = (result: SweepResult): MeasureName[] =>
	measuresAsRead.filter((measure) =>
		[...result.points, ...result.marks].some((one) => one.measures[measure] !== undefined),
	);

/** What is asked of a grid on which the beginning is varied, beside what the reader asked for. */
export const clockMeasures: { readonly [N in AxisName]?: readonly MeasureName[] } = {
	start: ["callsIn.handOver", "callsIn.meals", "callsIn.smallHours"],
	apart: ["callsTogether"],
};

/**
 * The measures of a grid's charts and sentences: what its clock axes ask for, then what the reader asked for; apart those
 * that are `alike` at every point, going by their interval.
 */
export function shownMeasures(result: SweepResult) {
	const carried = carriedMeasures(result);
	const asked = new Set([...result.axes.flatMap(({ name }) => clockMeasures[name] ?? []), ...result.measures]);
	const shown = [...asked].filter((measure) => carried.includes(measure));
	const alike = shown.filter((measure) => isAlike(result, measure));
	return { varying: shown.filter((measure) => !alike.includes(measure)), alike };
}

/** Whether all points are written alike in a measure. */
function isAlike({ points }: SweepResult, measure: MeasureName): boolean {
	const written = points.flatMap((point) => {
		const value = point.measures[measure];
		return value === undefined ? [] : [plainNumber(value.mean, decimalsFor(measure, value.halfWidth95))];
	});
	return new Set(written).size < 2;
}

/** Points along one axis, every other axis at the value nearest to the scenario's own. */
export function pointsAlong(result: SweepResult, axis: AxisName): SweepPoint[] {
	const nearest = result.axes.map(({ values, current }) =>
		values.reduce((best, value) => (Math.abs(value - current) < Math.abs(best - current) ? value : best)),
	);
	return result.points.filter(({ at }) =>
		result.axes.every(({ name }, index) => name === axis || at[index] === nearest[index]),
	);
}
