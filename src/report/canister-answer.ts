import type { Spread } from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	percentWords,
	plainNumber,
	rangeWords,
	timeRange,
	volumeWords,
} from "../charts/index.ts";
import type { AnswerData } from "./answer-data.ts";
import { likely, unlikely, varies } from "./answer-data.ts";
import { likeliestWords, type Need } from "./change-words.ts";
import { type Piece, type Sentence, strong } from "./sentence.ts";
import { spreadRange } from "./spread-words.ts";

/** When the canister next needs changing, or how full it will be where it does not. */
export function canisterAnswer(data: AnswerData): Sentence {
	const { projection, clock, dressing, happenings } = data;
	const [first] = projection.canisterNeeds;
	const until = clockTime(clock.horizonMin, clock);
	if (first === undefined || first.probabilityWithinHorizon < unlikely) {
		const { p10Ml, p50Ml, p90Ml } = projection.canisterAtEnd;
		const further = happenings.some(({ what }) => what === "canister-change")
			? "further "
			: "";
		const chance =
			first === undefined
				? ""
				: ` (${percentWords(first.probabilityWithinHorizon)})`;
		return [
			"Canister: ",
			strong(
				`no ${further}change${varies(data) ? " likely" : ""} before ${until}`,
			),
			`${chance}; ${volumeWords(p50Ml)}${spreadRange({ p10: p10Ml, p90: p90Ml }, volumeWords)} of its ${volumeWords(dressing.canisterMl)} will be in it.`,
		];
	}
	const when = needWhen(first, clock);
	const later = laterChanges(projection.totals.canisterChanges);
	if (!varies(data)) return ["Canister: needs changing ", ...when, `.${later}`];
	if (first.probabilityWithinHorizon >= likely)
		return ["Canister: likely to need changing ", ...when, `.${later}`];
	const chance = percentWords(first.probabilityWithinHorizon);
	return [
		"Canister: ",
		strong(`may need changing (${chance})`),
		"; if so, ",
		...when,
		`.${later}`,
	];
}

/** 'between 19:05 and 21:40, likeliest between 19:34 and 19:38 (42 % of the days) or at 21:00 (31 %)', or 'at 19:00'. */
function needWhen(need: Need, clock: Clock): Piece[] {
	const range = strong(timeRange(need.p10Min, need.p90Min, clock));
	const likeliest = likeliestWords(need, clock);
	return likeliest === ""
		? [range]
		: [range, ", likeliest ", strong(likeliest)];
}

function laterChanges(changes: Spread): string {
	if (changes.p90 < 1.5) return "";
	return ` Over the whole time ${rangeWords(changes.p10, changes.p90, (value) => plainNumber(value, 0))} changes.`;
}
