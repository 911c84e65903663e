/** How numbers, times, codes and what was found are written for people, in the language of the reader. */
export {
	type Clock,
	clockTime,
	dateAt,
	dateTimeAt,
	dateWords,
	dayOffset,
	dayWords,
	everyDayWords,
	fullDate,
	isInstant,
	monthWords,
	shortDate,
	spanWords,
	timeOfDay,
	timeRange,
	timeSpan,
} from "./clock.ts";
export {
	canisterReasonWords,
	conditionWords,
	endingWords,
	pauseWords,
	phaseWords,
	sourceReasonWords,
} from "./code-words.ts";
export { durationWords, periodWords } from "./duration.ts";
export { happeningWords, soundsWords } from "./happening-words.ts";
export { decimalsFor, type MeasureScale, meanDecimals, measured, perHorizon, unitWords } from "./measure-number.ts";
export { inSentence, measureWords } from "./measure-words.ts";
export {
	counted,
	depthWords,
	figureWords,
	measureHeading,
	numberWord,
	percentWords,
	plainNumber,
	rangeWords,
	spreadRange,
	threeFigures,
	volumeNumber,
	volumeWords,
} from "./numbers.ts";
export {
	canisterWords,
	drawdownShare,
	drawdownWords,
	dressingLine,
	regimenLine,
	regimenWords,
	sharedDrawdownWords,
	sourceWords,
	waits,
} from "./regimen-words.ts";
export { roundShare } from "./round-share.ts";
export {
	joinedWords,
	legalText,
	type Piece,
	type Sentence,
	sentenceEnd,
	sentenceStart,
	sentenceText,
	strong,
} from "./sentences.ts";
export { shiftsBetween } from "./shifts.ts";
export { totalDecimals, totalWords } from "./total-words.ts";
export { differenceDecimals, isFound, verdictWords } from "./verdict-words.ts";
export { wardName } from "./ward-name.ts";
