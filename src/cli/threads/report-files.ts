import { JSDOM } from "jsdom";
import {
	compareHtml,
	compareSvg,
	compareTables,
	dayCalendar,
	daySvg,
	dayTables,
	debriefHtml,
	reportHtml,
	supplyBundle,
	supplyCalendar,
	supplyHtml,
	supplyTables,
	sweepHtml,
	sweepSvg,
	sweepTables,
} from "../../report/index.ts";
import {
	type CompareDrawings,
	type CompareResult,
	compareJson,
	type DayResult,
	type Debrief,
	dayJson,
	debriefJson,
	type SupplyResult,
	type SweepResult,
	supplyJson,
	sweepJson,
} from "../../results/index.ts";

/** Every file of a report, by name. */
export type ReportFiles = Readonly<Record<string, string>>;

/** What a report is to be written of. */
export type ReportOrder =
	| { readonly kind: "day"; readonly result: DayResult }
	| { readonly kind: "compare"; readonly result: CompareResult; readonly drawings: CompareDrawings }
	| { readonly kind: "sweep"; readonly result: SweepResult }
	| { readonly kind: "supply"; readonly result: SupplyResult }
	| { readonly kind: "drill"; readonly result: Debrief };

export function reportFiles(order: ReportOrder): ReportFiles {
	/** Lends its elements to the report. */
	const { document } = new JSDOM("<!doctype html><html lang='en'><head></head><body></body></html>").window;
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
		case "supply":
			return {
				"report.html": supplyHtml(order.result, document),
				"supply.json": supplyJson(order.result),
				"orders.ics": supplyCalendar(order.result),
				"requests.fhir.json": supplyBundle(order.result),
				...supplyTables(order.result),
			};
		case "drill":
			return { "report.html": debriefHtml(order.result, document), "debrief.json": debriefJson(order.result) };
	}
}
