/** How numbers, times, codes and what was found are written for people, in the language of the reader. */
export {
	type Clock,
	clockTime,
	clockWords,
	dateAt,
	dateTimeAt,
	dateWords,
	dayOffset,
	dayWords,
	everyDayWords,
	fullDate,
	isInstant,
	monthWords,
	shiftsBetween,
	shortDate,
	spanWords,
	timeOfDay,
	timeRange,
	timeSpan,
	timesBetween,
} from "./clock.ts";
export {
	canisterReasonWords,
	conditionWords,
	endingWords,
	pauseWords,
	phaseWords,
	sourceReasonWords,
} from "./code-words.ts";
export { happeningWords, soundsWords } from "./happening-words.ts";
export {
	decimalsFor,
	differenceDecimals,
	isFound,
	type MeasureScale,
	meanDecimals,
	measured,
	perHorizon,
	scaleOf,
	unitWords,
	verdictWords,
} from "./measure-number.ts";
export { inSentence, measureWords, totalDecimals, totalWords } from "./measure-words.ts";
export {
	counted,
	depthWords,
	durationWords,
	figureWords,
	measureHeading,
	numberWord,
	percentWords,
	periodWords,
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
	sentenceInner,
	sentenceStart,
	sentenceText,
	strong,
} from "./sentences.ts";
export { wardName } from "./ward-name.ts";
