import { svgElement } from "./svg-element.ts";
import { fittedText } from "./text-width.ts";
import { chartStyle } from "./theme-style.ts";
import { smallLinePx, textLines, wrappedText } from "./wrapped-text.ts";

/** What every chart is told: unique ids begin with `idPrefix` (letters, digits and hyphens), width in px of its own grid. */
export interface ChartOptions {
	readonly idPrefix: string;
	readonly widthPx?: number;
	/** False for a chart beside others of the same page that already carry the style sheet. */
	readonly styled?: boolean;
	/** False where the words around it name the chart already; its title then stands in the text alternative only. */
	readonly titled?: boolean;
}

/** An empty chart that says what it shows; its height is set when all is drawn. */
export function chartRoot(
	document: Document,
	options: ChartOptions,
	size: { readonly widthPx: number; readonly heightPx: number },
	words: { readonly title: string; readonly description: string },
): SVGSVGElement {
	const [titleId, descriptionId] = [
		`${options.idPrefix}-title`,
		`${options.idPrefix}-desc`,
	];
	const root = svgElement(
		document,
		"svg",
		{
			class: "sw-chart",
			role: "img",
			"aria-labelledby": `${titleId} ${descriptionId}`,
		},
		svgElement(document, "title", { id: titleId }, words.title),
		svgElement(document, "desc", { id: descriptionId }, words.description),
	);
	if (options.styled !== false)
		root.append(svgElement(document, "style", {}, chartStyle));
	setSize(root, size.widthPx, size.heightPx);
	return root;
}

export function setSize(
	root: SVGSVGElement,
	widthPx: number,
	heightPx: number,
): void {
	root.setAttribute("viewBox", `0 0 ${widthPx} ${Math.ceil(heightPx)}`);
	root.setAttribute("width", String(widthPx));
	root.setAttribute("height", String(Math.ceil(heightPx)));
}

/** Writes the title, and a line that says how to read the chart, at the top; returns the px they take. */
export function chartTitle(
	root: SVGSVGElement,
	document: Document,
	options: ChartOptions,
	words: {
		readonly title: string;
		readonly legend?: string;
		readonly leftPx: number;
		readonly roomPx: number;
	},
): number {
	if (options.titled === false) return 0;
	const title = fittedText(words.title, 17, words.roomPx);
	root.append(
		svgElement(
			document,
			"text",
			{ class: "title", x: words.leftPx, y: 20 },
			title,
		),
	);
	if (words.legend === undefined) return 28;
	const legend = wrappedText(words.legend, 11.5, words.roomPx);
	root.append(
		...textLines(
			document,
			{ class: "small muted", x: words.leftPx, y: 38 },
			legend,
			smallLinePx,
		),
	);
	return 46 + (legend.length - 1) * smallLinePx;
}

/** The hatching of suction, as a pattern to fill with. */
export function hatching(document: Document, id: string): SVGDefsElement {
	const pattern = svgElement(
		document,
		"pattern",
		{
			id,
			width: 6,
			height: 6,
			patternUnits: "userSpaceOnUse",
			patternTransform: "rotate(45)",
		},
		svgElement(document, "rect", {
			class: "hatch-ground",
			width: 6,
			height: 6,
		}),
		svgElement(document, "line", {
			class: "hatch-stroke",
			x1: 0,
			y1: 0,
			x2: 0,
			y2: 6,
		}),
	);
	return svgElement(document, "defs", {}, pattern);
}
