import { JSDOM } from "jsdom";
import type { Debrief } from "../rehearsal/index.ts";
import { debriefHtml, debriefJson } from "../report/index.ts";
import type { ReportFiles } from "./report-files.ts";

/** Every file of a debrief, by name. */
export function debriefFiles(debrief: Debrief): ReportFiles {
	const { document } = new JSDOM(
		"<!doctype html><html lang='en'><head></head><body></body></html>",
	).window;
	return {
		"report.html": debriefHtml(debrief, document),
		"debrief.json": debriefJson(debrief),
	};
}
