import { differenceBar, sideWords } from "./difference-bar.ts";
import type { DifferenceRowsData } from "./difference-rows.ts";
import { meansOf } from "./difference-words.ts";
import { levelRule } from "./level-rule.ts";
import { svgElement } from "./svg-element.ts";
import { textLinePx, textLines, wrappedText } from "./wrapped-text.ts";

/** A bar with its tick numbers. */
const barPx = 28;

/** Words over the bar, the bar as wide as the page. */
export function differenceStack(
	root: SVGSVGElement,
	data: DifferenceRowsData,
	document: Document,
	widthPx: number,
	topPx: number,
): number {
	const [left, right] = [2, widthPx - 2];
	root.append(...sideWords(document, data, { left, right, y: topPx + 14 }));
	let y = topPx + 24;
	for (const row of data.rows) {
		const grey = row.tone === "unknown" ? "muted" : "";
		const [meanA, meanB] = meansOf(row);
		const label = wrappedText(row.label, 13, widthPx - 4, 3);
		const means = wrappedText(
			`${data.a} ${meanA}, ${data.b} ${meanB}`,
			13,
			widthPx - 4,
			4,
		);
		const verdict = wrappedText(row.verdict, 13, widthPx - 4, 5);
		root.append(
			levelRule(document, 0, widthPx, y),
			...textLines(
				document,
				{ class: `heading ${grey}`.trim(), x: 0, y: y + 19 },
				label,
				textLinePx,
			),
		);
		y += 19 + label.length * textLinePx;
		root.append(
			...textLines(document, { class: grey, x: 0, y }, means, textLinePx),
		);
		y += means.length * textLinePx;
		root.append(
			...textLines(document, { class: grey, x: 0, y }, verdict, textLinePx),
		);
		y += verdict.length * textLinePx;
		const middle = (left + right) / 2;
		root.append(
			svgElement(document, "line", {
				class: "boundary",
				x1: middle,
				x2: middle,
				y1: y - 10,
				y2: y + 8,
			}),
			differenceBar(document, row, { left, right, y }),
		);
		y += barPx;
	}
	return y;
}
