/** A shift to rehearse: what is hidden, what can be seen, looked at and done, and what came of it. Data in, data out. */
export { acts, actWords, isAct } from "./acts.ts";

export {
	caseLink,
	type HandedOut,
	isCaseLink,
	readCaseLink,
} from "./case-link.ts";
export type { Debrief, Revealed } from "./debrief-data.ts";
export { drawCase } from "./draw-case.ts";
export { manual } from "./manual.ts";
export { type Taking, takings } from "./minutes.ts";
export { isPlace, type Place, places, placeWords } from "./places.ts";
export {
	type Answer,
	type Happened,
	Rehearsal,
	startRehearsal,
} from "./rehearsal.ts";
export {
	readScript,
	readStep,
	type ScriptStep,
	stepText,
	takeStep,
} from "./script.ts";
export type { SoFar } from "./shift-recorder.ts";
export type { View } from "./view.ts";
export { viewWords } from "./view-words.ts";
