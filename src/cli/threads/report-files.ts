import { JSDOM } from "jsdom";
import * as report from "../../report/index.ts";
import * as results from "../../results/index.ts";

/** Every file of a report, by name. */
export type ReportFiles = Readonly<Record<string, string>>;

/** What a report is to be written of. */
export type ReportOrder =
	| { readonly kind: "day"; readonly result: results.DayResult }
	| { readonly kind: "compare"; readonly result: results.CompareResult; readonly drawings: results.CompareDrawings }
	| { readonly kind: "sweep"; readonly result: results.SweepResult }
	| { readonly kind: "supply"; readonly result: results.SupplyResult }
	| { readonly kind: "drill"; readonly result: results.Debrief };

export function reportFiles(order: ReportOrder): ReportFiles {
	/** Lends its elements to the report. */
	const { document } = new JSDOM("<!doctype html><html lang='en'><head></head><body></body></html>").window;
	switch (order.kind) {
		case "day":
			return {
				"report.html": report.reportHtml(order.result, document),
				"day.svg": report.daySvg(order.result, document),
				"day.json": results.dayJson(order.result),
				"day.ics": report.dayCalendar(order.result),
				...report.dayTables(order.result),
			};
		case "compare":
			return {
				"report.html": report.compareHtml(order.result, order.drawings, document),
				"differences.svg": report.compareSvg(order.result, document),
				"compare.json": results.compareJson(order.result),
				...report.compareTables(order.result),
			};
		case "sweep":
			return {
				"report.html": report.sweepHtml(order.result, document),
				"sweep.svg": report.sweepSvg(order.result, document),
				"sweep.json": results.sweepJson(order.result),
				...report.sweepTables(order.result),
			};
		case "supply":
			return {
				"report.html": report.supplyHtml(order.result, document),
				"supply.json": results.supplyJson(order.result),
				"orders.ics": report.supplyCalendar(order.result),
				"requests.fhir.json": report.supplyBundle(order.result),
				...report.supplyTables(order.result),
			};
		case "drill":
			return {
				"report.html": report.debriefHtml(order.result, document),
				"debrief.json": results.debriefJson(order.result),
			};
	}
}
