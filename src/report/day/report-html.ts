import { sparkline } from "../../charts/index.ts";
import type { DayResult } from "../../results/index.ts";
import { counted, regimenLine, spanWords } from "../../words/index.ts";
import { cautionLines, cautionsSection, dayFacts, sourcesSection } from "../kit/closing-chapter.ts";
import { type HtmlMaker, htmlMaker, section, sentenceNodes, sheetPart } from "../kit/html-element.ts";
import { htmlPage } from "../kit/page.ts";
import { reportStyle } from "../kit/report-style.ts";
import { alarmSection } from "./alarm-section.ts";
import { alarmAnswer } from "./answers/answers.ts";
import { canisterAnswer } from "./answers/change-answers.ts";
import { type DressingParts, dressingParts } from "./dressing/dressing-parts.ts";
import { planSection, suppliesSection } from "./plan-section.ts";
import { sheetSections } from "./sheet/sheet-sections.ts";
import { sheetStyle } from "./sheet/sheet-style.ts";
import { totalsTable } from "./totals-table.ts";

/** `report.html` of a day. */
export function reportHtml(result: DayResult, document: Document): string {
	const html = htmlMaker(document);
	const { scenario, projection } = result;
	const all = dressingParts(result);
	const several = all.length > 1;
	const needed = [planSection(html, result), suppliesSection(html, result)];
	const closing = [cautionsSection(html, result), sourcesSection(html, dayFacts(result), result.assumptions)];
	const facts = `${spanWords(scenario)} ${counted(projection.replications, "replication")}, chance ${scenario.chance}.`;
	return htmlPage(html, {
		title: `${scenario.title}: a therapy day`,
		style: `${reportStyle}${sheetStyle}`,
		bodyClass: several ? "several" : "one",
		skipTo: "answers",
		heading: scenario.title,
		facts: [facts],
		main: [
			// What several dressings need together is the first page with their overview.
			...(several ? [overviewSection(html, all), sheetPart(html, "together", "Together", ...needed)] : []),
			...all.map((parts) => dressingSection(html, parts)),
			sheetPart(html, "common", "For all of it", ...(several ? [] : needed), ...closing),
		],
	});
}

function dressingSection(html: HtmlMaker, parts: DressingParts): HTMLElement {
	const { id, headingId } = parts;
	const totals = section(html, `${id}-totals`, "Totals", headingId, totalsTable(html, parts));
	const attributes = { class: "dressing", id, "aria-labelledby": headingId };
	return html("section", attributes, ...sheetSections(html, parts), alarmSection(html, parts), totals);
}

/** Several dressings at a glance: each with its regimen, its water line at the height of a row, and its next canister. */
function overviewSection(html: HtmlMaker, all: readonly DressingParts[]): HTMLElement {
	const heading = html("h2", { id: "overview-heading" }, `${all.length} dressings`);
	const list = html("ul", {}, ...all.map((parts) => overviewItem(html, parts)));
	return html("nav", { class: "overview", "aria-labelledby": "overview-heading" }, heading, list);
}

function overviewItem(html: HtmlMaker, parts: DressingParts): HTMLElement {
	const { id, clock, dressing, day } = parts;
	const regimen = regimenLine(dressing, clock, true, day.schedule.takeovers);
	const words = [`${regimen}. `, ...canisterAnswer(parts), " ", ...alarmAnswer(parts)];
	const line = { day, horizonMin: clock.horizonMin };
	const chart = sparkline(line, html.document, { idPrefix: `${id}-spark`, styled: false });
	const said = [html("p", {}, ...sentenceNodes(html, words)), ...cautionLines(html, parts.cautions)];
	return html("li", {}, html("a", { href: `#${id}` }, dressing.id), chart, html("div", {}, ...said));
}
