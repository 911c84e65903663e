import type { AxisName } from "../../src/vocabulary/index.ts";
import { checkCompareCautions, checkDayCautions } from "./catalogue/cautions.ts";
import { armsOf, compareCatalogue } from "./catalogue/compare.ts";
import { compareFiles } from "./catalogue/compare-files.ts";
import { dayCatalogue } from "./catalogue/day.ts";
import { dayEntries, dayFiles } from "./catalogue/day-files.ts";
import { supplyCatalogue } from "./catalogue/supply.ts";
import { checkBundle, supplyEntries, supplyFiles } from "./catalogue/supply-files.ts";
import { sweepCatalogue, sweepFiles } from "./catalogue/sweep.ts";
import { checkPage, type Fault } from "./check.ts";
import { type CsvSaid, checkCalendar, checkCsv } from "./check-files.ts";
import { writtenComparison, writtenDay, writtenSweep, writtenWard } from "./outputs.ts";
import { readCalendar, readCsv } from "./read-files.ts";
import { readHtml } from "./read-html.ts";
import { dressingScopes } from "./scope.ts";

/** Every file of a command against what was derived for it; a file more or less is a fault. */
function checkFiles(written: { readonly [file: string]: string }, said: { readonly [file: string]: CsvSaid }): Fault[] {
	const names = new Set([...Object.keys(written), ...Object.keys(said)]);
	return [...names].flatMap((file) => {
		const [text, derived] = [written[file], said[file]];
		return text === undefined || derived === undefined
			? [
					{
						document: file,
						where: "the file",
						said: text === undefined ? "nothing" : "a file",
						derived: derived === undefined ? "nothing" : "a file",
					},
				]
			: checkCsv(file, readCsv(text), derived);
	});
}

/** What is wrong on the papers of a day. */
export function auditDay(text: string): Fault[] {
	const { scenario, result, html, tables, calendar } = writtenDay(text);
	const scope = { scenario, result };
	return [
		...checkPage("report.html", readHtml(html), dayCatalogue, scope, dressingScopes(scope), scenario),
		...checkDayCautions(scope),
		...checkFiles(tables, dayFiles(scope)),
		...checkCalendar("day.ics", readCalendar(calendar), dayEntries(scope), scenario),
	];
}

/** What is wrong on the papers of a comparison. */
export function auditComparison(text: string, all = false, rests = false): Fault[] {
	const { scenario, result, html, tables, drawings } = writtenComparison(text, all, rests);
	const scope = { scenario, result, drawings };
	return [
		...checkPage("report.html", readHtml(html), compareCatalogue, scope, [], scenario),
		...checkCompareCautions(scope, armsOf(scope)),
		...checkFiles(tables, compareFiles(scope)),
	];
}

/** What is wrong on the papers of a ward. */
export function auditWard(text: string): Fault[] {
	const { scenario, result, html, tables, calendar, bundle } = writtenWard(text);
	const scope = { scenario, result };
	return [
		...checkPage("report.html", readHtml(html), supplyCatalogue, scope, [], { ...scenario, start: scenario.start }),
		...checkFiles(tables, supplyFiles(scope)),
		...checkCalendar("orders.ics", readCalendar(calendar), supplyEntries(scope), scenario),
		...checkBundle(bundle, scope),
	];
}

/** What is wrong on the papers of a grid. */
export function auditSweep(text: string, along: AxisName | null = null): Fault[] {
	const { scenario, result, html, tables } = writtenSweep(text, along);
	const scope = { scenario, result };
	return [
		...checkPage("report.html", readHtml(html), sweepCatalogue, scope, [], scenario),
		...checkFiles(tables, sweepFiles(scope)),
	];
}
