import { type ChartOptions, chartRoot } from "./chart-root.ts";
import { comparisonStyle } from "./comparison-style.ts";
import { svgElement } from "./svg-element.ts";
import {
	smallLinePx,
	textLines,
	titleLinePx,
	wrappedText,
} from "./wrapped-text.ts";

/** Below this width the words of a row stand over its marks instead of beside them. */
export const narrowBelowPx = 600;

/** An empty chart with the styles of a comparison, and under its title, if it has one, how to read it; broken into lines on a narrow page. */
export function comparisonRoot(
	document: Document,
	options: ChartOptions,
	widthPx: number,
	words: {
		readonly title: string;
		readonly legend: string;
		readonly description: string;
	},
): { readonly root: SVGSVGElement; readonly headPx: number } {
	const root = chartRoot(document, options, { widthPx, heightPx: 0 }, words);
	if (options.styled !== false)
		root.append(svgElement(document, "style", {}, comparisonStyle));
	let y = 0;
	if (options.titled !== false) {
		const title = wrappedText(words.title, 17, widthPx - 4, 4);
		root.append(
			...textLines(
				document,
				{ class: "title", x: 0, y: 18 },
				title,
				titleLinePx,
			),
		);
		y = title.length * titleLinePx + 2;
	}
	const legend = wrappedText(words.legend, 11.5, widthPx - 4, 6);
	root.append(
		...textLines(
			document,
			{ class: "small muted", x: 0, y: y + 12 },
			legend,
			smallLinePx,
		),
	);
	return { root, headPx: y + legend.length * smallLinePx + 6 };
}
