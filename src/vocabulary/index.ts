/** The model's words, each once, as values: what they are called in sentences is decided in words. */
export { type AxisName, axisNames, axisUnits } from "./axes.ts";
export { minutesADay, minutesAWeek, weekdays } from "./calendar.ts";
export { cautionInALine, cautionSentences } from "./cautions.ts";
export type { Condition, Ending } from "./conditions.ts";
export { callsNurse, conditionFacts, conditions, endings, priorities, priorityOf } from "./conditions.ts";
export type { Beginning, Difficulty, Slough, Tissue } from "./dressings.ts";
export { beginnings, difficulties, sloughs, tissues } from "./dressings.ts";
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
export type { Act, CauseName, Place, Revealed, ShiftEnd, TroubleEnd } from "./rehearsal.ts";
export { acts, causeNames, places, revelations, shiftEnds, troubleEnds } from "./rehearsal.ts";
export type { CanisterReason, HappeningKind, Notice, PauseReason, Phase, SourceReason } from "./therapy.ts";
export { canisterReasons, happenings, isPlanned, notices, pauseReasons, phases, sourceReasons } from "./therapy.ts";
export { isTotalName, type TotalName, totalFacts, totalNames, totalsAsRead } from "./totals.ts";
