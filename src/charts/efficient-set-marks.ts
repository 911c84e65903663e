import type { EfficientSetPoint } from "./efficient-set.ts";
import { svgElement } from "./svg-element.ts";

interface Place {
	readonly x: number;
	readonly y: number;
}

/** A pale ring, or a cross where a limit is not kept. */
export const paleMark = (
	document: Document,
	place: Place,
	point: Pick<EfficientSetPoint, "broken" | "label">,
): SVGElement => {
	const { x, y } = place;
	const title = svgElement(document, "title", {}, point.label);
	return point.broken === true
		? svgElement(
				document,
				"path",
				{
					class: "unsure-edge",
					d: `M${(x - 3.5).toFixed(2)},${(y - 3.5).toFixed(2)}l7,7m0,-7l-7,7`,
				},
				title,
			)
		: svgElement(
				document,
				"circle",
				{ class: "unsure-edge faint", cx: x, cy: y, r: 3.5 },
				title,
			);
};

/** A full dot. */
export const efficientMark = (
	document: Document,
	place: Place,
	point: Pick<EfficientSetPoint, "label">,
): SVGElement =>
	svgElement(
		document,
		"circle",
		{ class: "found", cx: place.x, cy: place.y, r: 5 },
		svgElement(document, "title", {}, point.label),
	);
