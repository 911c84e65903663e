import type { DayResult } from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	dayWidthPx,
	timeSpan,
} from "../charts/index.ts";
import { clockTable } from "./clock-html.ts";
import { type ClockRow, rowTimes } from "./clock-table.ts";
import { type DressingParts, headingOf, idOf } from "./dressing-parts.ts";
import { htmlElement } from "./html-element.ts";
import { highOn, linesOn, paperMm, paperPt } from "./paper-room.ts";
import { waterLineFigure } from "./water-line-figure.ts";

export const minutesADay = 1440;
/** Nobody hands over further ahead; the last sheet says that later days have none. */
const mostSheets = 7;

/** Columns of a first sheet: answers and clock beside each other, many answers in half of the page; `report-style.ts` has the same. */
const columnsMm = paperMm.wide - 6;
const answersWideMm = (tight: boolean): number =>
	tight ? columnsMm / 2 : (columnsMm * 6) / 16;

/** What a page of paper of one dressing holds beside its head and answers. */
export interface PaperSheet {
	/** Which stretch of time it is of; null where there is one sheet alone. */
	readonly span: HTMLElement | null;
	readonly clock: HTMLElement;
	/** Null where the chart of the screen is as good on paper. */
	readonly chart: HTMLElement | null;
	/** The answers are many: in smaller letters, and in a wider column. */
	readonly tight: boolean;
	readonly headingId: string;
	readonly clockId: string;
	readonly lineId: string;
}

export interface PaperData {
	readonly result: DayResult;
	readonly parts: DressingParts;
	readonly rows: readonly ClockRow[];
	/** What stands over the rows, until a time. */
	readonly caption: (until: string) => string;
	/** Height of what stands above the answers. */
	readonly headMm: number;
	/** Height of the answers in letters of a size in a column so wide, and of what warns over them. */
	readonly answersMm: (pt: number, wideMm: number) => number;
	readonly warnedMm: number;
}

/** Headings and margins around the parts of a sheet, and the lines for names. */
const aroundMm = 41;

/** A page for each 24 h: the rows of the clock that fall into it, and the water line of its own stretch. The lens gives way where rows would not fit, then care and legend where answers would not, and what does not fit even so is told in a line. */
export function paperSheets(data: PaperData, document: Document): PaperSheet[] {
	const { horizonMin } = data.result.scenario;
	const count = Math.min(
		mostSheets,
		Math.max(1, Math.ceil(horizonMin / minutesADay)),
	);
	return Array.from({ length: count }, (_, index) =>
		paperSheet(data, index, count, document),
	);
}

function paperSheet(
	data: PaperData,
	index: number,
	count: number,
	document: Document,
): PaperSheet {
	const { result, parts } = data;
	const { scenario } = result;
	const fromMin = index * minutesADay;
	const spanMin = Math.min(minutesADay, scenario.horizonMin - fromMin);
	const toMin = fromMin + spanMin;
	const id = `${idOf(parts)}-day-${index + 1}`;
	const figure = (lens: boolean, brief = false) =>
		waterLineFigure(
			{
				result,
				parts,
				idPrefix: `${id}-water`,
				lens,
				brief,
				...(count === 1 ? {} : { stretch: { fromMin, spanMin } }),
			},
			document,
		);
	const rows = data.rows.filter(
		({ atMin }) =>
			atMin >= fromMin &&
			(atMin < toMin || (index === count - 1 && atMin <= toMin)),
	);
	const caption = data.caption(clockTime(toMin, scenario));
	const roomMm = ({ heightPx, caption: below }: ReturnType<typeof figure>) =>
		paperMm.high -
		aroundMm -
		data.headMm -
		(index === 0 ? data.warnedMm : 0) -
		(heightPx / dayWidthPx) * paperMm.wide -
		highOn(below, paperPt.small, paperMm.wide);
	const answersMm = (tight: boolean): number =>
		index === 0
			? data.answersMm(
					tight ? paperPt.tight : paperPt.text,
					answersWideMm(tight),
				)
			: 0;
	const clockMm = (tight: boolean) => {
		const wideMm =
			index === 0 ? columnsMm - answersWideMm(tight) : paperMm.wide;
		return { wideMm, headMm: highOn(caption, paperPt.small, wideMm) + 6 };
	};
	const loose = clockMm(false);
	const needMm = Math.max(
		loose.headMm + rows.reduce((sum, row) => sum + rowMm(row, loose.wideMm), 0),
		answersMm(false),
	);
	const whole = figure(true);
	const small = roomMm(whole) >= needMm ? whole : figure(false);
	const tight = answersMm(false) > roomMm(small);
	const chosen = answersMm(true) > roomMm(small) ? figure(false, true) : small;
	const { wideMm, headMm } = clockMm(tight);
	// What the answers take the clock beside them may take too: the page becomes no longer for it.
	const kept = fitting(
		rows,
		Math.max(roomMm(chosen), answersMm(tight)) - headMm,
		wideMm,
		scenario,
	);
	const headingId = index === 0 ? headingOf(parts) : `${id}-heading`;
	const { element } = chosen;
	if (index === 0) element.classList.add("paper-only");
	return {
		span:
			count === 1
				? null
				: htmlElement(
						document,
						"p",
						{ class: "paper-only" },
						`Sheet ${index + 1} of ${count}: ${timeSpan(fromMin, toMin, scenario)}.${index === count - 1 && toMin < scenario.horizonMin ? " Later days have no sheet." : ""}`,
					),
		clock: htmlElement(
			document,
			"div",
			index === 0 ? { class: "paper-only" } : {},
			clockTable(
				document,
				{ id: `${id}-clock-table`, under: headingId },
				caption,
				kept.rows,
				scenario,
			),
			kept.rest === ""
				? null
				: htmlElement(document, "p", { class: "rest" }, kept.rest),
		),
		tight,
		chart: count === 1 && chosen === whole ? null : element,
		headingId,
		clockId: `${id}-clock`,
		lineId: `${id}-line`,
	};
}

/** Time and volume take what they need of a row, words and what to look at share the rest. */
const besideWordsMm = 28.5;
const wordsShare = 0.75;
const whatShare = 0.43;
const paddingMm = 1;

/** Height of a row; in a narrow table a date takes three lines. */
const rowMm = (
	{ what, look }: ClockRow,
	wideMm: number,
	dated = false,
): number => {
	const wordsMm = Math.min(wideMm - besideWordsMm, wideMm * wordsShare);
	return (
		Math.max(
			linesOn(what, paperPt.clock, wordsMm * whatShare),
			linesOn(look, paperPt.clock, wordsMm * (1 - whatShare)),
			dated ? 3 : 1,
		) *
			paperPt.clock *
			0.44 +
		paddingMm
	);
};

/** The first rows that fit a height, and a line that tells the others by their times. */
function fitting(
	rows: readonly ClockRow[],
	roomMm: number,
	wideMm: number,
	clock: Clock,
): { readonly rows: readonly ClockRow[]; readonly rest: string } {
	const times = rowTimes(rows, clock);
	const told = rows.map(({ what }, index) => `${times[index]} ${what}`);
	const rest = (from: number, until: number): string => {
		const list = told.slice(from, until).join(" · ");
		const more = told.length - until;
		if (list === "")
			return `Further, for want of room: ${more} rows, in schedule.csv.`;
		return `Further, for want of room: ${list}${more > 0 ? ` · and ${more} more, in schedule.csv` : ""}.`;
	};
	const heights = rows.map((row, index) =>
		rowMm(
			row,
			wideMm,
			wideMm < paperMm.wide && (times[index] ?? "").split(" ").length > 2,
		),
	);
	const high = (count: number): number =>
		heights.slice(0, count).reduce((sum, mm) => sum + mm, 0);
	if (high(rows.length) <= roomMm) return { rows, rest: "" };
	for (let until = rows.length; until > 0; until--)
		for (let kept = until - 1; kept >= 0; kept--) {
			const words = rest(kept, until);
			if (
				high(kept) + highOn(words, paperPt.clock, wideMm) + 2 <= roomMm &&
				(kept > 2 || until <= 3)
			)
				return { rows: rows.slice(0, kept), rest: words };
		}
	return { rows: rows.slice(0, 1), rest: rest(1, 1) };
}
