import { differenceBar, sideWords } from "./difference-bar.ts";
import type { DifferenceRow, DifferenceRowsData } from "./difference-rows.ts";
import { meansOf } from "./difference-words.ts";
import { levelRule } from "./level-rule.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { textLinePx, textLines, wrappedText } from "./wrapped-text.ts";

const gapPx = 18;
/** A bar with its tick numbers, and room around it. */
const leastRowPx = 42;

const toneClass = (row: DifferenceRow): string =>
	row.tone === "unknown" ? "muted" : row.tone === "difference" ? "strong" : "";

/** A table: label, both means, bar, verdict. */
export function differenceTable(
	root: SVGSVGElement,
	data: DifferenceRowsData,
	document: Document,
	widthPx: number,
	topPx: number,
): number {
	const room = widthPx - 4 * gapPx;
	const meanPx = (index: 0 | 1): number =>
		Math.min(
			room * 0.15,
			Math.max(
				...data.rows.map((row) => textWidth(meansOf(row)[index], 13)),
				textWidth(index === 0 ? data.a : data.b, 13),
				44,
			),
		);
	const labelPx = Math.min(
		room * 0.22,
		Math.max(...data.rows.map((row) => textWidth(row.label, 13)), 60),
	);
	const [aPx, bPx] = [meanPx(0), meanPx(1)];
	const scalePx = Math.max(150, room * 0.3);
	const aRight = labelPx + gapPx + aPx;
	const bRight = aRight + gapPx + bPx;
	const left = bRight + gapPx + 6;
	const right = left + scalePx;
	const verdictLeft = right + gapPx;
	const verdictPx = widthPx - verdictLeft;
	const heading = (
		text: string,
		x: number,
		anchor: "start" | "end",
		roomPx: number,
	) => {
		const lines = wrappedText(text, 13, roomPx, 2);
		return textLines(
			document,
			{
				class: "heading",
				x,
				y: topPx + 32 - (lines.length - 1) * textLinePx,
				"text-anchor": anchor,
			},
			lines,
			textLinePx,
		);
	};
	root.append(
		...heading("measure", 0, "start", labelPx),
		...heading(data.a, aRight, "end", aPx + gapPx - 8),
		...heading(data.b, bRight, "end", bPx + gapPx - 8),
		...sideWords(document, data, { left, right, y: topPx + 32 }),
		...heading("verdict", verdictLeft, "start", verdictPx),
	);
	let y = topPx + 40;
	const firstY = y;
	const ground = svgElement(document, "g", {});
	root.append(ground);
	for (const row of data.rows) {
		ground.append(levelRule(document, 0, widthPx, y));
		const label = wrappedText(row.label, 13, labelPx, 4);
		const verdict = wrappedText(row.verdict, 13, verdictPx, 6);
		const means = meansOf(row);
		const meanA = wrappedText(means[0], 13, aPx + 4, 3);
		const meanB = wrappedText(means[1], 13, bPx + 4, 3);
		const most = Math.max(
			label.length,
			verdict.length,
			meanA.length,
			meanB.length,
		);
		const rowPx = Math.max(leastRowPx, most * textLinePx + 12);
		const base = y + 21;
		const grey = row.tone === "unknown" ? "muted" : "";
		root.append(
			...textLines(document, { class: grey, x: 0, y: base }, label, textLinePx),
			...textLines(
				document,
				{ class: grey, x: aRight, y: base, "text-anchor": "end" },
				meanA,
				textLinePx,
			),
			...textLines(
				document,
				{ class: grey, x: bRight, y: base, "text-anchor": "end" },
				meanB,
				textLinePx,
			),
			differenceBar(document, row, { left, right, y: y + 16 }),
			...textLines(
				document,
				{ class: toneClass(row), x: verdictLeft, y: base },
				verdict,
				textLinePx,
			),
		);
		y += rowPx;
	}
	const middle = (left + right) / 2;
	ground.append(
		svgElement(document, "line", {
			class: "boundary",
			x1: middle,
			x2: middle,
			y1: firstY,
			y2: y,
		}),
	);
	return y;
}
