import type { SweepResult } from "../../results/index.ts";
import { counted, dressingLine, joinedWords, sentenceEnd, sentenceStart, spanWords } from "../../words/index.ts";
import { bedsideCautions, closingChapter, studyFacts } from "../kit/closing-chapter.ts";
import { type HtmlMaker, htmlMaker, sentenceList, sheetPart, unbroken } from "../kit/html-element.ts";
import { htmlPage } from "../kit/page.ts";
import { studyStyle } from "../kit/report-style.ts";
import { sweepAnswers } from "./answers.ts";
import { apartSection, beginSection } from "./begin-section.ts";
import { designMapSection } from "./design-map-section.ts";
import { efficientSection } from "./efficient-section.ts";
import { outsideSection, pointsSection } from "./points-section.ts";
import { responseSection } from "./response-section.ts";
import { axisValueWords, axisWords, countedPoints, sweepQuestion } from "./sweep-words.ts";

/** `report.html` of a grid of regimens. */
export function sweepHtml(result: SweepResult, document: Document): string {
	const { scenario, replications } = result;
	const html = htmlMaker(document);
	const facts = `${sentenceEnd(scenario.title)} ${spanWords(scenario)} ${countedPoints(result, result.points.length)} of ${counted(replications, "replication")} each, chance ${scenario.chance}, the same patients under each.`;
	const ran = `${replications} at every point, the same random numbers at each; chance ${scenario.chance}`;
	return htmlPage(html, {
		title: `${scenario.title}: a map of regimens`,
		style: studyStyle,
		bodyClass: "study grid",
		skipTo: "answers",
		heading: unbroken(sweepQuestion(result)),
		facts: [unbroken(facts)],
		caution: bedsideCautions.join(" "),
		main: [
			sheet(html, result),
			designMapSection(html, result),
			efficientSection(html, result),
			responseSection(html, result),
			beginSection(html, result),
			apartSection(html, result),
			outsideSection(html, result),
			pointsSection(html, result),
			closingChapter(html, result, studyFacts(result, ran)),
		],
	});
}

/** What was varied, and the grid in sentences. */
function sheet(html: HtmlMaker, result: SweepResult): HTMLElement {
	const { scenario } = result;
	const varied = result.axes.flatMap(({ name, values }) => [
		html("dt", {}, axisWords[name].label),
		html("dd", {}, unbroken(joinedWords(values.map((value) => axisValueWords(name, value))))),
	]);
	const wounds = scenario.dressings
		.filter(({ id }) => result.dressing === "all" || id === result.dressing)
		.map((dressing) => {
			const whose = scenario.dressings.length > 1 ? `${dressing.id}: ` : "";
			return html("p", { class: "facts" }, unbroken(`${whose}${sentenceStart(dressingLine(dressing))}.`));
		});
	const what = sheetPart(html, "varied", "What is varied", html("dl", {}, ...varied), ...wounds);
	const found = sheetPart(html, "answers", "Answers", sentenceList(html, sweepAnswers(result)));
	return html("div", { class: "brief" }, what, found);
}
