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

/** 'the suction line was kinked 62 %, the port was clogged by debris 30 %'. */
export function beliefWords({ causes, nothing }: Likelihoods): string {
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
		.map(({ words, probability }) => `${words} ${percent(probability)}`)
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
		({ place, startMin, minutes, chance, code, after }) =>
			`${clock(startMin)}, ${placeWords[place]}: ${minutes} min for ${percent(chance)} of finding something. ${shows(place, code) ? "It shows the cause" : "Nothing there"}; then: ${beliefWords(after)}.`,
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

const percent = (probability: number) =>
	probability > 0 && probability < 0.01
		? "<1 %"
		: probability < 1 && probability > 0.99
			? ">99 %"
			: `${Math.round(100 * probability)} %`;
