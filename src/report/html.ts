import type { DayResult } from "../analysis/day-result.ts";
import {
	clockTime,
	durationWords,
	fullDate,
	timeOfDay,
} from "../charts/index.ts";
import { alarmSection } from "./alarm-section.ts";
import { cautionInALine, cautionSentences } from "./caution.ts";
import {
	cautionsSection,
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
import { reportPolicy, reportStyle } from "./report-style.ts";
import { section } from "./section.ts";
import { sheetSection } from "./sheet-section.ts";
import { totalsTable } from "./totals-table.ts";

/** `report.html` as one file: no script, no outside request; the document only lends its elements. */
export function reportHtml(result: DayResult, document: Document): string {
	const all = dressingParts(result);
	const page = htmlElement(
		document,
		"html",
		{ lang: "en" },
		head(result, document),
		htmlElement(
			document,
			"body",
			{ class: all.length > 1 ? "several" : "one" },
			htmlElement(
				document,
				"a",
				{ class: "skip", href: "#main" },
				"Skip to the answers",
			),
			header(result, document),
			htmlElement(
				document,
				"main",
				{ id: "main" },
				all.length > 1 ? overviewSection(result, all, document) : null,
				...all.map((parts) => dressingSection(result, parts, document)),
				commonSection(result, document),
			),
			htmlElement(
				document,
				"footer",
				{},
				...cautionSentences.map((sentence) =>
					htmlElement(document, "p", {}, sentence),
				),
			),
		),
	);
	return `<!DOCTYPE html>\n${page.outerHTML}\n`;
}

const head = (result: DayResult, document: Document): HTMLElement =>
	htmlElement(
		document,
		"head",
		{},
		htmlElement(document, "meta", { charset: "utf-8" }),
		htmlElement(document, "meta", {
			"http-equiv": "Content-Security-Policy",
			content: reportPolicy,
		}),
		htmlElement(document, "meta", {
			name: "viewport",
			content: "width=device-width, initial-scale=1",
		}),
		htmlElement(document, "meta", {
			name: "color-scheme",
			content: "light dark",
		}),
		htmlElement(
			document,
			"title",
			{},
			`${result.scenario.title}: a therapy day`,
		),
		htmlElement(document, "style", {}, reportStyle),
	);

function header(result: DayResult, document: Document): HTMLElement {
	const { scenario, projection } = result;
	const many =
		projection.replications === 1
			? "1 replication"
			: `${projection.replications} replications`;
	const facts = `From ${fullDate(0, scenario)} ${timeOfDay(0, scenario)} for ${durationWords(scenario.horizonMin)}, until ${clockTime(scenario.horizonMin, scenario)}. ${many}, chance ${scenario.chance}.`;
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
		sheetSection(result, parts, document),
		alarmSection(result, parts, document),
		section(document, `${id}-totals`, "Totals", headingOf(parts), totals),
	);
}

const commonSection = (result: DayResult, document: Document): HTMLElement =>
	htmlElement(
		document,
		"section",
		{ class: "common", "aria-labelledby": "common-heading" },
		htmlElement(document, "h2", { id: "common-heading" }, "For all of it"),
		suppliesSection(result, document),
		cautionsSection(result, document),
		sourcesSection(result, document),
	);
