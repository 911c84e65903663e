import type { DifferenceRow, DifferenceRowsData } from "../../../charts/index.ts";
import type { Difference, RestsOn } from "../../../results/index.ts";
import { isFound, meanDecimals, measureWords, numberWord, unitWords, verdictWords } from "../../../words/index.ts";
import { askedFor, type Pair, togetherWords } from "./pairs.ts";

/** What differs most between two regimens as rows, with a caption: whose they are, why these, what their marks mean. */
export function mainRows(pair: Pair): DifferenceRowsData & { readonly caption: string } {
	const { differences, why } = mainDifferences(pair);
	const whose = pair.owners.length > 1 ? togetherWords : "";
	return {
		...rowsData(pair, `${pair.a} against ${pair.b}: what differs most`, differences),
		caption: `${whose}${why} ${fragileWords(differences, pair)}`.trim(),
	};
}

const most = 5;

/**
 * The differences that a first page shows, and why these. Where the reader asked for few measures, those, in the reader's
 * order. Else, of each matter (washing, leaks, …), the difference found that is largest as a share of the larger of the
 * two means; then the five largest of these; where fewer were found, places are filled up in the order asked for.
 */
export function mainDifferences(pair: Pair): { readonly differences: readonly Difference[]; readonly why: string } {
	const asked = askedFor(pair);
	if (asked.length <= most) return { differences: asked, why: "The measures that were asked for, in that order." };
	const found = asked.filter(isFound).toSorted((a, b) => proportion(b) - proportion(a));
	const largest = firstOfEach(found).slice(0, most);
	const rest = firstOfEach([...largest, ...asked]).filter((one) => !largest.includes(one));
	const differences = [...largest, ...rest].slice(0, most);
	const others = differences.length - largest.length;
	if (largest.length === 0) {
		const why = `No difference was found in any of ${asked.length} measures; shown are the first that were looked at.`;
		return { differences, why };
	}
	const differ = found.length === 1 ? "one differs" : `${numberWord(found.length)} differ`;
	const shown = largest.length === 1 ? "is the one that differs" : `are the ${numberWord(largest.length)} that differ`;
	const then = others === 0 ? "" : `, then ${numberWord(others)} in which none was found`;
	const why = `Of ${asked.length} measures, ${differ}; shown ${shown} most in proportion, at most one of each matter (washing, leaks, canisters and so on)${then}. The order is not a ranking of worth.`;
	return { differences, why };
}

const proportion = ({ mean, meanA, meanB }: Difference): number =>
	Math.abs(mean) / Math.max(Math.abs(meanA), Math.abs(meanB));

function firstOfEach(differences: readonly Difference[]): Difference[] {
	const matters = differences.map(({ measure }) => measureWords[measure].matter);
	return differences.filter((_, place) => matters.indexOf(matters[place]) === place);
}

export const rowsData = (pair: Pair, title: string, differences: readonly Difference[]): DifferenceRowsData => ({
	title,
	a: pair.a,
	b: pair.b,
	rows: differences.map((one) => differenceRow(one, pair)),
});

/** A difference as a row, with a mark where its verdict rests on assumed numbers, as far as that was looked into. */
export function differenceRow(difference: Difference, { result, scale }: Pair): DifferenceRow {
	const { measure, meanA, meanB, mean, low95: low, high95: high } = difference;
	const mark = isFragile(difference, result.restsOn) ? `; ${fragileMark}` : "";
	const [label, unit] = [measureWords[measure].label, unitWords(measure, scale)];
	const verdict = `${verdictWords(difference, scale)}${mark}`;
	const decimals = decimalsOfMeans(difference, result);
	return { label, unit, meanA, meanB, mean, low, high, verdict, tone: toneOf(difference), decimals };
}

function toneOf(difference: Difference): DifferenceRow["tone"] {
	if (isFound(difference)) return "difference";
	const { kind } = difference;
	return kind === "none-found" || kind === "same" ? "none" : "unknown";
}

/** Digits of either regimen's mean, each by its own interval: that of the difference is much narrower. */
export function decimalsOfMeans({ a, b, dressing, measure }: Difference, result: Pair["result"]): [number, number] {
	const decimals = (name: string): number => {
		const regimen = result.regimens.find((one) => one.name === name);
		const own = regimen?.dressings.findLast(({ id }) => id === dressing);
		return meanDecimals(measure, own?.measures[measure]);
	};
	return [decimals(a), decimals(b)];
}

/**
 * Whether a difference that was found is lost or turned round at half or at twice a number that is merely assumed, or
 * without a cause that is merely assumed. False where nobody looked into it for this pair.
 */
export function isFragile(one: Difference, restsOn: RestsOn | null): boolean {
	if (restsOn === null || restsOn.a !== one.a || restsOn.b !== one.b || !isFound(one)) return false;
	const isOfIt = ({ dressing, measure }: Pick<Difference, "dressing" | "measure">) =>
		dressing === one.dressing && measure === one.measure;
	return restsOn.rows
		.filter(({ provenance }) => provenance === "assumed")
		.some(({ effects }) => effects.some((effect) => (effect.turns || effect.hangs) && isOfIt(effect)));
}

/** What stands beside the verdict of such a difference. */
const fragileMark = "rests on assumed numbers";

/** What the mark means, as a sentence; '' where no difference bears it. */
export const fragileWords = (differences: readonly Difference[], { result }: Pair): string =>
	differences.some((one) => isFragile(one, result.restsOn))
		? `What ${fragileMark} is lost or turned round at half or at twice one of them, or without one assumed cause: see What the answer rests on.`
		: "";
