import type { Likelihoods } from "../../results/index.ts";
import { causeOf } from "../causes/causes.ts";
import { actFacts } from "../places/acts.ts";
import { placeFacts } from "../places/places.ts";
import { showsCause } from "../shift/findings.ts";
import { clockText } from "../shift/shift-words.ts";
import type { Played } from "./orderly.ts";

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
		...causes.map(({ cause, probability }) => ({ words: causeOf(cause).words, probability })),
		{ words: "nothing is wrong now", probability: nothing },
	]
		.filter(({ probability }) => probability >= leastNamed)
		.sort((a, b) => b.probability - a.probability)
		.slice(0, mostNamed);
	return named
		.map(({ words, probability }) => {
			const said = likely(probability, courses);
			return courses < fewCourses ? `${words} (${said})` : `${words} ${said}`;
		})
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
			`${clock(startMin)}, ${placeFacts[place].words}: ${minutes} min; finding something: ${likely(chance, before.courses)}. ${showsCause(place, code) ? "It shows the cause" : "Nothing there"}; then: ${beliefWords(after)}.`,
	);
	const further = looks.slice(steps.length).map((place) => `Then, as alarms stood on: ${placeFacts[place].words}.`);
	const done = deeds.map(
		({ act, startMin, endMin }) => `${clock(startMin)}, ${actFacts[act].words}: done at ${clock(endMin)}.`,
	);
	const end =
		deeds.length === 0
			? "There was nothing to mend."
			: mendedMin === null
				? "That did not end it before the shift was over."
				: `Settled at ${clock(mendedMin)}.`;
	return [begin, ...looked, ...further, ...done, end];
}

const inWords = [[0.9, "almost certain"], [0.5, "likely"], [0.2, "possible"]] as const; // biome-ignore format: a table

/** In words where the courses are too few for a number. Nothing is ever certain: the courses are some of all there could be. */
function likely(probability: number, courses: number): string {
	if (courses < fewCourses) return inWords.find(([least]) => probability >= least)?.[1] ?? "not ruled out";
	if (probability > 0.99) return ">99 %";
	return probability > 0 && probability < 0.01 ? "<1 %" : `${Math.round(100 * probability)} %`;
}
