import { chartRoot } from "./chart-root.ts";
import { differenceBar } from "./difference-bar.ts";
import type { DifferenceRow } from "./difference-rows.ts";
import { svgElement } from "./svg-element.ts";

/** Width of a lone bar, px of its grid. */
const differenceMarkPx = 240;
const highPx = 36;

/** The dot and the bar of one row, to stand in a cell of a table that says the rest in words. */
export function differenceMark(
	row: DifferenceRow,
	document: Document,
	options: { readonly idPrefix: string; readonly styled?: boolean },
): SVGSVGElement {
	const root = chartRoot(
		document,
		options,
		{ widthPx: differenceMarkPx, heightPx: highPx },
		{ title: row.label, description: row.verdict },
	);
	const middle = differenceMarkPx / 2;
	root.append(
		svgElement(document, "line", {
			class: "boundary",
			x1: middle,
			x2: middle,
			y1: 0,
			y2: 20,
		}),
		differenceBar(document, row, {
			left: 1,
			right: differenceMarkPx - 1,
			y: 11,
		}),
	);
	return root;
}
