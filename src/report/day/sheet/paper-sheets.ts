import { dayWidthPx } from "../../../charts/index.ts";
import { minutesADay } from "../../../vocabulary/index.ts";
import { clockTime, timeSpan } from "../../../words/index.ts";
import type { HtmlMaker } from "../../kit/html-element.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";
import { waterLineFigure } from "../dressing/water-line-figure.ts";
import { type ClockRow, clockCaption, clockTable } from "./clock-rows.ts";
import { fittingRows, highOn, paperMm, paperPt, rowMm } from "./paper-room.ts";

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
