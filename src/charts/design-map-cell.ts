import type { DesignMapCell } from "./design-map.ts";
import { svgElement } from "./svg-element.ts";

export interface CellPlace {
	readonly x: number;
	readonly y: number;
	readonly widthPx: number;
	readonly heightPx: number;
}

/** Cells with no corners to put a mark in. */
export const isSmall = (place: CellPlace): boolean =>
	place.widthPx < 24 || place.heightPx < 22;

/** Shade, hatching, cross and corner of a cell, and its number. The marks of the two regimens are drawn over all cells. */
export function mapCell(
	document: Document,
	cell: Omit<DesignMapCell, "x" | "y">,
	drawn: {
		readonly place: CellPlace;
		readonly step: number;
		readonly number: string;
		/** Size of its number; null where those of the map do not fit. */
		readonly sizePx: number | null;
		readonly words: string;
		readonly hatchId: string;
	},
): SVGGElement {
	const { place, step } = drawn;
	const { x, y, widthPx: w, heightPx: h } = place;
	const ink = `shade${step}-text`;
	const group = svgElement(
		document,
		"g",
		{},
		svgElement(document, "title", {}, drawn.words),
		svgElement(document, "rect", {
			class: `shade${step}`,
			x: x + 0.5,
			y: y + 0.5,
			width: w - 1,
			height: h - 1,
		}),
	);
	if (cell.outside === true)
		group.append(
			svgElement(document, "rect", {
				fill: `url(#${drawn.hatchId}-${step < 5 ? "low" : "high"})`,
				x: x + 0.5,
				y: y + 0.5,
				width: w - 1,
				height: h - 1,
			}),
		);
	if (cell.broken === true)
		group.append(
			svgElement(document, "path", {
				class: `shade${step}-stroke light`,
				fill: "none",
				d: `M${(x + 2).toFixed(2)},${y + 2}L${(x + w - 2).toFixed(2)},${y + h - 2}M${(x + w - 2).toFixed(2)},${y + 2}L${(x + 2).toFixed(2)},${y + h - 2}`,
			}),
		);
	if (cell.efficient === true) {
		const side = Math.min(9, w / 3, h / 2);
		group.append(
			svgElement(document, "path", {
				class: ink,
				d: `M${(x + w - 1).toFixed(2)},${y + 1}h${-side}L${(x + w - 1).toFixed(2)},${(y + 1 + side).toFixed(2)}Z`,
			}),
		);
	}
	// In a small cell a mark takes the place of the number.
	const covered =
		isSmall(place) && (cell.current === true || cell.usual === true);
	const size = covered ? null : drawn.sizePx;
	if (size !== null)
		group.append(
			svgElement(
				document,
				"text",
				{
					class: ink,
					x: x + w / 2,
					y: y + h / 2 + size * 0.36,
					"text-anchor": "middle",
					style: `font-size:${size}px`,
				},
				drawn.number,
			),
		);
	return group;
}

/** Hatching for pale and for strong shades, each in the colour of text on them. */
export function mapHatching(document: Document, id: string): SVGDefsElement {
	const pattern = (name: string, step: number): SVGPatternElement =>
		svgElement(
			document,
			"pattern",
			{
				id: `${id}-${name}`,
				width: 5,
				height: 5,
				patternUnits: "userSpaceOnUse",
				patternTransform: "rotate(45)",
			},
			svgElement(document, "line", {
				class: `shade${step}-stroke light`,
				x1: 0,
				y1: 0,
				x2: 0,
				y2: 5,
			}),
		);
	return svgElement(
		document,
		"defs",
		{},
		pattern("low", 0),
		pattern("high", 6),
	);
}
