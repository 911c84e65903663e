import type { CompareResult, Difference } from "../analysis/compare-result.ts";
import { numberWord } from "../charts/index.ts";
import { askedFor, type Pair } from "./compare-parts.ts";
import { measureWords } from "./measure-words.ts";
import { isFound } from "./verdict-words.ts";

const most = 5;

export interface MainDifferences {
	readonly differences: readonly Difference[];
	/** Why these, in a sentence. */
	readonly why: string;
}

/**
 * The differences that a first page shows. Where the reader asked for few measures, those, in the reader's order. Else, of
 * each matter (washing, leaks, …), the difference found that is largest as a share of the larger of the two means; then
 * the five largest of these; where fewer were found, places are filled up in the order asked for.
 */
export function mainDifferences(
	result: CompareResult,
	pair: Pair,
	owner: string,
): MainDifferences {
	const asked = askedFor(result, pair, owner);
	if (asked.length <= most)
		return {
			differences: asked,
			why: "The measures that were asked for, in that order.",
		};
	const found = asked
		.filter(isFound)
		.toSorted((a, b) => proportion(b) - proportion(a));
	const largest = firstOfEach(found).slice(0, most);
	const rest = firstOfEach([...largest, ...asked]).filter(
		(one) => !largest.includes(one),
	);
	const differences = [...largest, ...rest].slice(0, most);
	const others = differences.length - largest.length;
	const why =
		largest.length === 0
			? `No difference was found in any of ${asked.length} measures; shown are the first that were looked at.`
			: `Of ${asked.length} measures, ${found.length === 1 ? "one differs" : `${numberWord(found.length)} differ`}; shown ${largest.length === 1 ? "is the one" : `are the ${numberWord(largest.length)}`} that differ${largest.length === 1 ? "s" : ""} most in proportion, at most one of each matter (washing, leaks, canisters and so on)${others === 0 ? "" : `, then ${numberWord(others)} in which none was found`}. The order is not a ranking of worth.`;
	return { differences, why };
}

const proportion = ({ mean, meanA, meanB }: Difference): number =>
	Math.abs(mean) / Math.max(Math.abs(meanA), Math.abs(meanB));

/** The first of each matter, in their order. */
function firstOfEach(differences: readonly Difference[]): Difference[] {
	const seen = new Set<string>();
	return differences.filter(({ measure }) => {
		const { matter } = measureWords[measure];
		const first = !seen.has(matter);
		seen.add(matter);
		return first;
	});
}
