import type { DesignMapData } from "./design-map.ts";
import { everyNth, type MapLayout } from "./design-map-layout.ts";
import { svgElement } from "./svg-element.ts";
import { fittedText, textWidth } from "./text-width.ts";

/** Names of rows at the left, of columns below; every second or third where they are dense. */
export function axisNames(
	document: Document,
	data: DesignMapData,
	layout: MapLayout,
	gridLeft: number,
	gridTop: number,
): SVGTextElement[] {
	const rows = data.y.values.length;
	const bottom = gridTop + rows * layout.rowPx;
	const widest = data.x.values.reduce(
		(most, value) => Math.max(most, textWidth(value, 11.5)),
		0,
	);
	const acrossPx = layout.cellPx * data.x.values.length;
	const nth = everyNth(Math.min(widest, acrossPx), layout.cellPx);
	const text = (x: number, y: number, anchor: string, words: string) =>
		svgElement(
			document,
			"text",
			{ class: "small", x, y, "text-anchor": anchor },
			words,
		);
	return [
		...data.y.values.map((value, index) =>
			text(
				gridLeft - 6,
				gridTop + (rows - 0.5 - index) * layout.rowPx + 4,
				"end",
				fittedText(value, 11.5, layout.labelPx - 6),
			),
		),
		...data.x.values.flatMap((value, index) =>
			index % nth === 0
				? [
						text(
							gridLeft + (index + 0.5) * layout.cellPx,
							bottom + 14,
							"middle",
							fittedText(value, 11.5, Math.max(layout.cellPx * nth - 4, 12)),
						),
					]
				: [],
		),
		...axisTitle(document, data.x.label, {
			leftPx: gridLeft - layout.labelPx,
			rightPx: gridLeft + acrossPx,
			y: bottom + 30,
			roomPx: layout.panelPx,
		}),
	];
}

/** Under the end of the columns, or from the left edge of the map where it is longer than the map is wide. */
function axisTitle(
	document: Document,
	label: string,
	place: {
		readonly leftPx: number;
		readonly rightPx: number;
		readonly y: number;
		readonly roomPx: number;
	},
): SVGTextElement[] {
	const fits = textWidth(label, 11.5) <= place.rightPx - place.leftPx;
	return [
		svgElement(
			document,
			"text",
			{
				class: "small muted",
				x: fits ? place.rightPx : place.leftPx,
				y: place.y,
				"text-anchor": fits ? "end" : "start",
			},
			fittedText(label, 11.5, place.roomPx),
		),
	];
}
