import {
	clockTime,
	durationWords,
	fullDate,
	plainNumber,
	rehearsalChart,
	timeOfDay,
} from "../charts/index.ts";
import type { Debrief } from "../rehearsal/index.ts";
import { cautionInALine } from "./caution.ts";
import { htmlElement, htmlTable, unbroken } from "./html-element.ts";
import { htmlPage } from "./page.ts";
import { reportStyle } from "./report-style.ts";
import { section } from "./section.ts";

/** Beside the style sheet of reports: tables that scroll in their region rather than break every word. */
const debriefStyle = `@media screen{.done table{min-width:56rem}.hidden table{min-width:36rem}}
`;

/** `report.html` of a rehearsal: the day in sentences, the chart, what was done, and what an orderly search would have been. */
export function debriefHtml(debrief: Debrief, document: Document): string {
	return htmlPage(document, {
		title: `${debrief.case.title}: a debrief`,
		style: `${reportStyle}${debriefStyle}`,
		bodyClass: "one",
		skipTo: "debrief",
		header: header(debrief, document),
		main: [debriefSections(debrief, document)],
	});
}

/** The debrief without a page around it, for one that has a page already. */
export function debriefSections(
	debrief: Debrief,
	document: Document,
): HTMLElement {
	return htmlElement(
		document,
		"section",
		{ class: "dressing", "aria-labelledby": "debrief-heading" },
		htmlElement(document, "h2", { id: "debrief-heading" }, "Debrief"),
		facts(debrief, document),
		line(debrief, document),
		causes(debrief, document),
		log(debrief, document),
		search(debrief, document),
		sources(debrief, document),
	);
}

function header(debrief: Debrief, document: Document): HTMLElement {
	const { case: of } = debrief;
	const ends = {
		"shift-over": "when the shift was over",
		"handed-over": "when a clinician took over",
		left: "when it was left",
	}[of.ended];
	const words = `From ${fullDate(0, of)} ${timeOfDay(0, of)} until ${clockTime(of.endedMin, of)}, ${ends}. Seed ${of.seed}. The same case with the same seed can be run again.`;
	return htmlElement(
		document,
		"header",
		{},
		htmlElement(document, "h1", {}, of.title),
		htmlElement(document, "p", { class: "facts" }, words),
		htmlElement(document, "p", { class: "facts" }, of.brief),
		htmlElement(document, "p", { class: "caution" }, cautionInALine),
	);
}

const listed = (
	document: Document,
	name: "ul" | "ol",
	sentences: readonly string[],
): HTMLElement =>
	htmlElement(
		document,
		name,
		{ class: "plain" },
		...sentences.map((sentence) =>
			htmlElement(document, "li", {}, unbroken(sentence)),
		),
	);

const facts = (debrief: Debrief, document: Document): HTMLElement =>
	section(
		document,
		"debrief-answers",
		"What the day came to",
		null,
		listed(document, "ul", debrief.facts),
	);

const line = (debrief: Debrief, document: Document): HTMLElement =>
	section(
		document,
		"debrief-line",
		"The shift on one axis",
		null,
		htmlElement(
			document,
			"figure",
			{},
			htmlElement(
				document,
				"div",
				{
					class: "scroll",
					role: "region",
					tabindex: "0",
					"aria-label": "Chart of the shift",
				},
				rehearsalChart(debrief, document, {
					idPrefix: "rehearsal",
					styled: false,
					titled: false,
				}),
			),
			htmlElement(
				document,
				"figcaption",
				{},
				"Rings: looks. Framed bars: acts. Hatched bars at the foot: what was hidden. Liquid stands above the line, suction hangs below it.",
			),
		),
	);

function causes(debrief: Debrief, document: Document): HTMLElement {
	const at = (min: number | null) =>
		min === null ? "never" : clockTime(min, debrief.case);
	const took = (min: number | null) =>
		min === null ? "–" : durationWords(min);
	const table = htmlTable(document, {
		id: "debrief-causes",
		caption:
			"Minutes count from when the cause came, whether or not anything showed it.",
		columns: [
			{ heading: "Hidden" },
			{ heading: "Came" },
			{ heading: "First alarm" },
			{ heading: "To notice", numeric: true },
			{ heading: "To find", numeric: true },
			{ heading: "To mend", numeric: true },
		],
		rows: debrief.causes.map((cause) => [
			cause.words,
			at(cause.onsetMin),
			at(cause.signMin),
			took(cause.minutesToNotice),
			took(cause.minutesToFind),
			took(cause.minutesToMend),
		]),
	});
	return section(
		document,
		"debrief-hidden",
		"What was hidden",
		null,
		debrief.causes.length === 0
			? htmlElement(document, "p", {}, "Nothing.")
			: table,
	);
}

function log(debrief: Debrief, document: Document): HTMLElement {
	const table = htmlTable(document, {
		id: "debrief-log",
		caption:
			"What could be believed after each look follows from the model's own probabilities by Bayes' rule, given all that had been seen and done.",
		columns: [
			{ heading: "At" },
			{ heading: "What" },
			{ heading: "Took", numeric: true },
			{ heading: "Answer" },
			{ heading: "Not needed" },
			{ heading: "What could be believed then" },
		],
		rows: debrief.log.map((entry) => [
			unbroken(entry.span),
			`${entry.kind} ${entry.what.replaceAll("-", " ")}`,
			unbroken(durationWords(entry.endMin - entry.startMin)),
			entry.answer,
			entry.needless,
			unbroken(entry.believed),
		]),
	});
	return section(
		document,
		"debrief-done",
		"What was looked at and done",
		null,
		debrief.log.length === 0
			? htmlElement(document, "p", {}, "Nothing.")
			: table,
	);
}

const search = (debrief: Debrief, document: Document): HTMLElement =>
	section(
		document,
		"debrief-search",
		"An orderly search",
		null,
		htmlElement(
			document,
			"p",
			{},
			`Cheapest and likeliest first: each look is the one with the greatest chance of showing a cause for its minutes, after everything seen before it. Nothing of the answer goes into it. ${debrief.search.note}`,
		),
		listed(document, "ol", debrief.search.sentences),
	);

function sources(debrief: Debrief, document: Document): HTMLElement {
	const table = htmlTable(document, {
		id: "debrief-minutes",
		caption: "What each look and act takes, and what chance was taken to be.",
		columns: [
			{ heading: "Name" },
			{ heading: "Value", numeric: true },
			{ heading: "Unit" },
			{ heading: "Provenance" },
			{ heading: "Source" },
		],
		rows: debrief.assumptions.map(
			({ name, value, unit, provenance, source }) => [
				name,
				plainNumber(value, 4),
				unit,
				provenance,
				source,
			],
		),
	});
	return section(
		document,
		"debrief-sources",
		"Where the numbers come from",
		null,
		htmlElement(
			document,
			"p",
			{},
			"Kinks, breaches, clumps and moves come at the rates of the model's assumptions; how often a therapy is left off or a wound bleeds has no rate in the model and is assumed.",
		),
		table,
	);
}
