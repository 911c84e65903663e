import type { SupplyResult } from "../../results/index.ts";
import { durationWords, fullDate, timeOfDay } from "../../words/index.ts";
import { cautionsSection, sourcesSection } from "../kit/closing-chapter.ts";
import { type HtmlMaker, htmlMaker } from "../kit/html-element.ts";
import { htmlPage } from "../kit/page.ts";
import { reportStyle } from "../kit/report-style.ts";
import { section, sentenceList } from "../kit/section.ts";
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
	return htmlPage(html, {
		title: `${result.scenario.title}: stores`,
		style: `${reportStyle}\n${supplyRules}`,
		bodyClass: "one",
		skipTo: "answers",
		heading: result.scenario.title,
		facts: [supplyFacts(result)],
		main: [
			html(
				"section",
				{ class: "common", "aria-labelledby": "stores-heading" },
				html("h2", { id: "stores-heading" }, "The stores"),
				...supplySections.map((section) => section(html, result)),
			),
		],
	});
}

/** One part of a ward's report; null where there is nothing to say. */
export type SupplySection = (html: HtmlMaker, result: SupplyResult, drawing?: SupplyDrawing) => HTMLElement | null;

/** Everything that is said of a ward's weeks, in the order of the report. */
export const supplySections: readonly SupplySection[] = [
	answersSection,
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
	const warm =
		scenario.warmUpMin === 0 ? "" : ` ${durationWords(scenario.warmUpMin)} of warm-up before it are left out.`;
	return `From ${fullDate(0, scenario)} ${timeOfDay(0, scenario)} for ${scenario.days} days.${warm} ${scenario.replications} replications, chance ${scenario.chance}.`;
}

function answersSection(html: HtmlMaker, result: SupplyResult): HTMLElement {
	return section(html, "answers", "Answers", null, sentenceList(html, supplyAnswers(result)));
}

function supplySources(html: HtmlMaker, { scenario, trace, format, assumptions }: SupplyResult): HTMLElement {
	return sourcesSection(
		html,
		[
			["Seed", scenario.seed],
			["Replications", `${scenario.replications}, chance ${scenario.chance}`],
			["Version", `slackwater ${scenario.version}, ${format}`],
			["Trace of the first replication", `${trace.events} events, ${trace.hash}`],
		],
		assumptions,
	);
}
