/** A shift to rehearse: what is hidden, what can be seen, looked at and done, and what came of it. Data in, data out. */
export { caseLink, type HandedOut, isCaseLink, readCaseLink } from "./case-link.ts";
export { actFacts } from "./places/acts.ts";
export { placeFacts } from "./places/places.ts";
export { manual, type Taking, takings } from "./places/takings.ts";
export { type Answer, Rehearsal, type SoFar } from "./rehearsal.ts";
export { readScript, readStep, type ScriptStep, stepText, takeStep } from "./script.ts";
export { drawCase } from "./shift/draw-case.ts";
export type { Happened } from "./shift/running-shift.ts";
export { type View, viewWords } from "./shift/view.ts";
