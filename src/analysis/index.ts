/** Answers from many replications: the traced day, projections with their intervals, cautions and assumptions. */
export { blockSize, type RunPart } from "./collector.ts";
export { dayResult } from "./day.ts";
export type * from "./day-result.ts";
export {
	dailyDemand,
	exposureDays,
	findRules,
	orderRules,
} from "./find-rules.ts";
export { Histogram } from "./histogram.ts";
export { halfWidth, wilson } from "./interval.ts";
export { mergedPart } from "./merged-part.ts";
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
export { runBlocks } from "./run-blocks.ts";
export { tryShelf } from "./shelf-trial.ts";
export { supplyResult } from "./supply.ts";
export {
	runWardBlocks,
	type SupplyPart,
	wardBlock,
	wardBlocks,
} from "./supply-collector.ts";
export { SupplyGathering } from "./supply-gathering.ts";
export type * from "./supply-result.ts";
export { Tally } from "./tally.ts";
export { reorderPoint, safetyStock } from "./text-book.ts";
export { totalNames } from "./totals.ts";
export { type TracedDay, traceDay } from "./trace-day.ts";
