import type { DayResult } from "../analysis/day-result.ts";
import { alarmSection } from "./alarm-section.ts";
import { cautionInALine } from "./caution.ts";
import {
	cautionsSection,
	dayFacts,
	sourcesSection,
	suppliesSection,
} from "./common-sections.ts";
import {
	type DressingParts,
	dressingParts,
	headingOf,
	idOf,
} from "./dressing-parts.ts";
import { htmlElement } from "./html-element.ts";
import { overviewSection } from "./overview-section.ts";
import { htmlPage } from "./page.ts";
import { planSection } from "./plan-section.ts";
import { reportStyle } from "./report-style.ts";
import { section } from "./section.ts";
import { sheetSections } from "./sheet-section.ts";
import { sheetStyle } from "./sheet-style.ts";
import { spanWords } from "./span-words.ts";
import { totalsTable } from "./totals-table.ts";

/** `report.html` of a day. */
export function reportHtml(result: DayResult, document: Document): string {
	const all = dressingParts(result);
	return htmlPage(document, {
		title: `${result.scenario.title}: a therapy day`,
		style: `${reportStyle}${sheetStyle}`,
		bodyClass: all.length > 1 ? "several" : "one",
		skipTo: "answers",
		header: header(result, document),
		main: [
			...(all.length > 1
				? [
						overviewSection(result, all, document),
						togetherSection(result, document),
					]
				: []),
			...all.map((parts) => dressingSection(result, parts, document)),
			commonSection(result, document),
		],
	});
}

function header(result: DayResult, document: Document): HTMLElement {
	const { scenario, projection } = result;
	const many =
		projection.replications === 1
			? "1 replication"
			: `${projection.replications} replications`;
	const facts = `${spanWords(scenario)} ${many}, chance ${scenario.chance}.`;
	return htmlElement(
		document,
		"header",
		{},
		htmlElement(document, "h1", {}, scenario.title),
		htmlElement(document, "p", { class: "facts" }, facts),
		htmlElement(document, "p", { class: "caution" }, cautionInALine),
	);
}

function dressingSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement {
	const id = idOf(parts);
	const totals = totalsTable(
		document,
		{ id: `${id}-totals`, under: headingOf(parts) },
		parts.day.totals,
		parts.projection.totals,
		result.projection.replications,
	);
	return htmlElement(
		document,
		"section",
		{ class: "dressing", id, "aria-labelledby": headingOf(parts) },
		...sheetSections(result, parts, document),
		alarmSection(result, parts, document),
		section(document, `${id}-totals`, "Totals", headingOf(parts), totals),
	);
}

/** Of several dressings, what they need together: with their overview it is the first page. */
const togetherSection = (result: DayResult, document: Document): HTMLElement =>
	htmlElement(
		document,
		"section",
		{ class: "together", "aria-labelledby": "together-heading" },
		htmlElement(document, "h2", { id: "together-heading" }, "Together"),
		...needed(result, document),
	);

const needed = (result: DayResult, document: Document) => [
	planSection(result, document),
	suppliesSection(result, document),
];

const commonSection = (result: DayResult, document: Document): HTMLElement =>
	htmlElement(
		document,
		"section",
		{ class: "common", "aria-labelledby": "common-heading" },
		htmlElement(document, "h2", { id: "common-heading" }, "For all of it"),
		...(result.scenario.dressings.length > 1 ? [] : needed(result, document)),
		cautionsSection(result, document),
		sourcesSection(dayFacts(result), result.assumptions, document),
	);
