import type { CompareResult, Difference } from "../analysis/compare-result.ts";
import type { MeasureName } from "../analysis/measures.ts";
import type { DifferenceRow } from "../charts/index.ts";
import { fragileMark, isFragile } from "./fragile.ts";
import {
	type MeasureScale,
	meanDecimals,
	unitWords,
} from "./measure-number.ts";
import { betterIs, measureWords } from "./measure-words.ts";
import { isFound, verdictWords } from "./verdict-words.ts";

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

/** The pair that a and b are, a first: turned round where the result holds it as b against a. */
export function pairBetween(
	result: CompareResult,
	a: string,
	b: string,
): Pair | undefined {
	const pairs = pairsOf(result);
	const held = pairs.find((pair) => pair.a === a && pair.b === b);
	if (held !== undefined) return held;
	const other = pairs.find((pair) => pair.a === b && pair.b === a);
	if (other === undefined) return undefined;
	const scale = compareScale(result);
	return {
		...other,
		a,
		b,
		of: (owner, measure) => {
			const one = other.of(owner, measure);
			return one === undefined ? undefined : turnedRound(one, scale);
		},
	};
}

/** What b differs from a by, of what a differs from b by. */
function turnedRound(one: Difference, scale: MeasureScale): Difference {
	const better = betterIs(one.measure);
	const turned: Difference = {
		...one,
		a: one.b,
		b: one.a,
		meanA: one.meanB,
		meanB: one.meanA,
		mean: negated(one.mean),
		low95: one.high95 === null ? null : negated(one.high95),
		high95: one.low95 === null ? null : negated(one.low95),
		shareAHigher: one.shareBHigher,
		shareBHigher: one.shareAHigher,
		shareABetter:
			better === null
				? null
				: better === "higher"
					? one.shareBHigher
					: one.shareAHigher,
	};
	return { ...turned, verdict: verdictWords(turned, scale) };
}

/** Nought stays nought, without a sign. */
const negated = (value: number): number => 0 - value;

/** How the measures of several dressings are put together. */
export const togetherWords =
	"All dressings together: counts, times, volumes and cost added up, of shares the mean, of first canisters the soonest. ";

/** The differences of a pair in the measures asked for, in their order. */
export const askedFor = (
	result: CompareResult,
	pair: Pair,
	owner: string,
): Difference[] =>
	result.measures.flatMap((measure) => pair.of(owner, measure) ?? []);

/** Digits after the point of the means of either regimen of a difference, each by its own interval: that of the difference, in which the patients cancel out, is much narrower. */
export function decimalsOfMeans(
	{ a, b, dressing, measure }: Difference,
	{ regimens }: CompareResult,
): [number, number] {
	const decimals = (name: string): number =>
		meanDecimals(
			measure,
			regimens
				.find((regimen) => regimen.name === name)
				?.dressings.findLast(({ id }) => id === dressing)?.measures[measure],
		);
	return [decimals(a), decimals(b)];
}

/** A difference as a row of the chart, with a mark where its verdict rests on assumed numbers, as far as that was looked into. */
export function rowOf(
	difference: Difference,
	result: CompareResult,
): DifferenceRow {
	const scale = compareScale(result);
	const mark = isFragile(difference, result.restsOn) ? `; ${fragileMark}` : "";
	return {
		label: measureWords[difference.measure].label,
		unit: unitWords(difference.measure, scale),
		meanA: difference.meanA,
		meanB: difference.meanB,
		mean: difference.mean,
		low: difference.low95,
		high: difference.high95,
		verdict: `${verdictWords(difference, scale)}${mark}`,
		tone: toneOf(difference),
		decimals: decimalsOfMeans(difference, result),
	};
}

function toneOf(difference: Difference): DifferenceRow["tone"] {
	if (isFound(difference)) return "difference";
	const { kind } = difference;
	return kind === "none-found" || kind === "same" ? "none" : "unknown";
}
