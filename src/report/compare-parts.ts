import type { CompareResult, Difference } from "../analysis/compare-result.ts";
import type { MeasureName } from "../analysis/measures.ts";
import type { DifferenceRow } from "../charts/index.ts";
import { type MeasureScale, unitWords } from "./measure-number.ts";
import { measureWords } from "./measure-words.ts";
import { differenceDecimals, isFound, verdictWords } from "./verdict-words.ts";

/** Two regimens of a comparison and how they differ, on one dressing or on all together. */
export interface Pair {
	/** Place among the pairs; the reader's own question is the first. */
	readonly index: number;
	readonly a: string;
	readonly b: string;
	/** Ids of dressings; `all` comes first where there are several. */
	readonly owners: readonly string[];
	/** Every measure, by owner. */
	readonly of: (owner: string, measure: MeasureName) => Difference | undefined;
}

export const compareScale = (result: CompareResult): MeasureScale => ({
	horizonMin: result.scenario.horizonMin,
	currency: result.currency,
});

/** Every pair of regimens, in the order of the regimens. */
export function pairsOf(result: CompareResult): Pair[] {
	const names = result.regimens.map(({ name }) => name);
	const owners = [...new Set(result.differences.map((one) => one.dressing))];
	const sorted = owners.toSorted(
		(a, b) => Number(b === "all") - Number(a === "all"),
	);
	const key = (a: string, b: string, owner: string, measure: string): string =>
		JSON.stringify([a, b, owner, measure]);
	const found = new Map(
		result.differences.map((one) => [
			key(one.a, one.b, one.dressing, one.measure),
			one,
		]),
	);
	return names
		.flatMap((a, at) => names.slice(at + 1).map((b) => ({ a, b })))
		.map(({ a, b }, index) => ({
			index,
			a,
			b,
			owners: sorted,
			of: (owner, measure) => found.get(key(a, b, owner, measure)),
		}));
}

/** The differences of a pair in the measures asked for, in their order. */
export const askedFor = (
	result: CompareResult,
	pair: Pair,
	owner: string,
): Difference[] =>
	result.measures.flatMap((measure) => pair.of(owner, measure) ?? []);

/** A difference as a row of the chart. */
export const rowOf = (
	difference: Difference,
	scale: MeasureScale,
): DifferenceRow => ({
	label: measureWords[difference.measure].label,
	unit: unitWords(difference.measure, scale),
	meanA: difference.meanA,
	meanB: difference.meanB,
	mean: difference.mean,
	low: difference.low95,
	high: difference.high95,
	verdict: verdictWords(difference, scale),
	tone: toneOf(difference),
	decimals: differenceDecimals(difference),
});

function toneOf(difference: Difference): DifferenceRow["tone"] {
	if (isFound(difference)) return "difference";
	const { kind } = difference;
	return kind === "none-found" || kind === "same" ? "none" : "unknown";
}
