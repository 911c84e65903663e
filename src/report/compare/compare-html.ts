import type { CompareDrawings, CompareResult } from "../../results/index.ts";
import { counted, sentenceEnd, spanWords } from "../../words/index.ts";
import { bedsideCautions, closingChapter, studyFacts } from "../kit/closing-chapter.ts";
import { chapter, htmlMaker, unbroken } from "../kit/html-element.ts";
import { htmlPage } from "../kit/page.ts";
import { studyStyle } from "../kit/report-style.ts";
import { compareSheet } from "./compare-sheet.ts";
import { differenceSections } from "./difference-section.ts";
import { pairsOf } from "./pairs/pairs.ts";
import { howPreciseSection, quantitiesSection } from "./quantities-and-precision.ts";
import { questionOf } from "./regimen-words.ts";
import { restsOnSection } from "./rests-on/rests-on-section.ts";
import { firstHoursSection, waterLinesSection } from "./water-lines-section.ts";

/** `report.html` of a comparison: the first page for a meeting, then everything it was drawn from. */
export function compareHtml(result: CompareResult, drawings: CompareDrawings, document: Document): string {
	const html = htmlMaker(document);
	const { scenario, replications } = result;
	const pairs = pairsOf(result);
	const [first] = pairs;
	const facts = `${sentenceEnd(scenario.title)} ${spanWords(scenario)} ${counted(replications, "replication")}, chance ${scenario.chance}, the same patients under each regimen.`;
	const many = `${replications}, chance ${scenario.chance}; intervals stand in the tables above`;
	return htmlPage(html, {
		title: `${scenario.title}: a comparison`,
		style: studyStyle,
		bodyClass: "study",
		skipTo: "regimens",
		heading: unbroken(questionOf(result)),
		facts: [unbroken(facts)],
		caution: bedsideCautions.join(" "),
		main: [
			compareSheet(html, result, first),
			chapter(html, "differences", "Every measure asked for", ...differenceSections(html, pairs)),
			waterLinesSection(html, result, drawings),
			firstHoursSection(html, result, drawings),
			quantitiesSection(html, result),
			first === undefined ? null : restsOnSection(html, first),
			first === undefined ? null : howPreciseSection(html, first),
			closingChapter(html, result, studyFacts(result, many)),
		],
	});
}
