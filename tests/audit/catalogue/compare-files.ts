import type { Dressing } from "../../../src/scenario/index.ts";
import type { CsvSaid } from "../check-files.ts";
import { placed } from "../scope.ts";
import { treated } from "./compare.ts";
import { assumptionsCsv } from "./day-files.ts";
import type { CompareScope } from "./differences.ts";

/** The CSV files of a comparison; how a regimen is set is read from the scenario, not from the result. */
export function compareFiles({ scenario, result }: CompareScope): { readonly [file: string]: CsvSaid } {
	const { restsOn } = result;
	return {
		"differences.csv": {
			head: [
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
			rows: result.differences.map((one) => [
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
		},
		"regimens.csv": {
			head: [
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
			rows: result.regimens.flatMap(({ name, dressings }) =>
				dressings.flatMap(({ id, measures }) => {
					const patch = placed(
						scenario.compare.filter((one) => one.name === name),
						0,
					);
					const all = scenario.dressings
						.filter((one) => id === "all" || one.id === id)
						.map((one) => treated(one, patch));
					/** Of all together only what all have. */
					const shared = <T>(of: (dressing: Dressing) => T): T | null => {
						const first = of(placed(all, 0));
						const key = JSON.stringify(first);
						return all.every((one) => JSON.stringify(of(one)) === key) ? first : null;
					};
					const first = shared(({ regimens }) => placed(regimens, 0));
					const fills = first !== null && first.fillMl > 0;
					const settings = [
						first?.begin ?? null,
						first?.depthMmHg ?? null,
						first?.fillMl ?? null,
						fills ? first.dwellMin : null,
						fills ? first.suctionMin : null,
						first?.drawdown ?? null,
						shared(({ canisterMl }) => canisterMl),
						shared(({ sourceMl }) => sourceMl),
					];
					return Object.entries(measures).map(([measure, spread]) => [
						name,
						id,
						...settings,
						measure,
						spread?.mean ?? null,
						spread?.halfWidth95 ?? null,
						spread?.p10 ?? null,
						spread?.p50 ?? null,
						spread?.p90 ?? null,
					]);
				}),
			),
		},
		...(restsOn === null
			? {}
			: {
					"rests-on.csv": {
						head: [
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
						rows: restsOn.rows.flatMap((row) =>
							row.effects.map((effect) => [
								restsOn.a,
								restsOn.b,
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
					},
				}),
		"assumptions.csv": assumptionsCsv(result.assumptions),
	};
}
