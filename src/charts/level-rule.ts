import { svgElement } from "./svg-element.ts";

/** A pale line across. */
export const levelRule = (
	document: Document,
	left: number,
	right: number,
	y: number,
): SVGLineElement =>
	svgElement(document, "line", {
		class: "rule",
		x1: left,
		x2: right,
		y1: y,
		y2: y,
	});
