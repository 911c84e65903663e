import type { DayResult } from "../analysis/day-result.ts";
import { clockTime } from "../charts/index.ts";
import { answers } from "./answers.ts";
import { cautionInALine, dressingCautions } from "./caution.ts";
import { clockTable } from "./clock-html.ts";
import {
	type ClockRow,
	clockData,
	clockRows,
	sheetEndMin,
} from "./clock-table.ts";
import {
	answerData,
	type DressingParts,
	headingOf,
	headingWords,
	idOf,
} from "./dressing-parts.ts";
import { dressingLine, regimenLine } from "./dressing-words.ts";
import { htmlElement, sentenceNodes, unbroken } from "./html-element.ts";
import { highOn, linesOn, paperMm, paperPt } from "./paper-room.ts";
import { minutesADay, paperSheets } from "./paper-sheets.ts";
import { section } from "./section.ts";
import { sentenceStart, sentenceText } from "./sentence.ts";
import { waterLineFigure } from "./water-line-figure.ts";

const mostOnSheet = 14;
const mostLater = 120;

/** Parts 1 to 4 of a dressing: who and what, answers, what happens next, the water line; on paper a page for each 24 h. */
export function sheetSections(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement[] {
	const { scenario } = result;
	const element = htmlElement.bind(null, document);
	const several = scenario.dressings.length > 1;
	const paper = paperSheets(
		{
			result,
			parts,
			rows: rowsOf(result, parts),
			caption: clockCaption,
			headMm: headMm(result, parts),
			answersMm: (pt, wideMm) => answersMm(result, parts, pt, wideMm),
			warnedMm: warnedMm(result, parts),
		},
		document,
	);
	const [first, ...later] = paper;
	const sheet = element(
		"div",
		{ class: first?.tight ? "sheet tight" : "sheet" },
		several ? runningHead(result, document) : null,
		element("h2", { id: headingOf(parts) }, headingWords(parts)),
		first?.span ?? null,
		...lines(result, parts, document),
		...dressingCautions(result, parts.summary.id, document),
		element(
			"div",
			{ class: "pair" },
			answersSection(result, parts, document),
			clockSection(result, parts, document, first?.clock ?? null),
		),
		chartSection(result, parts, document, first?.chart ?? null),
		signature(document),
	);
	return [
		sheet,
		...later.map((day) =>
			element(
				"div",
				{ class: "sheet later paper-only" },
				runningHead(result, document),
				element("h2", { id: day.headingId }, headingWords(parts)),
				day.span,
				...lines(result, parts, document),
				section(
					document,
					day.clockId,
					"On the clock",
					day.headingId,
					day.clock,
				),
				section(document, day.lineId, "Water line", day.headingId, day.chart),
				signature(document),
			),
		),
	];
}

/** What a page of paper is told by that does not begin with the title. */
const runningHead = (result: DayResult, document: Document): HTMLElement =>
	htmlElement(document, "p", { class: "paper-only" }, runningWords(result));

const runningWords = ({ scenario }: DayResult): string =>
	`${scenario.title}. ${cautionInALine}`;

/** The regimen and the dressing, in a line each. */
const lines = (
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement[] => {
	const [regimen, facts] = factLines(result, parts);
	return [
		htmlElement(document, "p", {}, unbroken(regimen)),
		htmlElement(document, "p", { class: "facts" }, unbroken(facts)),
	];
};

const factLines = (
	result: DayResult,
	{ summary, day }: DressingParts,
): [string, string] => [
	`${sentenceStart(regimenLine(summary, result.scenario, true, day.schedule.takeovers))}.`,
	`${sentenceStart(dressingLine(summary))}.`,
];

/** Height on paper of what stands above the answers: the title of the report or what stands for it, then who and what. */
function headMm(result: DayResult, parts: DressingParts): number {
	const { scenario } = result;
	const text = (words: string): number =>
		highOn(words, paperPt.text, paperMm.wide) + 1;
	const [titleMm, pt] = [8, 15];
	const title =
		scenario.dressings.length > 1
			? text(runningWords(result))
			: linesOn(scenario.title, pt, paperMm.wide) * titleMm +
				2 +
				text("one line of facts") +
				text(cautionInALine) +
				6;
	const span = scenario.horizonMin > minutesADay ? text("one line") : 0;
	const facts = factLines(result, parts).map(text);
	return title + 7 + span + facts.reduce((sum, mm) => sum + mm, 0);
}

/** Height on paper of the answers in their column. */
const answersMm = (
	result: DayResult,
	parts: DressingParts,
	pt: number,
	wideMm: number,
): number =>
	answers(answerData(result, parts)).reduce(
		(sum, sentence) =>
			sum + highOn(sentenceText(sentence), pt * 1.02, wideMm) + 1.3,
		0,
	);

/** Height on paper of the cautions, across the page. */
const warnedMm = (result: DayResult, parts: DressingParts): number =>
	cautionsOf(result, parts).reduce(
		(sum, { text }) => sum + highOn(text, paperPt.text, paperMm.wide - 4) + 1.5,
		0,
	);

function answersSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement {
	const sentences = answers(answerData(result, parts));
	const items = sentences.map((sentence) =>
		htmlElement(document, "li", {}, ...sentenceNodes(document, sentence)),
	);
	return section(
		document,
		`${idOf(parts)}-answers`,
		"Answers",
		headingOf(parts),
		htmlElement(document, "ul", {}, ...items),
	);
}

const cautionsOf = (result: DayResult, parts: DressingParts) =>
	result.cautions.filter((caution) => caution.dressing === parts.summary.id);

const rowsOf = (result: DayResult, parts: DressingParts): ClockRow[] =>
	clockRows(clockData(result, parts));

const clockCaption = (until: string): string =>
	`What comes next, until ${until}, where nothing comes between; a fill that chance moves by more than 5 min says so.`;

/** What comes next, as a table; later rows are folded away. On paper `onPaper` stands instead, if it is given. */
export function clockSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
	onPaper: HTMLElement | null = null,
): HTMLElement {
	const { scenario } = result;
	const id = `${idOf(parts)}-clock`;
	const under = headingOf(parts);
	const rows = rowsOf(result, parts);
	const endMin = sheetEndMin(scenario);
	const first = rows.filter((row) => row.atMin < endMin).slice(0, mostOnSheet);
	const later = rows.slice(first.length, first.length + mostLater);
	const left = rows.length - first.length - later.length;
	const until = clockTime(Math.min(endMin, scenario.horizonMin), scenario);
	const more = left > 0 ? `, then ${left} more in schedule.csv` : "";
	const details =
		later.length === 0
			? null
			: htmlElement(
					document,
					"details",
					{},
					htmlElement(
						document,
						"summary",
						{},
						`Later: ${later.length} rows${more}`,
					),
					clockTable(
						document,
						{ id: `${id}-later`, under },
						"What comes later.",
						later,
						scenario,
					),
				);
	const next = clockTable(
		document,
		{ id: `${id}-next`, under },
		clockCaption(until),
		first,
		scenario,
	);
	return section(
		document,
		id,
		"On the clock",
		headingOf(parts),
		htmlElement(
			document,
			"div",
			onPaper === null ? {} : { class: "screen-only" },
			next,
			details,
		),
		onPaper,
	);
}

/** The water line of the whole day; on paper `onPaper` stands instead, if it is given. */
function chartSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
	onPaper: HTMLElement | null,
): HTMLElement {
	const figure = waterLineFigure(
		{ result, parts, idPrefix: `${idOf(parts)}-water` },
		document,
	).element;
	if (onPaper !== null) figure.classList.add("screen-only");
	return section(
		document,
		`${idOf(parts)}-line`,
		"Water line",
		headingOf(parts),
		figure,
		onPaper,
	);
}

/** Room for names and times by hand; on paper only. */
function signature(document: Document): HTMLElement {
	const places = ["Handed over by", "at (time)", "Taken over by", "at (time)"];
	const spans = places.map((place) => htmlElement(document, "span", {}, place));
	return htmlElement(
		document,
		"div",
		{ class: "paper-only" },
		htmlElement(document, "div", { class: "sign" }, ...spans),
	);
}
