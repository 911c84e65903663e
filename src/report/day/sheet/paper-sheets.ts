import { dayWidthPx, wrappedText } from "../../../charts/index.ts";
import { minutesADay } from "../../../vocabulary/index.ts";
import { type Clock, clockTime, timeSpan } from "../../../words/index.ts";
import type { HtmlMaker } from "../../kit/html-element.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";
import { waterLineFigure } from "../dressing/water-line-figure.ts";
import { type ClockRow, clockCaption, clockTable, timed } from "./clock-rows.ts";

/** A page that fits on A4 (188 × 277 mm of text) and on Letter (194 × 259 mm), mm. */
export const paperMm = { wide: 188, high: 252 } as const;

/** Sizes of letters on paper, pt, and from line to line as a share of them; `report-style.ts` has the same. */
export const paperPt = { text: 8.2, small: 7.4, clock: 7.4, tight: 7.2 } as const;
const lineShare = 1.3;

const mmOfPt = 25.4 / 72;
/** Lines that a text takes in a room on paper, in a wide typeface. */
export const linesOn = (text: string, pt: number, roomMm: number): number =>
	wrappedText(text, pt * mmOfPt, roomMm).length;

/** Height of those lines, mm. */
export const highOn = (text: string, pt: number, roomMm: number): number =>
	linesOn(text, pt, roomMm) * pt * mmOfPt * lineShare;

/** Time and volume take what they need of a row, words and what to look at share the rest. */
const besideWordsMm = 28.5;
const wordsShare = 0.75;
const whatShare = 0.43;
const paddingMm = 1;

/** Height of a row; in a narrow table a date takes three lines. */
function rowMm({ what, look }: ClockRow, wideMm: number, dated = false): number {
	const wordsMm = Math.min(wideMm - besideWordsMm, wideMm * wordsShare);
	const lines = Math.max(
		linesOn(what, paperPt.clock, wordsMm * whatShare),
		linesOn(look, paperPt.clock, wordsMm * (1 - whatShare)),
		dated ? 3 : 1,
	);
	return lines * paperPt.clock * 0.44 + paddingMm;
}

/** The first rows that fit a height, and a line that tells the others by their times. */
function fittingRows(rows: readonly ClockRow[], roomMm: number, wideMm: number, clock: Clock) {
	const all = timed(rows, clock);
	const told = all.map(({ time, what }) => `${time} ${what}`);
	const rest = (from: number, until: number): string => {
		const list = told.slice(from, until).join(" · ");
		const more = told.length - until;
		if (list === "") return `Further, for want of room: ${more} rows, in schedule.csv.`;
		return `Further, for want of room: ${list}${more > 0 ? ` · and ${more} more, in schedule.csv` : ""}.`;
	};
	const heights = all.map((row) => rowMm(row, wideMm, wideMm < paperMm.wide && row.time.split(" ").length > 2));
	const high = (count: number): number => heights.slice(0, count).reduce((sum, mm) => sum + mm, 0);
	if (high(rows.length) <= roomMm) return { rows, rest: "" };
	for (let until = rows.length; until > 0; until--)
		for (let kept = until - 1; kept >= 0; kept--) {
			const words = rest(kept, until);
			if (high(kept) + highOn(words, paperPt.clock, wideMm) + 2 <= roomMm && (kept > 2 || until <= 3))
				return { rows: rows.slice(0, kept), rest: words };
		}
	return { rows: rows.slice(0, 1), rest: rest(1, 1) };
}

/** Nobody hands over further ahead; the last sheet says that later days have none. */
const mostSheets = 7;

/** Columns of a first sheet: answers and clock beside each other, many answers in half of the page; `sheet-style.ts` has the same. */
const columnsMm = paperMm.wide - 6;
const answersWideMm = (tight: boolean): number => (tight ? columnsMm / 2 : (columnsMm * 6) / 16);

/** What a page of paper of one dressing holds beside its head and answers. */
export interface PaperSheet {
	/** Which stretch of time it is of; null where there is one sheet alone. */
	readonly span: HTMLElement | null;
	readonly clock: HTMLElement;
	/** Null where the chart of the screen is as good on paper. */
	readonly chart: HTMLElement | null;
	/** The answers are many: in smaller letters, and in a wider column. */
	readonly tight: boolean;
	readonly id: string;
	readonly headingId: string;
}

/** What takes room on a page beside the water line. */
export interface PaperTaken {
	/** Of the clock, all days. */
	readonly rows: readonly ClockRow[];
	/** Height of what stands above the answers. */
	readonly headMm: number;
	/** Height of the answers in letters of a size in a column so wide, and of what warns over them. */
	readonly answersMm: (pt: number, wideMm: number) => number;
	readonly warnedMm: number;
}

/** Headings and margins around the parts of a sheet, and the lines for names. */
const aroundMm = 41;

/**
 * A page for each 24 h: the rows of the clock that fall into it, and the water line of its own stretch. The lens gives way
 * where rows would not fit, then care and legend where answers would not; what does not fit even so is told in a line.
 */
export function paperSheets(html: HtmlMaker, parts: DressingParts, taken: PaperTaken): PaperSheet[] {
	const count = Math.min(mostSheets, Math.max(1, Math.ceil(parts.clock.horizonMin / minutesADay)));
	return Array.from({ length: count }, (_, index) => paperSheet(html, parts, taken, index, count));
}

function paperSheet(html: HtmlMaker, parts: DressingParts, taken: PaperTaken, index: number, count: number) {
	const { clock } = parts;
	const [isFirst, isLast] = [index === 0, index === count - 1];
	const fromMin = index * minutesADay;
	const spanMin = Math.min(minutesADay, clock.horizonMin - fromMin);
	const toMin = fromMin + spanMin;
	const id = `${parts.id}-day-${index + 1}`;
	const stretch = count === 1 ? {} : { stretch: { fromMin, spanMin } };
	const figure = (lens: boolean, brief = false) =>
		waterLineFigure(html, parts, `${id}-water`, { lens, brief, ...stretch });
	const rows = taken.rows.filter(({ atMin }) => atMin >= fromMin && (atMin < toMin || (isLast && atMin <= toMin)));
	const caption = clockCaption(clockTime(toMin, clock));
	const roomMm = ({ heightPx, caption: below }: ReturnType<typeof figure>) =>
		paperMm.high -
		aroundMm -
		taken.headMm -
		(isFirst ? taken.warnedMm : 0) -
		(heightPx / dayWidthPx) * paperMm.wide -
		highOn(below, paperPt.small, paperMm.wide);
	const answersMm = (tight: boolean): number =>
		isFirst ? taken.answersMm(tight ? paperPt.tight : paperPt.text, answersWideMm(tight)) : 0;
	const clockMm = (tight: boolean) => {
		const wideMm = isFirst ? columnsMm - answersWideMm(tight) : paperMm.wide;
		return { wideMm, headMm: highOn(caption, paperPt.small, wideMm) + 6 };
	};
	const loose = clockMm(false);
	const rowsMm = rows.reduce((sum, row) => sum + rowMm(row, loose.wideMm), 0);
	const whole = figure(true);
	const small = roomMm(whole) >= Math.max(loose.headMm + rowsMm, answersMm(false)) ? whole : figure(false);
	const tight = answersMm(false) > roomMm(small);
	const chosen = answersMm(true) > roomMm(small) ? figure(false, true) : small;
	const { wideMm, headMm } = clockMm(tight);
	// What the answers take the clock beside them may take too: the page becomes no longer for it.
	const kept = fittingRows(rows, Math.max(roomMm(chosen), answersMm(tight)) - headMm, wideMm, clock);
	const headingId = isFirst ? parts.headingId : `${id}-heading`;
	if (isFirst) chosen.element.classList.add("paper-only");
	const isCut = isLast && toMin < clock.horizonMin;
	const which = `Sheet ${index + 1} of ${count}: ${timeSpan(fromMin, toMin, clock)}.${isCut ? " Later days have no sheet." : ""}`;
	const table = clockTable(html, { id: `${id}-clock-table`, under: headingId }, caption, kept.rows, clock);
	const rest = kept.rest === "" ? null : html("p", { class: "rest" }, kept.rest);
	return {
		span: count === 1 ? null : html("p", { class: "paper-only" }, which),
		clock: html("div", isFirst ? { class: "paper-only" } : {}, table, rest),
		tight,
		chart: count === 1 && chosen === whole ? null : chosen.element,
		id,
		headingId,
	};
}
