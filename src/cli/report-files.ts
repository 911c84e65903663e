import { JSDOM } from "jsdom";
import type { DayResult } from "../analysis/index.ts";
import {
	dayCalendar,
	dayJson,
	daySvg,
	dayTables,
	reportHtml,
} from "../report/index.ts";

/** Every file of a report, by name. */
export type ReportFiles = Readonly<Record<string, string>>;

export function reportFiles(result: DayResult): ReportFiles {
	const { document } = new JSDOM(
		"<!doctype html><html lang='en'><head></head><body></body></html>",
	).window;
	return {
		"report.html": reportHtml(result, document),
		"day.svg": daySvg(result, document),
		"day.json": dayJson(result),
		"day.ics": dayCalendar(result),
		...dayTables(result),
	};
}
