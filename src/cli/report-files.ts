import type {
	CompareDrawings,
	CompareResult,
	DayResult,
	SweepResult,
} from "../analysis/index.ts";
import {
	compareHtml,
	compareJson,
	compareSvg,
	compareTables,
	dayCalendar,
	dayJson,
	daySvg,
	dayTables,
	reportHtml,
	sweepHtml,
	sweepJson,
	sweepSvg,
	sweepTables,
} from "../report/index.ts";
import { blankDocument } from "./blank-document.ts";

/** Every file of a report, by name. */
export type ReportFiles = Readonly<Record<string, string>>;

/** What a report is to be written of. */
export type ReportOrder =
	| { readonly kind: "day"; readonly result: DayResult }
	| {
			readonly kind: "compare";
			readonly result: CompareResult;
			readonly drawings: CompareDrawings;
	  }
	| { readonly kind: "sweep"; readonly result: SweepResult };

export function reportFiles(order: ReportOrder): ReportFiles {
	const document = blankDocument();
	switch (order.kind) {
		case "day":
			return {
				"report.html": reportHtml(order.result, document),
				"day.svg": daySvg(order.result, document),
				"day.json": dayJson(order.result),
				"day.ics": dayCalendar(order.result),
				...dayTables(order.result),
			};
		case "compare":
			return {
				"report.html": compareHtml(order.result, order.drawings, document),
				"differences.svg": compareSvg(order.result, document),
				"compare.json": compareJson(order.result),
				...compareTables(order.result),
			};
		case "sweep":
			return {
				"report.html": sweepHtml(order.result, document),
				"sweep.svg": sweepSvg(order.result, document),
				"sweep.json": sweepJson(order.result),
				...sweepTables(order.result),
			};
	}
}
