/** The model's words, each once, as values: what they are called in sentences is decided in words. */
export { type AxisName, axisNames, axisUnits } from "./axes.ts";
export { minutesADay, minutesAWeek, weekdays } from "./calendar.ts";
export { cautionInALine, cautionSentences } from "./cautions.ts";
export {
	type Condition,
	callsNurse,
	conditionFacts,
	conditions,
	type Ending,
	endings,
	priorities,
	priorityOf,
} from "./conditions.ts";
export {
	type Beginning,
	beginnings,
	type Difficulty,
	difficulties,
	type Slough,
	sloughs,
	type Tissue,
	tissues,
} from "./dressings.ts";
export {
	type AvoidedTime,
	avoidedTimes,
	isMeasureName,
	type MeasureFact,
	type MeasureName,
	mainMeasures,
	measureFact,
	measureNames,
	measuresAsRead,
	placeOf,
} from "./measures.ts";
export { type DemandCause, demandCauses, type PieceKind, pieceKinds } from "./pieces.ts";
export {
	type Act,
	acts,
	type CauseName,
	causeNames,
	type Place,
	places,
	type Revealed,
	revelations,
	type ShiftEnd,
	shiftEnds,
	type TroubleEnd,
	troubleEnds,
} from "./rehearsal.ts";
export {
	type CanisterReason,
	canisterReasons,
	type HappeningKind,
	happenings,
	isPlanned,
	type Notice,
	notices,
	type PauseReason,
	type Phase,
	pauseReasons,
	phases,
	type SourceReason,
	sourceReasons,
} from "./therapy.ts";
export { isTotalName, type TotalName, totalFacts, totalNames, totalsAsRead } from "./totals.ts";
