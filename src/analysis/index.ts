/** Answers from many replications: the traced day, projections with their intervals, regimens set against each other, cautions and assumptions. */
export { type Arm, armsOf } from "./arms.ts";
export { blockSize } from "./collector.ts";
export { compareDrawings } from "./compare-drawings.ts";
export type * from "./compare-result.ts";
export {
	compareResult,
	comparisonPrecision,
	comparisonStudy,
	type MeasureTarget,
} from "./comparison.ts";
export { dayResult } from "./day.ts";
export type * from "./day-result.ts";
export { drawnOf } from "./drawn.ts";
export { efficientPoints } from "./efficient.ts";
export {
	type Found,
	findRules,
	orderRules,
	RuleSearch,
} from "./find-rules.ts";
export { Histogram } from "./histogram.ts";
export {
	halfWidth,
	meanInterval,
	wilson,
} from "./interval.ts";
export { type BlockTask, type Job, type JobKinds, workOn } from "./job.ts";
export { exposureDays } from "./lead-time.ts";
export {
	isMeasureName,
	type MeasureName,
	mainMeasures,
	measureFact,
	measureNames,
} from "./measures.ts";
export { mergedPart } from "./merged-part.ts";
export {
	addTo,
	type Moments,
	mergeInto,
	noMoments,
	variance,
} from "./moments.ts";
export { mostWithin } from "./off-spells.ts";
export { foundFits, partFits } from "./part-fits.ts";
export {
	isTotalName,
	mostReplications,
	type PrecisionTarget,
	replicationsFor,
	replicationsForTargets,
} from "./precision.ts";
export { blockCount, ProjectionGathering } from "./projection.ts";
export { Recorder } from "./recorder.ts";
export { restsOn, restsOnStudy } from "./rests-on.ts";
export { searchBlocks } from "./rule-part.ts";
export { runBlocks } from "./run-blocks.ts";
export { tryShelf } from "./shelf-trial.ts";
export {
	type Study,
	type StudyPart,
	StudyRunner,
	type StudyTask,
} from "./study.ts";
export {
	type GroupSums,
	StudyGathering,
	studyTasks,
} from "./study-gathering.ts";
export { supplyResult } from "./supply.ts";
export {
	runWardBlocks,
	type SupplyPart,
	wardBlock,
	wardBlocks,
} from "./supply-collector.ts";
export { SupplyGathering } from "./supply-gathering.ts";
export type * from "./supply-result.ts";
export {
	along,
	type Constraint,
	clockOfPoint,
	type SweepAsked,
	sweepResult,
} from "./sweep.ts";
export {
	axisNames,
	type SweepPlan,
	sweepPlan,
	sweepStudy,
} from "./sweep-grid.ts";
export type * from "./sweep-result.ts";
export { Tally } from "./tally.ts";
export { reorderPoint, safetyStock } from "./text-book.ts";
export { totalNames } from "./totals.ts";
export { type TracedDay, traceDay } from "./trace-day.ts";
