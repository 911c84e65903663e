import type { CompareResult, Difference } from "../../../results/index.ts";
import { type MeasureName, measureFact } from "../../../vocabulary/index.ts";
import { type MeasureScale, scaleOf, verdictWords } from "../../../words/index.ts";

/** Two regimens of a comparison and how they differ, on one dressing or on all together. */
export interface Pair {
	readonly result: CompareResult;
	readonly scale: MeasureScale;
	/** Place among the pairs; the reader's own question is the first. */
	readonly index: number;
	readonly a: string;
	readonly b: string;
	/** Ids of dressings; `all` comes first where there are several. */
	readonly owners: readonly string[];
	/** The first of the owners: all dressings together, or the only one. */
	readonly whole: string;
	readonly of: (owner: string, measure: MeasureName) => Difference | undefined;
}

/** Every pair of regimens, in the order of the regimens. */
export function pairsOf(result: CompareResult): Pair[] {
	const names = result.regimens.map(({ name }) => name);
	const dressings = [...new Set(result.differences.map((one) => one.dressing))];
	const owners = dressings.sort((a, b) => Number(b === "all") - Number(a === "all"));
	const key = (a: string, b: string, owner: string, measure: string): string => JSON.stringify([a, b, owner, measure]);
	const found = new Map(result.differences.map((one) => [key(one.a, one.b, one.dressing, one.measure), one]));
	return names
		.flatMap((a, at) => names.slice(at + 1).map((b) => ({ a, b })))
		.map(({ a, b }, index) => ({
			result,
			scale: scaleOf(result),
			index,
			a,
			b,
			owners,
			whole: owners[0] ?? "all",
			of: (owner, measure) => found.get(key(a, b, owner, measure)),
		}));
}

/** The pair that a and b are, a first: turned round where the result holds it as b against a. */
export function pairBetween(result: CompareResult, a: string, b: string): Pair | undefined {
	const pairs = pairsOf(result);
	const held = pairs.find((pair) => pair.a === a && pair.b === b);
	if (held !== undefined) return held;
	const other = pairs.find((pair) => pair.a === b && pair.b === a);
	if (other === undefined) return undefined;
	return {
		...other,
		a,
		b,
		of: (owner, measure) => {
			const one = other.of(owner, measure);
			return one === undefined ? undefined : turnedRound(one, other.scale);
		},
	};
}

function turnedRound(one: Difference, scale: MeasureScale): Difference {
	const { better } = measureFact(one.measure);
	const turned = {
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
		shareABetter: better === null ? null : better === "higher" ? one.shareBHigher : one.shareAHigher,
	};
	return { ...turned, verdict: verdictWords(turned, scale) };
}

/** Nought stays nought, without a sign. */
const negated = (value: number): number => 0 - value;

/** How the measures of several dressings are put together. */
export const togetherWords =
	"All dressings together: counts, times, volumes and cost added up, of shares the mean, of first canisters the soonest. ";

/** The differences of a pair in the measures asked for, in their order. */
export const askedFor = (pair: Pair, owner = pair.whole): Difference[] =>
	pair.result.measures.flatMap((measure) => pair.of(owner, measure) ?? []);
