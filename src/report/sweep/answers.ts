import type { SweepResult, SweepValue } from "../../results/index.ts";
import { type MeasureName, measureFact } from "../../vocabulary/index.ts";
import {
	counted,
	decimalsFor,
	inSentence,
	joinedWords,
	measured,
	measureWords,
	plainNumber,
	type Sentence,
	scaleOf,
	strong,
} from "../../words/index.ts";
import { shownMeasures } from "./shown-measures.ts";
import { constraintWords, countedPoints, namedPoints, pointWords } from "./sweep-words.ts";

const mostNamed = 4;
const mostMeasures = 6;

/** The grid in sentences: what keeps the constraints, what is efficient, the best in each measure against what is done now. */
export function sweepAnswers(result: SweepResult): Sentence[] {
	const { varying } = shownMeasures(result);
	const sentences = [
		keptAnswer(result),
		efficientAnswer(result),
		...varying.slice(0, mostMeasures).map((measure) => bestAnswer(result, measure)),
		alikeAnswer(result),
		outsideAnswer(result),
		[
			"None of them is the best of all: ",
			strong("what is gained in one measure is paid in another"),
			", and nothing here is about healing. The choice stays with the clinician.",
		],
	];
	return sentences.filter((sentence) => sentence !== null);
}

function keptAnswer(result: SweepResult): Sentence {
	const { points, constraints } = result;
	const all = countedPoints(result, points.length);
	const kept = points.filter((point) => point.kept).length;
	if (constraints.length === 0) return [strong(all), " on the grid; no limit was set that any would break."];
	const alone = constraints.map((one) => `${inSentence(one.measure)} ${one.kept}`);
	const each = alone.length === 1 ? "" : ` (each limit alone: ${joinedWords(alone)})`;
	const keep = kept === 1 ? "keeps" : "keep";
	return [strong(kept === 0 ? "None" : String(kept)), ` of ${all} ${keep} ${constraintWords(result)}${each}.`];
}

function efficientAnswer(result: SweepResult): Sentence | null {
	const { efficient, axes, points } = result;
	if (efficient === null) return null;
	const wanted = efficient.measures.map(({ measure, better }) => {
		const { more, less } = measureWords[measure];
		return `${better === "higher" ? more : less} ${inSentence(measure)}`;
	});
	const set = efficient.points.flatMap((place) => points[place] ?? []);
	if (set.length === 0) return ["Nothing is left to be efficient once the limits are kept."];
	return [
		strong(countedPoints(result, set.length)),
		` ${set.length === 1 ? "is" : "are"} efficient where ${joinedWords(wanted)} ${efficient.measures.length === 1 ? "is" : "are"} wanted, with no other that betters ${set.length === 1 ? "it" : "them"} in one and is no worse in the rest: ${namedPoints(axes, set, mostNamed)}.`,
	];
}

type Best = NonNullable<ReturnType<typeof extreme>>;

/** The best point that is kept, and how many others have the very same mean. */
function extreme(result: SweepResult, measure: MeasureName, way: "lower" | "higher") {
	const kept = result.points.flatMap((point) => {
		const value = point.measures[measure];
		return point.kept && value !== undefined ? [{ point, value }] : [];
	});
	const [first] = kept;
	if (first === undefined) return null;
	const sign = way === "higher" ? 1 : -1;
	const best = kept.reduce((so, one) => (sign * (one.value.mean - so.value.mean) > 0 ? one : so), first);
	const alike = kept.filter(({ value }) => value.mean === best.value.mean).length;
	return { ...best, alike: alike - 1 };
}

function bestAnswer(result: SweepResult, measure: MeasureName): Sentence | null {
	const way = measureFact(measure).better;
	const { label } = measureWords[measure];
	if (way === null) {
		const [low, high] = [extreme(result, measure, "lower"), extreme(result, measure, "higher")];
		if (low === null || high === null) return null;
		return [
			`${label}: from `,
			strong(meanWords(result, measure, low.value)),
			` (${pointWords(result.axes, low.point)}) to `,
			strong(meanWords(result, measure, high.value)),
			` (${pointWords(result.axes, high.point)}).`,
		];
	}
	const best = extreme(result, measure, way);
	if (best === null) return null;
	const { less, more } = measureWords[measure];
	const alike = best.alike === 0 ? "" : ` and ${counted(best.alike, "other")} alike`;
	const outside = best.point.outside.length > 0 ? ", outside common practice" : "";
	return [
		`${label}, ${way === "higher" ? more : less} is better: `,
		strong(meanWords(result, measure, best.value)),
		` at ${pointWords(result.axes, best.point)}${alike}${outside}; ${againstNow(result, measure, best)}.`,
	];
}

const meanWords = (result: SweepResult, measure: MeasureName, value: SweepValue): string =>
	measured(value.mean, measure, scaleOf(result), decimalsFor(measure, value.halfWidth95));

/** 'against now 2.1 more (2.0 to 2.2)'. */
function againstNow(result: SweepResult, measure: MeasureName, { point, value }: Best): string {
	if (point.current) return "that is what is done now";
	const { difference, differenceHalfWidth95: half } = value;
	if (difference === 0) return "the same as now";
	const size = Math.abs(difference);
	if (half !== null && size <= half) return "no difference from now was found";
	const { less, more } = measureWords[measure];
	const decimals = decimalsFor(measure, half);
	const number = (one: number): string => plainNumber(one, decimals);
	const range = half === null || half === 0 ? "" : ` (${number(size - half)} to ${number(size + half)})`;
	return `${difference > 0 ? more : less} than now by ${measured(size, measure, scaleOf(result), decimals)}${range}`;
}

/** Measures that nothing on the grid changes. */
function alikeAnswer(result: SweepResult): Sentence | null {
	const { alike } = shownMeasures(result);
	const [first] = result.points;
	if (alike.length === 0 || first === undefined) return null;
	const named = alike.map((measure) => {
		const value = first.measures[measure];
		return `${inSentence(measure)}${value === undefined ? "" : ` ${meanWords(result, measure, value)}`}`;
	});
	return ["The same everywhere: ", strong(joinedWords(named)), "."];
}

function outsideAnswer({ points }: SweepResult): Sentence | null {
	const outside = points.filter((point) => point.outside.length > 0).length;
	if (outside === 0) return null;
	return [
		strong(`${outside} of ${points.length}`),
		` ${outside === 1 ? "lies" : "lie"} outside common practice for this wound, or ask more of the foam than it takes; they are drawn hatched, and the reasons stand below.`,
	];
}
