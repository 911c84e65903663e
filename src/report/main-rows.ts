import type { CompareResult } from "../analysis/compare-result.ts";
import type { DifferenceRow } from "../charts/index.ts";
import { type Pair, rowOf, togetherWords } from "./compare-parts.ts";
import { fragileSentence, isFragile } from "./fragile.ts";
import { mainDifferences } from "./main-differences.ts";

export interface MainRows {
	readonly heading: string;
	readonly rows: readonly DifferenceRow[];
	/** Whose they are, why these, and what their marks mean. */
	readonly caption: string;
}

/** The differences that matter most between two regimens as rows, those that rest on assumed numbers marked. */
export function mainRows(result: CompareResult, pair: Pair): MainRows {
	const [owner = "all"] = pair.owners;
	const { differences, why } = mainDifferences(result, pair, owner);
	const whose = pair.owners.length > 1 ? togetherWords : "";
	const fragile = differences.some((one) => isFragile(one, result.restsOn));
	const rows = differences.map((one) => rowOf(one, result));
	const warning = fragile ? ` ${fragileSentence}` : "";
	return {
		heading: `${pair.a} against ${pair.b}: what differs most`,
		rows,
		caption: `${whose}${why}${warning}`,
	};
}
