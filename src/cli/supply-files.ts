import type { SupplyResult } from "../analysis/index.ts";
import {
	supplyBundle,
	supplyCalendar,
	supplyHtml,
	supplyJson,
	supplyTables,
} from "../report/index.ts";
import { blankDocument } from "./blank-document.ts";
import type { ReportFiles } from "./report-files.ts";

/** Every file of a ward's report, by name. */
export function supplyFiles(result: SupplyResult): ReportFiles {
	const document = blankDocument();
	return {
		"report.html": supplyHtml(result, document),
		"supply.json": supplyJson(result),
		"orders.ics": supplyCalendar(result),
		"requests.fhir.json": supplyBundle(result),
		...supplyTables(result),
	};
}
