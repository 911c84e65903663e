import type { ScaleLinear } from "d3-scale";
import type { BeginTimesData } from "./begin-times.ts";
import { clockPieces } from "./clock-round.ts";
import { stackedRows } from "./stack-labels.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { smallLinePx } from "./wrapped-text.ts";

/** Times of day to be kept clear: bands with dashed edges, each named above it; names stack where they would touch. */
export function clearWindows(
	document: Document,
	windows: BeginTimesData["windows"],
	place: {
		readonly x: ScaleLinear<number, number>;
		readonly fromMin: number;
		readonly topPx: number;
		readonly widthPx: number;
	},
) {
	const { x } = place;
	const pieces = windows.flatMap((window) => {
		const past = window.endClockMin <= window.startClockMin ? 1440 : 0;
		return clockPieces(
			window.startClockMin,
			window.endClockMin + past,
			place.fromMin,
		).map((piece) => ({
			label: window.label,
			fromPx: x(piece.from),
			toPx: x(piece.to),
		}));
	});
	const names = pieces.map((piece) => {
		const half = textWidth(piece.label, 11.5) / 2;
		const middle = Math.max(
			half,
			Math.min((piece.fromPx + piece.toPx) / 2, place.widthPx - half),
		);
		return { ...piece, middle, left: middle - half, right: middle + half };
	});
	const rows = stackedRows(names, 8);
	const count = names.length === 0 ? 0 : Math.max(...rows) + 1;
	const group = svgElement(document, "g", {});
	names.forEach((name, index) => {
		// The lowest row first: names that stand alone are next to their bands.
		const y = place.topPx + (count - (rows[index] ?? 0)) * smallLinePx - 3;
		group.append(
			svgElement(
				document,
				"text",
				{
					class: "small muted",
					x: name.middle,
					y,
					"text-anchor": "middle",
				},
				name.label,
			),
		);
	});
	const bands = (topPx: number, bottomPx: number): SVGElement[] =>
		pieces.flatMap(({ fromPx, toPx }) => [
			svgElement(document, "rect", {
				class: "clear",
				x: fromPx,
				y: topPx,
				width: Math.max(1, toPx - fromPx),
				height: bottomPx - topPx,
			}),
			...[fromPx, toPx].map((at) =>
				svgElement(document, "line", {
					class: "boundary",
					x1: at,
					x2: at,
					y1: topPx,
					y2: bottomPx,
				}),
			),
		]);
	return { names: group, heightPx: count * smallLinePx + 6, bands };
}
