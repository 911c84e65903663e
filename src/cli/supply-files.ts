import { JSDOM } from "jsdom";
import type { SupplyResult } from "../analysis/index.ts";
import {
	supplyBundle,
	supplyCalendar,
	supplyHtml,
	supplyJson,
	supplyTables,
} from "../report/index.ts";

/** Every file of a ward's report, by name. */
export function supplyFiles(
	result: SupplyResult,
): Readonly<Record<string, string>> {
	const { document } = new JSDOM(
		"<!doctype html><html lang='en'><head></head><body></body></html>",
	).window;
	return {
		"report.html": supplyHtml(result, document),
		"supply.json": supplyJson(result),
		"orders.ics": supplyCalendar(result),
		"requests.fhir.json": supplyBundle(result),
		...supplyTables(result),
	};
}
