import type { ScaleLinear } from "d3-scale";
import type { BeginTimesRow } from "./begin-times.ts";
import { clockPieces, clockWords, onClock } from "./clock-round.ts";
import { heatStep } from "./heat-strip.ts";
import { percentWords } from "./probability.ts";
import { currentMark } from "./regimen-mark.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";

const dayMin = 1440;
const binMin = 30;
const cellPx = 15;
/** Rarer changes are not drawn; those rarer than half are dashed. */
const leastProbability = 0.05;
/** From this chance on a half-hour carries its number where it fits. */
const numbered = 0.05;

interface RowPlace {
	readonly x: ScaleLinear<number, number>;
	readonly fromMin: number;
	readonly topPx: number;
}

/** Canister changes as bars above, alarm chances as half-hours below, and where the day begins. */
export function beginRow(
	document: Document,
	row: BeginTimesRow,
	place: RowPlace,
): SVGGElement {
	const beginPx = place.x(onClock(row.startClockMin, place.fromMin));
	return svgElement(
		document,
		"g",
		{},
		...alarmCells(document, row, place),
		...changeBars(document, row, place),
		row.current === true
			? currentMark(document, beginPx, place.topPx + 12)
			: beginMark(document, beginPx, place.topPx + 12),
	);
}

/** A triangle that points at what follows. */
export const beginMark = (
	document: Document,
	x: number,
	y: number,
): SVGPathElement =>
	svgElement(document, "path", {
		class: "ink",
		d: `M${x.toFixed(2)},${y - 6}l8,6l-8,6Z`,
	});

function alarmCells(
	document: Document,
	row: BeginTimesRow,
	place: RowPlace,
): SVGElement[] {
	const top = place.topPx + 24;
	return row.alarmBins.slice(0, dayMin / binMin).flatMap((chance, index) => {
		const step = heatStep(chance);
		if (step === null) return [];
		const start = row.startClockMin + index * binMin;
		const binPx = place.x(binMin) - place.x(0);
		const pieces = clockPieces(start, start + binMin, place.fromMin);
		return pieces.flatMap((piece) => {
			const [left, right] = [place.x(piece.from), place.x(piece.to)];
			const number = String(Math.min(99, Math.round(chance * 100)));
			const size = [11, 10, 9].find((one) => textWidth("00", one) <= binPx - 1);
			const cell = svgElement(
				document,
				"rect",
				{
					class: `heat${step}`,
					x: left + 0.3,
					y: top,
					width: Math.max(0.6, right - left - 0.6),
					height: cellPx,
				},
				svgElement(
					document,
					"title",
					{},
					`${clockWords(start)} to ${clockWords(start + binMin)}: ${percentWords(chance)}`,
				),
			);
			// A half-hour that the end of the clock cuts in two may have no room for it.
			const fits =
				size !== undefined && textWidth(number, size) <= right - left;
			if (chance < numbered || !fits) return [cell];
			return [
				cell,
				svgElement(
					document,
					"text",
					{
						class: `heat${step}-text`,
						x: (left + right) / 2,
						y: top + cellPx / 2 + size * 0.36,
						"text-anchor": "middle",
						style: `font-size:${size}px`,
					},
					number,
				),
			];
		});
	});
}

/** Neighbouring changes stand at two heights, since their ranges may overlap. */
function changeBars(
	document: Document,
	row: BeginTimesRow,
	place: RowPlace,
): SVGElement[] {
	return row.canisterChanges.flatMap((change, index) => {
		if (
			change.probabilityWithinHorizon < leastProbability ||
			change.p10Min >= dayMin
		)
			return [];
		const y = place.topPx + (index % 2 === 0 ? 8 : 17);
		const start = row.startClockMin + change.p10Min;
		const end = row.startClockMin + Math.min(change.p90Min, dayMin);
		const often = change.probabilityWithinHorizon >= 0.5;
		const rare = change.probabilityWithinHorizon < 0.95;
		const words = `change ${index + 1}: between ${clockWords(start)} and ${clockWords(end)}${rare ? ` (if at all: ${percentWords(change.probabilityWithinHorizon)})` : ""}`;
		const bars = clockPieces(start, end, place.fromMin).map((piece) =>
			svgElement(document, "path", {
				class: often ? "canister-edge" : "canister-edge dashed",
				d: `M${place.x(piece.from).toFixed(2)},${y - 4}v8m0,-4H${Math.max(place.x(piece.to), place.x(piece.from) + 2).toFixed(2)}m0,-4v8`,
			}),
		);
		const dot =
			change.p50Min < dayMin
				? [
						svgElement(document, "circle", {
							class: often ? "canister-mark" : "canister-edge hollow",
							cx: place.x(
								onClock(row.startClockMin + change.p50Min, place.fromMin),
							),
							cy: y,
							r: 3.5,
						}),
					]
				: [];
		return [
			svgElement(
				document,
				"g",
				{},
				svgElement(document, "title", {}, words),
				...bars,
				...dot,
			),
		];
	});
}
