import type { SupplyResult } from "../analysis/supply-result.ts";
import { cautionInALine } from "./caution.ts";
import { htmlElement } from "./html-element.ts";
import { htmlPage } from "./page.ts";
import { reportStyle } from "./report-style.ts";
import { supplyFacts, supplySections } from "./supply-sections.ts";

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
	const element = htmlElement.bind(null, document);
	return htmlPage(document, {
		title: `${result.scenario.title}: stores`,
		style: `${reportStyle}\n${supplyRules}`,
		bodyClass: "one",
		skipTo: "answers",
		header: element(
			"header",
			{},
			element("h1", {}, result.scenario.title),
			element("p", { class: "facts" }, supplyFacts(result)),
			element("p", { class: "caution" }, cautionInALine),
		),
		main: [
			element(
				"section",
				{ class: "common", "aria-labelledby": "stores-heading" },
				element("h2", { id: "stores-heading" }, "The stores"),
				...supplySections.map((section) => section(result, document)),
			),
		],
	});
}
