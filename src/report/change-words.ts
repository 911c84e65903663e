import type { ChangeTime, DressingProjection } from "../analysis/day-result.ts";
import {
	type Clock,
	dayWords,
	everyDayWords,
	isInstant,
	percentWords,
	timeOfDay,
	timeRange,
} from "../charts/index.ts";
import { likely } from "./answer-data.ts";
import { joinedWords } from "./joined-words.ts";

/** When a canister is due. */
export type Need = DressingProjection["canisterNeeds"][number];

/**
 * The likeliest windows with their shares of all days, in order of time: 'at 07:00 (42 % of the days) or between 09:35
 * and 09:42 (31 %)'; '' where there is none, or only the range itself.
 */
export function likeliestWords(need: Need, clock: Clock): string {
	const { windows } = need;
	const [only] = windows;
	if (only === undefined || isInstant(need.p10Min, need.p90Min, clock))
		return "";
	if (
		windows.length === 1 &&
		only.startMin <= need.p10Min &&
		only.endMin >= need.p90Min
	)
		return "";
	// The range has named its day; another is named where it begins, the first of all, too.
	let day = dayWords(need.p90Min, clock);
	if (day !== dayWords(need.p10Min, clock)) day = "";
	return joinedWords(
		windows.map(({ startMin, endMin, probability }, i) => {
			const own = dayWords(startMin, clock);
			const alone = own === dayWords(endMin, clock);
			const when =
				alone && own === day
					? timeRangeAlone(startMin, endMin, clock)
					: alone && own === ""
						? `${everyDayWords(startMin, clock)} ${timeRangeAlone(startMin, endMin, clock)}`
						: timeRange(startMin, endMin, clock);
			day = dayWords(endMin, clock);
			return `${when} (${percentWords(probability)}${i === 0 ? " of the days" : ""})`;
		}),
		"or",
	);
}

/** 'between 19:05 and 21:40' or 'at 19:00', where the day has been named. */
const timeRangeAlone = (
	fromMin: number,
	toMin: number,
	clock: Clock,
): string =>
	isInstant(fromMin, toMin, clock)
		? `at ${timeOfDay(fromMin, clock)}`
		: `between ${timeOfDay(fromMin, clock)} and ${timeOfDay(toMin, clock)}`;

/** ' (47 %)' where it does not come on nearly every day. */
export const chanceOf = (change: ChangeTime): string =>
	change.probabilityWithinHorizon < likely
		? ` (${percentWords(change.probabilityWithinHorizon)})`
		: "";
