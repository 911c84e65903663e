/** Studies: what is asked of a day, a comparison, a sweep or a ward, what is run for it, and what comes out. */
export { type Arm, armsOf } from "./compare/arms.ts";
export { compareResult, comparisonPrecision, comparisonStudy, type MeasureTarget } from "./compare/comparison.ts";
export { compareDrawings } from "./compare/drawings.ts";
export { type GroupSums, StudyGathering, studyTasks } from "./compare/gathering.ts";
export { sensitivityOf, sensitivityStudy } from "./compare/sensitivity.ts";
export { type Study, type StudyPart, StudyRunner, type StudyTask } from "./compare/study.ts";
export { blockCount, blockSize, runBlocks } from "./day/collector.ts";
export { dayResult } from "./day/day.ts";
export { drawnOf } from "./day/drawn.ts";
export { ProjectionGathering } from "./day/projection.ts";
export { type BlockTask, type Job, type JobKinds, workOn } from "./job.ts";
export {
	mostReplications,
	type PrecisionTarget,
	replicationsFor,
	replicationsForTargets,
} from "./kit/precision.ts";
export { foundFits, partFits } from "./supply/part-fits.ts";
export { type Found, findRules, orderRules, RuleSearch } from "./supply/rules/find-rules.ts";
export { searchBlocks } from "./supply/rules/rule-part.ts";
export { protectionDays } from "./supply/rules/rule-plan.ts";
export { tryShelf } from "./supply/rules/shelf-trial.ts";
export { runWardBlocks } from "./supply/run/collector.ts";
export { SupplyGathering } from "./supply/run/gathering.ts";
export { mergedPart, type SupplyPart, wardBlock, wardBlocks } from "./supply/run/supply-part.ts";
export { supplyResult } from "./supply/supply.ts";
export { type SweepPlan, sweepPlan, sweepStudy } from "./sweep/grid.ts";
export { paretoSet } from "./sweep/pareto-set.ts";
export { along, type Constraint, clockOfPoint, type SweepAsked, sweepResult } from "./sweep/sweep.ts";
export { mostWithin } from "./trace/off-spells.ts";
export { Recorder } from "./trace/recorder.ts";
export { type TracedDay, traceDay } from "./trace/trace-day.ts";
