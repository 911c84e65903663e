import type { Caution, PrecisionReached, Projection } from "../../results/index.ts";
import type { TotalName } from "../../vocabulary/index.ts";

/** Half-width that the mean of a total is to reach. */
export interface PrecisionTarget {
	readonly total: TotalName;
	readonly halfWidth: number;
}

/** Replications at which a run for precision stops, reached or not. */
export const mostReplications = 100_000;

/** Spare, so that the next run is likely to be the last. */
const spare = 1.1;
/** How many times too wide an interval counts that cannot be given yet: twice as many replications are tried. */
const notYet = Math.SQRT2;

/**
 * How many replications to run next: as many as have been run where every target is met in every dressing, else what
 * the half-widths ask for, twice as many where there is none yet; `mostReplications` at the most.
 */
export function replicationsFor(projection: Projection, targets: readonly PrecisionTarget[]): number {
	return neededFor(
		projection.replications,
		reached(projection, targets).map(({ half, target }) =>
			half === Number.POSITIVE_INFINITY ? notYet : half / target.halfWidth,
		),
	);
}

/** Replications after which half-widths that are so many times too wide should be met: they shrink with the root of the number. */
function neededFor(replications: number, ratios: readonly number[]): number {
	const widest = Math.max(0, ...ratios);
	if (widest <= 1) return replications;
	const needed = Math.ceil(replications * widest * widest * spare);
	return Math.max(replications, Math.min(needed, mostReplications));
}

/** A caution for every target that was not met. */
export function precisionCautions(projection: Projection, targets: readonly PrecisionTarget[]): Caution[] {
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
export function replicationsForTargets(precision: readonly PrecisionReached[], replications: number): number {
	return neededFor(
		replications,
		precision.map(({ halfWidth, target }) => (halfWidth === null ? notYet : halfWidth / target)),
	);
}

/** A caution for every paired difference that is not as precise as was asked for. */
export function targetCautions(precision: readonly PrecisionReached[], replications: number): Caution[] {
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
		targets.map((target) => ({ id, half: totals[target.total].halfWidth95 ?? Number.POSITIVE_INFINITY, target })),
	);
}
