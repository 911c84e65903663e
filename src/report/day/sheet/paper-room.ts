import { wrappedText } from "../../../charts/index.ts";
import type { Clock } from "../../../words/index.ts";
import { type ClockRow, timed } from "./clock-rows.ts";

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
export function rowMm({ what, look }: ClockRow, wideMm: number, dated = false): number {
	const wordsMm = Math.min(wideMm - besideWordsMm, wideMm * wordsShare);
	const lines = Math.max(
		linesOn(what, paperPt.clock, wordsMm * whatShare),
		linesOn(look, paperPt.clock, wordsMm * (1 - whatShare)),
		dated ? 3 : 1,
	);
	return lines * paperPt.clock * 0.44 + paddingMm;
}

/** The first rows that fit a height, and a line that tells the others by their times. */
export function fittingRows(
	rows: readonly ClockRow[],
	roomMm: number,
	wideMm: number,
	clock: Clock,
): { readonly rows: readonly ClockRow[]; readonly rest: string } {
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
