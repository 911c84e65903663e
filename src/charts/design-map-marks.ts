import { type CellPlace, isSmall } from "./design-map-cell.ts";
import { diamondPath } from "./regimen-mark.ts";
import { svgElement } from "./svg-element.ts";

/** A heavy outline with a dot in its lower left corner. */
export const currentCell = (
	document: Document,
	place: CellPlace,
	step: number,
): SVGGElement => {
	const outline = (className: string, strokePx: number) =>
		svgElement(document, "rect", {
			class: className,
			x: place.x,
			y: place.y,
			width: place.widthPx,
			height: place.heightPx,
			style: `stroke-width:${strokePx}`,
		});
	const small = isSmall(place);
	return svgElement(
		document,
		"g",
		{},
		outline("paper-edge", 5.5),
		outline("ink-edge", 2.8),
		svgElement(document, "circle", {
			class: `shade${step}-text`,
			cx: small ? place.x + place.widthPx / 2 : place.x + 7,
			cy: small ? place.y + place.heightPx / 2 : place.y + place.heightPx - 6.5,
			r: small ? Math.min(3, place.widthPx / 4) : 3.2,
		}),
	);
};

/** A diamond in its lower right corner. */
export const usualCell = (
	document: Document,
	place: CellPlace,
	step: number,
): SVGPathElement => {
	const small = isSmall(place);
	return svgElement(document, "path", {
		class: `shade${step}-text`,
		d: small
			? diamondPath(
					place.x + place.widthPx / 2,
					place.y + place.heightPx / 2,
					Math.min(4, place.widthPx / 2 - 1),
				)
			: diamondPath(
					place.x + place.widthPx - 8,
					place.y + place.heightPx - 7,
					4.6,
				),
	});
};

/** A place without a value. */
export const emptyCell = (
	document: Document,
	place: CellPlace,
): SVGRectElement =>
	svgElement(document, "rect", {
		class: "rule absent",
		x: place.x + 2,
		y: place.y + 2,
		width: Math.max(1, place.widthPx - 4),
		height: Math.max(1, place.heightPx - 4),
	});
