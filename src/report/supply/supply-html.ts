import type { SupplyResult } from "../../results/index.ts";
import { durationWords, fullDate, timeOfDay } from "../../words/index.ts";
import { cautionsSection, type Facts, sourcesSection } from "../kit/closing-chapter.ts";
import { type HtmlMaker, htmlMaker, section, sentenceList } from "../kit/html-element.ts";
import { htmlPage } from "../kit/page.ts";
import { reportStyle } from "../kit/report-style.ts";
import { supplyAnswers } from "./answers.ts";
import { bedsSection, type SupplyDrawing, stockSection } from "./band-sections.ts";
import { costSection, policiesSection } from "./cost-sections.ts";
import { demandSection } from "./demand-section.ts";
import { orderSheet } from "./order-list.ts";
import { rulesSection } from "./rules-section.ts";
import { kindsSection, nursesSection, wasteSection } from "./ward-sections.ts";

/** What the stores add to the style sheet of a report: the order list is a sheet of its own on paper. */
export const supplyRules = `.orders td:nth-child(2){min-width:8.5rem}
.orders tbody th{white-space:nowrap}
.orders th,.orders td{padding-right:.8rem}
.orders th:last-child{min-width:3.5rem}
.rules th,.rules td{padding-right:.8rem}
.rules thead .number{white-space:normal}
.rules td:last-child{min-width:9rem}
.bands figure+figure{margin-top:1.25rem}
@media print{.orders{break-before:page;break-after:page}.bands figure{break-inside:avoid}}
`;

/** `report.html` of a ward's weeks. */
export function supplyHtml(result: SupplyResult, document: Document): string {
	const html = htmlMaker(document);
	const heading = html("h2", { id: "stores-heading" }, "The stores");
	const sections = supplySections.map((section) => section(html, result));
	return htmlPage(html, {
		title: `${result.scenario.title}: stores`,
		style: `${reportStyle}\n${supplyRules}`,
		bodyClass: "one",
		skipTo: "answers",
		heading: result.scenario.title,
		facts: [supplyFacts(result)],
		main: [html("section", { class: "common", "aria-labelledby": "stores-heading" }, heading, ...sections)],
	});
}

/** One part of a ward's report; null where there is nothing to say. */
export type SupplySection = (html: HtmlMaker, result: SupplyResult, drawing?: SupplyDrawing) => HTMLElement | null;

/** Everything that is said of a ward's weeks, in the order of the report. */
export const supplySections: readonly SupplySection[] = [
	(html, result) => section(html, "answers", "Answers", null, sentenceList(html, supplyAnswers(result))),
	orderSheet,
	stockSection,
	demandSection,
	rulesSection,
	costSection,
	policiesSection,
	nursesSection,
	wasteSection,
	kindsSection,
	bedsSection,
	cautionsSection,
	supplySources,
];

/** When, how long and how often: the line under the title. */
export function supplyFacts({ scenario }: SupplyResult): string {
	const { warmUpMin, days, replications, chance } = scenario;
	const warm = warmUpMin === 0 ? "" : ` ${durationWords(warmUpMin)} of warm-up before it are left out.`;
	return `From ${fullDate(0, scenario)} ${timeOfDay(0, scenario)} for ${days} days.${warm} ${replications} replications, chance ${chance}.`;
}

function supplySources(html: HtmlMaker, { scenario, trace, format, assumptions }: SupplyResult): HTMLElement {
	const facts: Facts = [
		["Seed", scenario.seed],
		["Replications", `${scenario.replications}, chance ${scenario.chance}`],
		["Version", `slackwater ${scenario.version}, ${format}`],
		["Trace of the first replication", `${trace.events} events, ${trace.hash}`],
	];
	return sourcesSection(html, facts, assumptions);
}
