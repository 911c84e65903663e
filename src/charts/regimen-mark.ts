import { svgElement } from "./svg-element.ts";

/** Names of the two regimens that are marked wherever many are shown. */
export const currentWords = "the current regimen";
export const usualWords = "the site's usual regimen";

/** The regimen that the reader has now: a dot in a heavy square. */
export const currentMark = (
	document: Document,
	x: number,
	y: number,
): SVGGElement =>
	svgElement(
		document,
		"g",
		{},
		...(["paper-edge", "ink-edge"] as const).map((className) =>
			svgElement(document, "rect", {
				class: className,
				x: x - 8,
				y: y - 8,
				width: 16,
				height: 16,
				style: `stroke-width:${className === "ink-edge" ? 2.5 : 5}`,
			}),
		),
		svgElement(document, "circle", { class: "ink", cx: x, cy: y, r: 3.5 }),
	);

/** A diamond as a path. */
export const diamondPath = (x: number, y: number, half: number): string =>
	`M${x.toFixed(2)},${(y - half).toFixed(2)}l${half},${half}l${-half},${half}l${-half},${-half}Z`;

/** The site's usual regimen: a diamond with a paper rim. */
export const usualMark = (
	document: Document,
	x: number,
	y: number,
): SVGGElement =>
	svgElement(
		document,
		"g",
		{},
		svgElement(document, "path", {
			class: "paper-edge",
			d: diamondPath(x, y, 8),
			style: "stroke-width:3",
		}),
		svgElement(document, "path", { class: "ink", d: diamondPath(x, y, 7) }),
	);
