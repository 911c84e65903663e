import { minutesADay } from "../../vocabulary/index.ts";
import { textWidth } from "../kit/fitted-text.ts";
import { centred, rowCount, stackedRows } from "../kit/label-places.ts";
import { group, rect, type Shape, text, uprightLine } from "../kit/shape.ts";
import type { Scale } from "../kit/value-axis.ts";
import { smallLetters, smallPx } from "../theme/letters.ts";
import { clockPieces } from "./clock-face.ts";
import type { BeginTimesData } from "./data.ts";

/** Times of day to be kept clear: bands with dashed edges, each named above it; names stack where they would touch. */
export function clearWindows(
	windows: BeginTimesData["windows"],
	{
		x,
		fromMin,
		topPx,
		widthPx,
	}: { readonly x: Scale; readonly fromMin: number; readonly topPx: number; readonly widthPx: number },
) {
	const pieces = windows.flatMap(({ label, startClockMin, endClockMin }) => {
		const past = endClockMin <= startClockMin ? minutesADay : 0;
		return clockPieces(startClockMin, endClockMin + past, fromMin).map(({ from, to }) => {
			const [fromPx, toPx] = [x(from), x(to)];
			const room = { left: 0, right: widthPx };
			return { label, fromPx, toPx, ...centred((fromPx + toPx) / 2, textWidth(label, smallPx), room) };
		});
	});
	const rows = stackedRows(pieces, 8);
	const names = pieces.map(({ label, middle }, index) => {
		// The lowest row first: names that stand alone are next to their bands.
		const y = topPx + (rowCount(rows) - (rows[index] ?? 0)) * smallLetters.linePx - 3;
		return text({ class: "small muted", x: middle, y, "text-anchor": "middle" }, label);
	});
	return {
		names: group(...names),
		heightPx: rowCount(rows) * smallLetters.linePx + 6,
		bands: (bandTopPx: number, bottomPx: number): Shape[] =>
			pieces.flatMap(({ fromPx, toPx }) => clearBand(fromPx, toPx, bandTopPx, bottomPx)),
	};
}

export const clearBand = (leftPx: number, rightPx: number, topPx: number, bottomPx: number): Shape[] => [
	rect("clear", { x: leftPx, y: topPx, width: Math.max(1, rightPx - leftPx), height: bottomPx - topPx }),
	uprightLine("boundary", leftPx, topPx, bottomPx),
	uprightLine("boundary", rightPx, topPx, bottomPx),
];
