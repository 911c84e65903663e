import type { PrecisionReached } from "./compare-result.ts";
import type { Caution, Projection, TotalName } from "./day-result.ts";
import { totalNames } from "./totals.ts";

/** Half-width that the mean of a total is to reach. */
export interface PrecisionTarget {
	readonly total: TotalName;
	readonly halfWidth: number;
}

/** Replications at which a run for precision stops, reached or not. */
export const mostReplications = 100_000;

/** Spare, so that the next run is likely to be the last. */
const spare = 1.1;

export function isTotalName(name: string): name is TotalName {
	return (totalNames as readonly string[]).includes(name);
}

/**
 * How many replications to run next: as many as have been run where every target is met in every dressing, else what
 * the half-widths ask for, since they shrink with the root of the number; `mostReplications` at the most.
 */
export function replicationsFor(
	projection: Projection,
	targets: readonly PrecisionTarget[],
): number {
	const { replications } = projection;
	let needed = replications;
	for (const { half, target } of reached(projection, targets)) {
		if (half <= target.halfWidth) continue;
		const ratio = half / target.halfWidth;
		needed = Math.max(needed, Math.ceil(replications * ratio * ratio * spare));
	}
	return Math.max(replications, Math.min(needed, mostReplications));
}

/** A caution for every target that was not met. */
export function precisionCautions(
	projection: Projection,
	targets: readonly PrecisionTarget[],
): Caution[] {
	return reached(projection, targets)
		.filter(({ half, target }) => half > target.halfWidth)
		.map(({ id, half, target }) => ({
			code: "precision-not-reached",
			text: `After ${projection.replications} replications the half-width of ${target.total} is ${Number(half.toPrecision(3))}, not the ${target.halfWidth} asked for.`,
			dressing: id,
		}));
}

/**
 * How many replications to run on to until paired differences reach their targets: as many as have been run where all do,
 * twice as many where an interval cannot be given yet; `mostReplications` at the most.
 */
export function replicationsForTargets(
	precision: readonly PrecisionReached[],
	replications: number,
): number {
	let needed = replications;
	for (const { halfWidth, target, reached: done } of precision) {
		if (done) continue;
		const ratio = halfWidth === null ? Math.SQRT2 : halfWidth / target;
		needed = Math.max(needed, Math.ceil(replications * ratio * ratio * spare));
	}
	return Math.max(replications, Math.min(needed, mostReplications));
}

/** A caution for every paired difference that is not as precise as was asked for. */
export function targetCautions(
	precision: readonly PrecisionReached[],
	replications: number,
): Caution[] {
	return precision
		.filter((one) => !one.reached)
		.map(({ a, b, dressing, measure, target, halfWidth }) => ({
			code: "precision-not-reached",
			text: `After ${replications} replications the difference of ${a} and ${b} in ${measure} is ${halfWidth === null ? "too rare for an interval" : `known to ${Number(halfWidth.toPrecision(3))}`}, not to the ${target} asked for.`,
			dressing,
		}));
}

function reached(
	projection: Projection,
	targets: readonly PrecisionTarget[],
): { id: string; half: number; target: PrecisionTarget }[] {
	return projection.dressings.flatMap(({ id, totals }) =>
		targets.map((target) => ({
			id,
			half: totals[target.total].halfWidth95 ?? Number.POSITIVE_INFINITY,
			target,
		})),
	);
}
