import { cautionInALine, minutesADay } from "../../../vocabulary/index.ts";
import { clockTime, dressingLine, regimenLine, sentenceStart, sentenceText } from "../../../words/index.ts";
import { cautionLines } from "../../kit/closing-chapter.ts";
import { details, type HtmlMaker, handwritten, section, sentenceList, unbroken } from "../../kit/html-element.ts";
import { answers } from "../answers/answers.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";
import { waterLineFigure } from "../dressing/water-line-figure.ts";
import { clockCaption, clockRows, clockTable, sheetEndMin } from "./clock-rows.ts";
import { highOn, linesOn, paperMm, paperPt, paperSheets } from "./paper-sheets.ts";

const mostOnSheet = 14;
const mostLater = 120;

/** Parts 1 to 4 of a dressing: who and what, answers, what happens next, the water line; on paper a page for each 24 h. */
export function sheetSections(html: HtmlMaker, parts: DressingParts): HTMLElement[] {
	const { id, headingId, cautions } = parts;
	const sentences = answers(parts);
	const high = (texts: readonly string[], pt: number, wideMm: number, gapMm: number): number =>
		texts.reduce((sum, text) => sum + highOn(text, pt, wideMm) + gapMm, 0);
	const [first, ...later] = paperSheets(html, parts, {
		rows: clockRows(parts),
		headMm: headMm(parts),
		answersMm: (pt, wideMm) => high(sentences.map(sentenceText), pt * 1.02, wideMm, 1.3),
		warnedMm: high(cautions, paperPt.text, paperMm.wide - 4, 1.5),
	});
	const figure = waterLineFigure(html, parts, `${id}-water`).element;
	const answered = section(html, `${id}-answers`, "Answers", headingId, sentenceList(html, sentences));
	if (first.chart) figure.classList.add("screen-only");
	return [
		html(
			"div",
			{ class: first.tight ? "sheet tight" : "sheet" },
			isOneOfSeveral(parts) ? runningHead(html, parts) : null,
			...head(html, parts, headingId, first.span),
			...cautionLines(html, cautions),
			html("div", { class: "pair" }, answered, clockSection(html, parts, first.clock)),
			section(html, `${id}-line`, "Water line", headingId, figure, first.chart),
			signature(html),
		),
		...later.map((day) =>
			html(
				"div",
				{ class: "sheet later paper-only" },
				runningHead(html, parts),
				...head(html, parts, day.headingId, day.span),
				section(html, `${day.id}-clock`, "On the clock", day.headingId, day.clock),
				section(html, `${day.id}-line`, "Water line", day.headingId, day.chart),
				signature(html),
			),
		),
	];
}

const isOneOfSeveral = ({ result }: DressingParts): boolean => result.scenario.dressings.length > 1;

/** What a page of paper is told by that does not begin with the title. */
const runningHead = (html: HtmlMaker, parts: DressingParts): HTMLElement =>
	html("p", { class: "paper-only" }, runningWords(parts));

const runningWords = ({ result }: DressingParts): string => `${result.scenario.title}. ${cautionInALine}`;

/** Whose page it is and of which time, then the regimen and the dressing in a line each. */
function head(html: HtmlMaker, parts: DressingParts, headingId: string, span: HTMLElement | null = null) {
	const [regimen, facts] = factLines(parts).map(unbroken);
	const heading = html("h2", { id: headingId }, parts.heading);
	return [heading, span, html("p", {}, regimen), html("p", { class: "facts" }, facts)];
}

const factLines = ({ clock, dressing, day }: DressingParts): [string, string] => [
	`${sentenceStart(regimenLine(dressing, clock, true, day.schedule.takeovers))}.`,
	`${sentenceStart(dressingLine(dressing))}.`,
];

/** Height on paper of what stands above the answers: the title of the report or what stands for it, then who and what. */
function headMm(parts: DressingParts): number {
	const { title } = parts.result.scenario;
	const text = (words: string): number => highOn(words, paperPt.text, paperMm.wide) + 1;
	const [titleMm, pt] = [8, 15];
	const topMm = isOneOfSeveral(parts)
		? text(runningWords(parts))
		: linesOn(title, pt, paperMm.wide) * titleMm + 2 + text("one line of facts") + text(cautionInALine) + 6;
	const spanMm = parts.clock.horizonMin > minutesADay ? text("one line") : 0;
	return topMm + 7 + spanMm + factLines(parts).reduce((sum, line) => sum + text(line), 0);
}

/** What comes next, as a table; later rows are folded away. On paper `onPaper` stands instead, if it is given. */
export function clockSection(html: HtmlMaker, parts: DressingParts, onPaper: HTMLElement | null = null): HTMLElement {
	const { clock, headingId: under } = parts;
	const id = `${parts.id}-clock`;
	const rows = clockRows(parts);
	const endMin = sheetEndMin(clock);
	const first = rows.filter((row) => row.atMin < endMin).slice(0, mostOnSheet);
	const later = rows.slice(first.length, first.length + mostLater);
	const left = rows.length - first.length - later.length;
	const until = clockTime(Math.min(endMin, clock.horizonMin), clock);
	const next = clockTable(html, { id: `${id}-next`, under }, clockCaption(until), first, clock);
	const summary = `Later: ${later.length} rows${left > 0 ? `, then ${left} more in schedule.csv` : ""}`;
	const laterTable = clockTable(html, { id: `${id}-later`, under }, "What comes later.", later, clock);
	const folded = later.length === 0 ? null : details(html, summary, laterTable);
	const onScreen = html("div", onPaper === null ? {} : { class: "screen-only" }, next, folded);
	return section(html, id, "On the clock", under, onScreen, onPaper);
}

const signature = (html: HtmlMaker): HTMLElement =>
	handwritten(html, ["Handed over by", "at (time)", "Taken over by", "at (time)"]);
