import type { CompareResult } from "../../results/index.ts";
import { measuresAsRead } from "../../vocabulary/index.ts";
import { scaleOf } from "../../words/index.ts";
import { assumptionColumns } from "../kit/closing-chapter.ts";
import { csvTable } from "../kit/csv-table.ts";
import { differenceColumns, withDigits } from "./difference-section.ts";

/** One table a file, by file name. Means and differences (a − b) are per horizon; `rests-on.csv` where that was looked into. */
export function compareTables(result: CompareResult): { readonly [fileName: string]: string } {
	return {
		"differences.csv": csvTable(
			differenceColumns({ a: "a", b: "b", scale: scaleOf(result) }),
			withDigits(result.differences, result),
		),
		"regimens.csv": regimens(result),
		...(result.restsOn === null ? {} : { "rests-on.csv": restsOn(result.restsOn) }),
		"assumptions.csv": csvTable(assumptionColumns, result.assumptions),
	};
}

const settings = ["begin", "depthMmHg", "fillMl", "dwellMin", "suctionMin", "drawdown"] as const;

/** A row a regimen, dressing and measure: how it is set, and what it comes to. */
const regimens = (result: CompareResult): string =>
	csvTable(
		[
			{ key: "regimen", value: ({ name }) => name },
			{ key: "dressing", value: ({ id }) => id },
			...settings.map((key) => ({ key, value: ({ regimen }: RegimenRow) => regimen?.[key] ?? null })),
			...(["canisterMl", "sourceMl", "measure", "mean", "halfWidth95", "p10", "p50", "p90"] as const),
		],
		result.regimens.flatMap(({ name, dressings }) => dressings.flatMap((dressing) => regimenRows(name, dressing))),
	);

type RegimenRow = ReturnType<typeof regimenRows>[number];

const regimenRows = (name: string, dressing: CompareResult["regimens"][number]["dressings"][number]) =>
	measuresAsRead.flatMap((measure) => {
		const spread = dressing.measures[measure];
		return spread === undefined ? [] : [{ ...dressing, name, measure, ...spread }];
	});

const restsOn = ({ a, b, rows }: NonNullable<CompareResult["restsOn"]>): string =>
	csvTable(
		[
			...(["a", "b", "name", "meaning", "value", "unit", "provenance"] as const),
			...(["dressing", "measure", "base", "half", "twice", "without", "turns", "hangs"] as const),
		],
		rows.flatMap((row) => row.effects.map((effect) => ({ a, b, ...row, ...effect }))),
	);
