import type { CompareResult } from "../analysis/compare-result.ts";
import type { DifferenceRow } from "../charts/index.ts";
import { compareScale, type Pair, rowOf } from "./compare-parts.ts";
import { isFragile } from "./fragile.ts";
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
	const scale = compareScale(result);
	const whose = pair.owners.length > 1 ? "All dressings together. " : "";
	const fragile = differences.filter((one) => isFragile(one, result.restsOn));
	const rows = differences.map((one) => {
		const row = rowOf(one, scale);
		return fragile.includes(one)
			? { ...row, verdict: `${row.verdict}; rests on assumed numbers` }
			: row;
	});
	const warning =
		fragile.length === 0
			? ""
			: " What rests on assumed numbers is lost or turned round at half or at twice one of them: see What the answer rests on.";
	return {
		heading: `${pair.a} against ${pair.b}: what differs most`,
		rows,
		caption: `${whose}${why}${warning}`,
	};
}
