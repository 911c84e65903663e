/** The formats of results, each declared once: what its keys hold, their order, its JSON Schema, the text that is printed. */

export {
	type CompareDrawings,
	type CompareResult,
	compareJson,
	type Difference,
	type PrecisionReached,
	type RegimenResult,
	type RestsOn,
	type RestsOnRow,
	type VerdictKind,
} from "./compare.ts";
export {
	type AlarmProjection,
	type DayCurve,
	type DayResult,
	type DrawnDressing,
	type DressingDay,
	type DressingProjection,
	dayJson,
	type HomeSupplies,
	type LevelBand,
	type LikelyTime,
	type Projection,
	type RoundLevel,
	type Schedule,
	type Totals,
	type TracedDayResult,
} from "./day.ts";
export type { CauseCourse, Debrief, Deed, Likelihoods, LoggedEntry, SearchStage, SearchStep } from "./debrief.ts";
export { debriefJson } from "./debrief.ts";
export {
	compareJsonSchema,
	dayJsonSchema,
	debriefJsonSchema,
	supplyJsonSchema,
	sweepJsonSchema,
} from "./json-schemas.ts";
export type {
	Assumption,
	Caution,
	ChangeTime,
	Drawn,
	DressingSummary,
	ListedHappening,
	RegimenSummary,
	ScenarioSummary,
	Spread,
	Supply,
} from "./parts.ts";
export {
	type BedsResult,
	type CostResult,
	type CountSeries,
	type CountSpread,
	type ItemSupply,
	type PlannedOrder,
	type PolicyResult,
	type RuleResult,
	type StoreResult,
	type SupplyResult,
	supplyFormat,
	supplyJson,
	type WardSummary,
} from "./supply.ts";
export {
	type SweepAxis,
	type SweepClock,
	type SweepMark,
	type SweepPoint,
	type SweepResult,
	type SweepSettings,
	type SweepValue,
	type SweepValues,
	sweepJson,
} from "./sweep.ts";
