import { actWords } from "./acts.ts";
import type { Likelihoods } from "./belief.ts";
import { shows } from "./belief.ts";
import { causeFacts } from "./causes.ts";
import { clockText } from "./clock-text.ts";
import type { Played } from "./orderly.ts";
import { placeWords } from "./places.ts";

/** Likelihoods below this are not worth a reader's time. */
const leastNamed = 0.02;
const mostNamed = 3;

/** Fewer courses than this do not bear a number in per cent; assumed: with 30 a share of a half is known to about 0.1. */
const fewCourses = 30;

/** What has to be known once to read all that is said of likelihood. */
export const likelihoodNote = `Two causes may be true at once, so that shares can add up to more than 100 %. Where fewer than ${fewCourses} of the courses reckoned with fit what was seen, words stand for numbers.`;

/** 'the suction line was kinked 62 %, the port was clogged by debris 30 %'; with few courses 'the suction line was kinked (likely)'. */
export function beliefWords({ causes, nothing, courses }: Likelihoods): string {
	const named = [
		...causes.map(({ cause, probability }) => ({
			words: causeFacts[cause].words,
			probability,
		})),
		{ words: "nothing is wrong now", probability: nothing },
	]
		.filter(({ probability }) => probability >= leastNamed)
		.sort((a, b) => b.probability - a.probability)
		.slice(0, mostNamed);
	return named
		.map(({ words, probability }) =>
			courses < fewCourses
				? `${words} (${likely(probability, courses)})`
				: `${words} ${likely(probability, courses)}`,
		)
		.join(", ");
}

/** The orderly search in sentences, one a look or deed. */
export function searchSentences(
	{ sign, startMin, steps, looks, deeds, mendedMin }: Played,
	startClockMin: number,
): string[] {
	const clock = (atMin: number) => clockText(atMin, startClockMin);
	const [first] = steps;
	const begin = `${clock(startMin)}, ${sign ? "an alarm" : "a round, as no alarm has come"}.${first === undefined ? "" : ` What could be believed then: ${beliefWords(first.before)}.`}`;
	const looked = steps.map(
		({ place, startMin, minutes, chance, code, before, after }) =>
			`${clock(startMin)}, ${placeWords[place]}: ${minutes} min; finding something: ${likely(chance, before.courses)}. ${shows(place, code) ? "It shows the cause" : "Nothing there"}; then: ${beliefWords(after)}.`,
	);
	const further = looks
		.slice(steps.length)
		.map((place) => `Then, as alarms stood on: ${placeWords[place]}.`);
	const done = deeds.map(
		({ act, startMin, endMin }) =>
			`${clock(startMin)}, ${actWords[act]}: done at ${clock(endMin)}.`,
	);
	const end =
		deeds.length === 0
			? "There was nothing to mend."
			: mendedMin === null
				? "That did not end it before the shift was over."
				: `Settled at ${clock(mendedMin)}.`;
	return [begin, ...looked, ...further, ...done, end];
}

/** In words where the courses are too few for a number. Nothing is ever certain: the courses are some of all there could be. */
function likely(probability: number, courses: number): string {
	if (courses < fewCourses)
		return probability >= 0.9
			? "almost certain"
			: probability >= 0.5
				? "likely"
				: probability >= 0.2
					? "possible"
					: "not ruled out";
	if (probability > 0.99) return ">99 %";
	return probability > 0 && probability < 0.01
		? "<1 %"
		: `${Math.round(100 * probability)} %`;
}
