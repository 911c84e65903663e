import type { Debrief } from "../rehearsal/index.ts";
import { debriefHtml, debriefJson } from "../report/index.ts";
import { blankDocument } from "./blank-document.ts";
import type { ReportFiles } from "./report-files.ts";

/** Every file of a debrief, by name. */
export function debriefFiles(debrief: Debrief): ReportFiles {
	const document = blankDocument();
	return {
		"report.html": debriefHtml(debrief, document),
		"debrief.json": debriefJson(debrief),
	};
}
