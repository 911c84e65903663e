import type { ChangeTime } from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	counted,
	numberWord,
	percentWords,
	timeRange,
	volumeWords,
} from "../charts/index.ts";
import { type AnswerData, likely, unlikely } from "./answer-data.ts";
import { type Sentence, strong } from "./sentence.ts";
import { spreadRange } from "./spread-words.ts";

/** How much solution goes in, how many bags to have, and how long the one that hangs is good for. */
export function solutionAnswer({
	projection,
	clock,
	dressing,
}: AnswerData): Sentence {
	const { instilledMl, fills, sourceChanges } = projection.totals;
	const used = dressing.sourceLeftMl < dressing.sourceMl;
	const bags = (used ? 0 : 1) + Math.ceil(sourceChanges.p90);
	const fresh = `${bags === 0 ? "no" : numberWord(bags)} ${volumeWords(dressing.sourceMl)} ${bags === 1 ? "bag" : "bags"}`;
	const have = used
		? `${fresh} beside the one that hangs, with ${volumeWords(dressing.sourceLeftMl)} left`
		: fresh;
	const first = projection.sourceChanges.find((change) => change.ordinal === 1);
	return [
		"Solution: ",
		strong(volumeWords(instilledMl.p50)),
		` in ${counted(fills.p50, "fill")}${spreadRange(instilledMl, volumeWords)}; have `,
		strong(have),
		`${goodFor(first, used, clock)}.`,
	];
}

function goodFor(
	first: ChangeTime | undefined,
	used: boolean,
	clock: Clock,
): string {
	if (first === undefined || first.probabilityWithinHorizon < unlikely)
		return `, ${used ? "which is good" : "good"} until ${clockTime(clock.horizonMin, clock)}`;
	const chance =
		first.probabilityWithinHorizon < likely
			? ` in ${percentWords(first.probabilityWithinHorizon)} of the days`
			: "";
	return `; the ${used ? "one that hangs" : "first"} is renewed ${timeRange(first.p10Min, first.p90Min, clock)}${chance}`;
}

/** Solution that went in and did not reach the canister: kept in the foam or wept. */
export function returnAnswer({ projection }: AnswerData): Sentence {
	const { notReturnedMl } = projection.totals;
	return [
		"Did not come back: ",
		strong(volumeWords(notReturnedMl.p50)),
		` of the solution${spreadRange(notReturnedMl, volumeWords)}.`,
	];
}
