import type { SweepResult } from "../analysis/sweep-result.ts";
import { counted } from "../charts/index.ts";
import { apartSection, beginSection } from "./begin-section.ts";
import { cautionInALine, cautionSentences } from "./caution.ts";
import { chapter } from "./chapter.ts";
import { closingChapter } from "./closing-chapter.ts";
import { designMapSection } from "./design-map-section.ts";
import { dressingLine } from "./dressing-words.ts";
import { efficientSection } from "./efficient-section.ts";
import { htmlElement, sentenceNodes, unbroken } from "./html-element.ts";
import { joinedWords } from "./joined-words.ts";
import { outsideSection } from "./outside-section.ts";
import { htmlPage } from "./page.ts";
import { pointsTable } from "./points-table.ts";
import { responseSection } from "./response-section.ts";
import { sentenceEnd, sentenceStart } from "./sentence.ts";
import { sheetPart } from "./sheet-part.ts";
import { spanWords } from "./span-words.ts";
import { studyStyle } from "./study-style.ts";
import { sweepAnswers } from "./sweep-answers.ts";
import { sweepQuestion } from "./sweep-question.ts";
import { axisValueWords, axisWords, countedPoints } from "./sweep-words.ts";

const mostPoints = 200;

/** `report.html` of a grid of regimens. */
export function sweepHtml(result: SweepResult, document: Document): string {
	return htmlPage(document, {
		title: `${result.scenario.title}: a map of regimens`,
		style: studyStyle,
		bodyClass: "study grid",
		skipTo: "answers",
		header: header(result, document),
		main: [
			sheet(result, document),
			designMapSection(result, document),
			efficientSection(result, document),
			responseSection(result, document),
			beginSection(result, document),
			apartSection(result, document),
			outsideSection(result, document),
			pointsSection(result, document),
			closingChapter(result, factsOf(result), document),
		],
	});
}

function header(result: SweepResult, document: Document): HTMLElement {
	const { scenario } = result;
	const facts = `${sentenceEnd(scenario.title)} ${spanWords(scenario)} ${countedPoints(result, result.points.length)} of ${counted(result.replications, "replication")} each, chance ${scenario.chance}, the same patients under each.`;
	return htmlElement(
		document,
		"header",
		{},
		htmlElement(document, "h1", {}, unbroken(sweepQuestion(result))),
		htmlElement(document, "p", { class: "facts" }, unbroken(facts)),
		htmlElement(
			document,
			"p",
			{ class: "caution" },
			`${cautionInALine} ${cautionSentences[1] ?? ""}`,
		),
	);
}

/** What was varied, and the grid in sentences. */
function sheet(result: SweepResult, document: Document): HTMLElement {
	const { scenario } = result;
	const varied = result.axes.flatMap(({ name, values }) => [
		htmlElement(document, "dt", {}, axisWords[name].label),
		htmlElement(
			document,
			"dd",
			{},
			unbroken(joinedWords(values.map((value) => axisValueWords(name, value)))),
		),
	]);
	const wounds = scenario.dressings
		.filter(({ id }) => result.dressing === "all" || id === result.dressing)
		.map((dressing) =>
			htmlElement(
				document,
				"p",
				{ class: "facts" },
				unbroken(
					`${scenario.dressings.length > 1 ? `${dressing.id}: ` : ""}${sentenceStart(dressingLine(dressing))}.`,
				),
			),
		);
	const sentences = sweepAnswers(result).map((sentence) =>
		htmlElement(document, "li", {}, ...sentenceNodes(document, sentence)),
	);
	return htmlElement(
		document,
		"div",
		{ class: "brief" },
		sheetPart(
			document,
			"varied",
			"What is varied",
			htmlElement(document, "dl", {}, ...varied),
			...wounds,
		),
		sheetPart(
			document,
			"answers",
			"Answers",
			htmlElement(document, "ul", {}, ...sentences),
		),
	);
}

function pointsSection(result: SweepResult, document: Document): HTMLElement {
	const { points } = result;
	const shown = points.slice(0, mostPoints);
	const cut =
		shown.length < points.length
			? ` The first ${mostPoints} of ${points.length}; points.csv and values.csv hold all.`
			: "";
	return chapter(
		document,
		"points",
		"Every point of the grid",
		htmlElement(
			document,
			"details",
			{},
			htmlElement(
				document,
				"summary",
				{},
				`${countedPoints(result, shown.length)} in ${counted(result.measures.length, "measure")}`,
			),
			pointsTable(
				result,
				{
					id: "all-points",
					caption: `Means with their 95 % half-width (±), and the difference from the current regimen with its 95 % interval.${cut}`,
					points: shown,
					measures: result.measures,
					marks: true,
				},
				document,
			),
		),
	);
}

const factsOf = (result: SweepResult): readonly [string, string][] => [
	["Scenario", result.scenario.title],
	["Seed", result.scenario.seed],
	[
		"Replications",
		`${result.replications} at every point, the same random numbers at each; chance ${result.scenario.chance}`,
	],
	["Version", `slackwater ${result.scenario.version}, ${result.format}`],
	["Solution", result.scenario.solution],
];
