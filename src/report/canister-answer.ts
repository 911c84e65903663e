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
	const { projection, clock, dressing } = data;
	const [first] = projection.canisterNeeds;
	const until = clockTime(clock.horizonMin, clock);
	if (first === undefined || first.probabilityWithinHorizon < unlikely) {
		const content = shifted(
			projection.totals.toCanisterMl,
			dressing.canisterHoldsMl,
		);
		const chance =
			first === undefined
				? ""
				: ` (${percentWords(first.probabilityWithinHorizon)})`;
		return [
			"Canister: ",
			strong(
				`${varies(data) ? "no change likely" : "no change"} before ${until}`,
			),
			`${chance}; ${volumeWords(content.p50)}${spreadRange(content, volumeWords)} of its ${volumeWords(dressing.canisterMl)} will be in it.`,
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

/** What is in the canister in the end, where it is not changed: what it held and what has come. */
const shifted = (comes: Spread, byMl: number): Spread =>
	byMl === 0
		? comes
		: {
				...comes,
				mean: comes.mean + byMl,
				p10: comes.p10 + byMl,
				p50: comes.p50 + byMl,
				p90: comes.p90 + byMl,
			};

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
