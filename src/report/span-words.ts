import {
	type Clock,
	clockTime,
	durationWords,
	fullDate,
	timeOfDay,
} from "../charts/index.ts";

/** The days that a report is about, so that a paper can be matched to them. */
export const spanWords = (clock: Clock): string =>
	`From ${fullDate(0, clock)} ${timeOfDay(0, clock)} for ${durationWords(clock.horizonMin)}, until ${clockTime(clock.horizonMin, clock)}.`;
