import { rehearsalChart } from "../../charts/index.ts";
import type { Debrief } from "../../results/index.ts";
import { clockTime, durationWords, fullDate, plainNumber, timeOfDay } from "../../words/index.ts";
import { chartFigure, onPage } from "../kit/chart-figure.ts";
import { type HtmlMaker, htmlMaker, section, unbroken } from "../kit/html-element.ts";
import { htmlPage } from "../kit/page.ts";
import { reportStyle } from "../kit/report-style.ts";
import { type Column, htmlTable, shownNumber } from "../kit/table.ts";

/** Beside the style sheet of reports: tables that scroll in their region rather than break every word. */
const debriefStyle = `@media screen{.done table{min-width:56rem}.hidden table{min-width:36rem}}
`;

/** `report.html` of a rehearsal: the day in sentences, the chart, what was done, and what an orderly search would have been. */
export function debriefHtml(debrief: Debrief, document: Document): string {
	const html = htmlMaker(document);
	const { case: of } = debrief;
	const ends = {
		"shift-over": "when the shift was over",
		"handed-over": "when a clinician took over",
		left: "when it was left",
	}[of.ended];
	const span = `From ${fullDate(0, of)} ${timeOfDay(0, of)} until ${clockTime(of.endedMin, of)}, ${ends}. Seed ${of.seed}. The same case with the same seed can be run again.`;
	return htmlPage(html, {
		title: `${of.title}: a debrief`,
		style: `${reportStyle}${debriefStyle}`,
		bodyClass: "one",
		skipTo: "debrief",
		heading: of.title,
		facts: [span, of.brief],
		main: [debriefSections(html, debrief)],
	});
}

/** The debrief without a page around it, for one that has a page already. */
export const debriefSections = (html: HtmlMaker, debrief: Debrief): HTMLElement =>
	html(
		"section",
		{ class: "dressing", "aria-labelledby": "debrief-heading" },
		html("h2", { id: "debrief-heading" }, "Debrief"),
		section(html, "debrief-answers", "What the day came to", null, sentenceList(html, "ul", debrief.facts)),
		shiftSection(html, debrief),
		hiddenSection(html, debrief),
		doneSection(html, debrief),
		searchSection(html, debrief),
		minutesSection(html, debrief),
	);

const sentenceList = (html: HtmlMaker, name: "ul" | "ol", sentences: readonly string[]): HTMLElement =>
	html(name, { class: "plain" }, ...sentences.map((sentence) => html("li", {}, unbroken(sentence))));

function shiftSection(html: HtmlMaker, debrief: Debrief): HTMLElement {
	const chart = rehearsalChart(debrief, html.document, onPage("rehearsal"));
	const caption =
		"Rings: looks. Framed bars: acts. Hatched bars at the foot: what was hidden. Liquid stands above the line, suction hangs below it.";
	const figure = chartFigure(html, chart, "Chart of the shift", caption);
	return section(html, "debrief-line", "The shift on one axis", null, figure);
}

function hiddenSection(html: HtmlMaker, debrief: Debrief): HTMLElement {
	const at = (min: number | null) => (min === null ? "never" : clockTime(min, debrief.case));
	const took = (min: number | null) => (min === null ? "–" : durationWords(min));
	const caption = "Minutes count from when the cause came, whether or not anything showed it.";
	const columns: Column<Debrief["causes"][number]>[] = [
		{ head: "Hidden", written: ({ words }) => words },
		{ head: "Came", written: ({ onsetMin }) => at(onsetMin) },
		{ head: "First alarm", written: ({ signMin }) => at(signMin) },
		shownNumber("To notice", ({ minutesToNotice }) => took(minutesToNotice)),
		shownNumber("To find", ({ minutesToFind }) => took(minutesToFind)),
		shownNumber("To mend", ({ minutesToMend }) => took(minutesToMend)),
	];
	const table = htmlTable(html, { id: "debrief-causes", caption }, columns, debrief.causes);
	return section(html, "debrief-hidden", "What was hidden", null, debrief.causes.length === 0 ? "Nothing." : table);
}

function doneSection(html: HtmlMaker, { log }: Debrief): HTMLElement {
	const caption =
		"What could be believed after each look follows from the model's own probabilities by Bayes' rule, given all that had been seen and done.";
	const columns: Column<Debrief["log"][number]>[] = [
		{ head: "At", written: ({ span }) => unbroken(span) },
		{ head: "What", written: ({ kind, what }) => `${kind} ${what.replaceAll("-", " ")}` },
		shownNumber("Took", ({ startMin, endMin }) => unbroken(durationWords(endMin - startMin))),
		{ head: "Answer", written: ({ answer }) => answer },
		{ head: "Not needed", written: ({ needless }) => needless },
		{ head: "What could be believed then", written: ({ believed }) => unbroken(believed) },
	];
	const table = htmlTable(html, { id: "debrief-log", caption }, columns, log);
	return section(html, "debrief-done", "What was looked at and done", null, log.length === 0 ? "Nothing." : table);
}

function searchSection(html: HtmlMaker, { search }: Debrief): HTMLElement {
	const words = `Cheapest and likeliest first: each look is the one with the greatest chance of showing a cause for its minutes, after everything seen before it. Nothing of the answer goes into it. ${search.note}`;
	const list = sentenceList(html, "ol", search.sentences);
	return section(html, "debrief-search", "An orderly search", null, html("p", {}, words), list);
}

function minutesSection(html: HtmlMaker, { assumptions }: Debrief): HTMLElement {
	const words =
		"Kinks, breaches, clumps and moves come at the rates of the model's assumptions; how often a therapy is left off or a wound bleeds has no rate in the model and is assumed.";
	const caption = "What each look and act takes, and what chance was taken to be.";
	const columns: Column<Debrief["assumptions"][number]>[] = [
		{ head: "Name", written: ({ name }) => name },
		shownNumber("Value", ({ value }) => plainNumber(value, 4)),
		{ head: "Unit", written: ({ unit }) => unit },
		{ head: "Provenance", written: ({ provenance }) => provenance },
		{ head: "Source", written: ({ source }) => source },
	];
	const table = htmlTable(html, { id: "debrief-minutes", caption }, columns, assumptions);
	return section(html, "debrief-sources", "Where the numbers come from", null, words, table);
}
