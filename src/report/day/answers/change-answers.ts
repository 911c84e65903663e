import type { ChangeTime, DressingProjection, Spread } from "../../../results/index.ts";
import {
	type Clock,
	clockTime,
	counted,
	dayWords,
	everyDayWords,
	isInstant,
	joinedWords,
	numberWord,
	type Piece,
	percentWords,
	plainNumber,
	rangeWords,
	type Sentence,
	spreadRange,
	strong,
	timeRange,
	timesBetween,
	volumeWords,
} from "../../../words/index.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";

/** When the canister next needs changing, or how full it will be where it does not. */
export function canisterAnswer({ projection, clock, dressing, happenings, varies }: DressingParts): Sentence {
	const [first] = projection.canisterNeeds;
	const until = clockTime(clock.horizonMin, clock);
	if (first === undefined || first.probabilityWithinHorizon < unlikely) {
		const { p10Ml, p50Ml, p90Ml } = projection.canisterAtEnd;
		const further = happenings.some(({ what }) => what === "canister-change") ? "further " : "";
		const chance = first === undefined ? "" : ` (${percentWords(first.probabilityWithinHorizon)})`;
		return [
			"Canister: ",
			strong(`no ${further}change${varies ? " likely" : ""} before ${until}`),
			`${chance}; ${volumeWords(p50Ml)}${spreadRange({ p10: p10Ml, p90: p90Ml }, volumeWords)} of its ${volumeWords(dressing.canisterMl)} will be in it.`,
		];
	}
	const when = needWhen(first, clock);
	const later = laterChanges(projection.totals.canisterChanges);
	if (!varies) return ["Canister: needs changing ", ...when, `.${later}`];
	if (first.probabilityWithinHorizon >= likely) return ["Canister: likely to need changing ", ...when, `.${later}`];
	const chance = percentWords(first.probabilityWithinHorizon);
	return ["Canister: ", strong(`may need changing (${chance})`), "; if so, ", ...when, `.${later}`];
}

/** 'between 19:05 and 21:40, likeliest between 19:34 and 19:38 (42 % of the days) or at 21:00 (31 %)', or 'at 19:00'. */
function needWhen(need: Need, clock: Clock): Piece[] {
	const range = strong(timeRange(need.p10Min, need.p90Min, clock));
	const likeliest = likeliestWords(need, clock);
	return likeliest === "" ? [range] : [range, ", likeliest ", strong(likeliest)];
}

function laterChanges(changes: Spread): string {
	if (changes.p90 < 1.5) return "";
	return ` Over the whole time ${rangeWords(changes.p10, changes.p90, (value) => plainNumber(value, 0))} changes.`;
}

/** How much solution goes in, how many bags to have, and how long the one that hangs is good for. */
export function solutionAnswer({ projection, clock, dressing }: DressingParts): Sentence {
	const { instilledMl, fills, sourceChanges } = projection.totals;
	const used = dressing.sourceLeftMl < dressing.sourceMl;
	const bags = (used ? 0 : 1) + Math.ceil(sourceChanges.p90);
	const fresh = `${bags === 0 ? "no" : numberWord(bags)} ${volumeWords(dressing.sourceMl)} ${bags === 1 ? "bag" : "bags"}`;
	const have = used ? `${fresh} beside the one that hangs, with ${volumeWords(dressing.sourceLeftMl)} left` : fresh;
	const first = projection.sourceChanges.find((change) => change.ordinal === 1);
	const solution = strong(volumeWords(instilledMl.p50));
	const inFills = ` in ${counted(fills.p50, "fill")}${spreadRange(instilledMl, volumeWords)}; have `;
	return ["Solution: ", solution, inFills, strong(have), `${goodFor(first, used, clock)}.`];
}

function goodFor(first: ChangeTime | undefined, used: boolean, clock: Clock): string {
	if (first === undefined || first.probabilityWithinHorizon < unlikely)
		return `, ${used ? "which is good" : "good"} until ${clockTime(clock.horizonMin, clock)}`;
	const chance =
		first.probabilityWithinHorizon < likely ? ` in ${percentWords(first.probabilityWithinHorizon)} of the days` : "";
	return `; the ${used ? "one that hangs" : "first"} is renewed ${timeRange(first.p10Min, first.p90Min, clock)}${chance}`;
}

/** Solution that went in and did not reach the canister: kept in the foam or wept. */
export function returnAnswer({ projection }: DressingParts): Sentence {
	const { notReturnedMl } = projection.totals;
	const range = spreadRange(notReturnedMl, volumeWords);
	return ["Did not come back: ", strong(volumeWords(notReturnedMl.p50)), ` of the solution${range}.`];
}

/** Shares of the days at which something counts as likely, and below which it counts as unlikely. */
export const likely = 0.95;
const unlikely = 0.05;

/** When a canister is due. */
export type Need = DressingProjection["canisterNeeds"][number];

/**
 * The likeliest windows with their shares of all days, in order of time: 'at 07:00 (42 % of the days) or between 09:35
 * and 09:42 (31 %)'; '' where there is none, or only the range itself.
 */
export function likeliestWords(need: Need, clock: Clock): string {
	const { windows } = need;
	const [only] = windows;
	if (only === undefined || isInstant(need.p10Min, need.p90Min, clock)) return "";
	if (windows.length === 1 && only.startMin <= need.p10Min && only.endMin >= need.p90Min) return "";
	// The range has named its day; another is named where it begins, the first of all, too.
	let day = dayWords(need.p90Min, clock);
	if (day !== dayWords(need.p10Min, clock)) day = "";
	return joinedWords(
		windows.map(({ startMin, endMin, probability }, i) => {
			const own = dayWords(startMin, clock);
			const alone = own === dayWords(endMin, clock);
			const when =
				alone && own === day
					? timesBetween(startMin, endMin, clock)
					: alone && own === ""
						? `${everyDayWords(startMin, clock)} ${timesBetween(startMin, endMin, clock)}`
						: timeRange(startMin, endMin, clock);
			day = dayWords(endMin, clock);
			return `${when} (${percentWords(probability)}${i === 0 ? " of the days" : ""})`;
		}),
		"or",
	);
}

/** ' (47 %)' where it does not come on nearly every day. */
export const chanceOf = (change: ChangeTime): string =>
	change.probabilityWithinHorizon < likely ? ` (${percentWords(change.probabilityWithinHorizon)})` : "";
