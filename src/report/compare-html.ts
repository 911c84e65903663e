import type {
	CompareDrawings,
	CompareResult,
} from "../analysis/compare-result.ts";
import { counted } from "../charts/index.ts";
import { cautionInALine, cautionSentences } from "./caution.ts";
import { chapter } from "./chapter.ts";
import { closingChapter } from "./closing-chapter.ts";
import { pairsOf } from "./compare-parts.ts";
import { questionOf } from "./compare-question.ts";
import { compareSheet } from "./compare-sheet.ts";
import { differenceSections } from "./difference-section.ts";
import { howPreciseSection } from "./how-precise-section.ts";
import { htmlElement, unbroken } from "./html-element.ts";
import { htmlPage } from "./page.ts";
import { quantitiesSection } from "./quantities-section.ts";
import { restsOnSection } from "./rests-on-section.ts";
import { sentenceEnd } from "./sentence.ts";
import { spanWords } from "./span-words.ts";
import { studyStyle } from "./study-style.ts";
import { firstHoursSection, waterLinesSection } from "./water-lines-section.ts";

/** `report.html` of a comparison: the first page for a meeting, then everything it was drawn from. */
export function compareHtml(
	result: CompareResult,
	drawings: CompareDrawings,
	document: Document,
): string {
	const pairs = pairsOf(result);
	const [first] = pairs;
	return htmlPage(document, {
		title: `${result.scenario.title}: a comparison`,
		style: studyStyle,
		bodyClass: "study",
		skipTo: "regimens",
		header: header(result, document),
		main: [
			compareSheet(result, first, document),
			chapter(
				document,
				"differences",
				"Every measure asked for",
				...differenceSections(result, pairs, document),
			),
			waterLinesSection(result, drawings, document),
			firstHoursSection(result, drawings, document),
			quantitiesSection(result, document),
			first === undefined ? null : restsOnSection(result, first, document),
			first === undefined ? null : howPreciseSection(result, first, document),
			closingChapter(result, factsOf(result), document),
		],
	});
}

function header(result: CompareResult, document: Document): HTMLElement {
	const { scenario, replications } = result;
	const facts = `${sentenceEnd(scenario.title)} ${spanWords(scenario)} ${counted(replications, "replication")}, chance ${scenario.chance}, the same patients under each regimen.`;
	return htmlElement(
		document,
		"header",
		{},
		htmlElement(document, "h1", {}, unbroken(questionOf(result))),
		htmlElement(document, "p", { class: "facts" }, unbroken(facts)),
		htmlElement(
			document,
			"p",
			{ class: "caution" },
			`${cautionInALine} ${cautionSentences[1] ?? ""}`,
		),
	);
}

const factsOf = (result: CompareResult): readonly [string, string][] => [
	["Scenario", result.scenario.title],
	["Seed", result.scenario.seed],
	[
		"Replications",
		`${result.replications}, chance ${result.scenario.chance}; intervals stand in the tables above`,
	],
	["Version", `slackwater ${result.scenario.version}, ${result.format}`],
	["Solution", result.scenario.solution],
];
