import { wrappedText } from "../charts/index.ts";

/** A page that fits on A4 (188 × 277 mm of text) and on Letter (194 × 259 mm), mm. */
export const paperMm = { wide: 188, high: 252 } as const;

/** Sizes of letters on paper, pt, and from line to line as a share of them; `report-style.ts` has the same. */
export const paperPt = {
	text: 8.2,
	small: 7.4,
	clock: 7.4,
	tight: 7.2,
} as const;
const lineShare = 1.3;

const mmOfPt = 25.4 / 72;
/** Lines that a text takes in a room on paper, in a wide typeface. */
export const linesOn = (text: string, pt: number, roomMm: number): number =>
	wrappedText(text, pt * mmOfPt, roomMm).length;

/** Height of those lines, mm. */
export const highOn = (text: string, pt: number, roomMm: number): number =>
	linesOn(text, pt, roomMm) * pt * mmOfPt * lineShare;
