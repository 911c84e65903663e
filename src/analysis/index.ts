/** Answers from many replications: the traced day, projections with their intervals, cautions and assumptions. */
export { blockSize, type RunPart } from "./collector.ts";
export { dayResult } from "./day.ts";
export type * from "./day-result.ts";
export { Histogram } from "./histogram.ts";
export { halfWidth, wilson } from "./interval.ts";
export {
	addTo,
	type Moments,
	mergeInto,
	noMoments,
	variance,
} from "./moments.ts";
export { mostWithin } from "./off-spells.ts";
export {
	isTotalName,
	mostReplications,
	type PrecisionTarget,
	replicationsFor,
} from "./precision.ts";
export { blockCount, ProjectionGathering } from "./projection.ts";
export { Recorder } from "./recorder.ts";
export { runBlocks } from "./run-blocks.ts";
export { totalNames } from "./totals.ts";
export { type TracedDay, traceDay } from "./trace-day.ts";
