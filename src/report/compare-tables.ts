import type { CompareResult } from "../analysis/compare-result.ts";
import { assumptionsTable, csvTable } from "./csv-table.ts";
import { measureNames } from "./measure-words.ts";

/** One table a file, by file name. Means and differences (a − b) are per horizon; `rests-on.csv` where that was looked into. */
export function compareTables(result: CompareResult): {
	readonly [fileName: string]: string;
} {
	return {
		"differences.csv": differences(result),
		"regimens.csv": regimens(result),
		...(result.restsOn === null
			? {}
			: { "rests-on.csv": restsOn(result.restsOn) }),
		"assumptions.csv": assumptionsTable(result.assumptions),
	};
}

const differences = (result: CompareResult): string =>
	csvTable(
		[
			"a",
			"b",
			"dressing",
			"measure",
			"unit",
			"meanA",
			"meanB",
			"mean",
			"low95",
			"high95",
			"replications",
			"shareAHigher",
			"shareBHigher",
			"shareABetter",
			"variancePaired",
			"varianceIndependent",
			"kind",
			"verdict",
		],
		result.differences.map((one) => [
			one.a,
			one.b,
			one.dressing,
			one.measure,
			one.unit,
			one.meanA,
			one.meanB,
			one.mean,
			one.low95,
			one.high95,
			one.replications,
			one.shareAHigher,
			one.shareBHigher,
			one.shareABetter,
			one.variance.paired,
			one.variance.independent,
			one.kind,
			one.verdict,
		]),
	);

/** A row a regimen, dressing and measure: how it is set, and what it comes to. */
const regimens = (result: CompareResult): string =>
	csvTable(
		[
			"regimen",
			"dressing",
			"begin",
			"depthMmHg",
			"fillMl",
			"dwellMin",
			"suctionMin",
			"drawdown",
			"canisterMl",
			"sourceMl",
			"measure",
			"mean",
			"halfWidth95",
			"p10",
			"p50",
			"p90",
		],
		result.regimens.flatMap(({ name, dressings }) =>
			dressings.flatMap((dressing) => {
				const first = dressing.regimen;
				return measureNames.flatMap((measure) => {
					const spread = dressing.measures[measure];
					if (spread === undefined) return [];
					return [
						[
							name,
							dressing.id,
							first?.begin ?? null,
							first?.depthMmHg ?? null,
							first?.fillMl ?? null,
							first?.dwellMin ?? null,
							first?.suctionMin ?? null,
							first?.drawdown ?? null,
							dressing.canisterMl,
							dressing.sourceMl,
							measure,
							spread.mean,
							spread.halfWidth95,
							spread.p10,
							spread.p50,
							spread.p90,
						],
					];
				});
			}),
		),
	);

const restsOn = ({
	a,
	b,
	rows,
}: NonNullable<CompareResult["restsOn"]>): string =>
	csvTable(
		[
			"a",
			"b",
			"name",
			"meaning",
			"value",
			"unit",
			"provenance",
			"dressing",
			"measure",
			"base",
			"half",
			"twice",
			"without",
			"turns",
			"hangs",
		],
		rows.flatMap((row) =>
			row.effects.map((effect) => [
				a,
				b,
				row.name,
				row.meaning,
				row.value,
				row.unit,
				row.provenance,
				effect.dressing,
				effect.measure,
				effect.base,
				effect.half,
				effect.twice,
				effect.without,
				effect.turns,
				effect.hangs,
			]),
		),
	);
