import type { ChartOptions } from "../kit/chart.ts";
import { ComparisonChart, sideWords } from "../kit/comparison-chart.ts";
import { textBlock, widestText } from "../kit/fitted-text.ts";
import { group, levelLine, text, uprightLine } from "../kit/shape.ts";
import { textLetters, textPx } from "../theme/letters.ts";
import { type DifferenceRow, type DifferenceRowsData, differenceWords, meansOf } from "./data.ts";
import { differenceBar } from "./difference-mark.ts";

/** Two regimens, a row a measure: means, the difference on a scale of its own with zero in the middle, the verdict. */
export function differenceRows(data: DifferenceRowsData, document: Document, options: ChartOptions): SVGSVGElement {
	const chart = new ComparisonChart(options, differenceWords(data));
	if (data.rows.length === 0) {
		chart.append(text({ class: "muted", x: 0, y: chart.headPx + 18 }, "no measure was asked for"));
		return chart.drawnIn(document, chart.headPx + 30);
	}
	const bottomPx = (chart.isNarrow ? appendStack : appendTable)(chart, data);
	return chart.drawnIn(document, bottomPx + 4);
}

const gapPx = 18;
/** A bar with its tick numbers, alone and with room around it. */
const barPx = 28;
const leastRowPx = 42;

const toneOf = (row: DifferenceRow): string => (row.tone === "unknown" ? "muted" : "");

/** A table: label, both means, bar, verdict. Returns where it ends, px from the top. */
function appendTable(chart: ComparisonChart, data: DifferenceRowsData): number {
	const { widthPx, headPx } = chart;
	const room = widthPx - 4 * gapPx;
	const meanPx = (index: 0 | 1, name: string): number =>
		Math.min(room * 0.15, Math.max(widestText([...data.rows.map((row) => meansOf(row)[index]), name], textPx), 44));
	const labels = data.rows.map((row) => row.label);
	const labelPx = Math.min(room * 0.22, Math.max(widestText(labels, textPx), 60));
	const [aPx, bPx] = [meanPx(0, data.a), meanPx(1, data.b)];
	const aRight = labelPx + gapPx + aPx;
	const bRight = aRight + gapPx + bPx;
	const left = bRight + gapPx + 6;
	const right = left + Math.max(150, room * 0.3);
	const verdictLeft = right + gapPx;
	const verdictPx = widthPx - verdictLeft;
	const heading = (words: string, x: number, anchor: "start" | "end", roomPx: number) => {
		const block = textBlock(words, textLetters, roomPx, 2);
		const y = headPx + 32 + textLetters.linePx - block.heightPx;
		return block.at({ class: "heading", x, y, "text-anchor": anchor });
	};
	const ground = group();
	chart.append(
		...heading("measure", 0, "start", labelPx),
		...heading(data.a, aRight, "end", aPx + gapPx - 8),
		...heading(data.b, bRight, "end", bPx + gapPx - 8),
		...sideWords(data, { left, right, y: headPx + 32 }),
		...heading("verdict", verdictLeft, "start", verdictPx),
		ground,
	);
	const firstY = headPx + 40;
	let y = firstY;
	for (const row of data.rows) {
		const means = meansOf(row);
		const label = textBlock(row.label, textLetters, labelPx, 4);
		const verdict = textBlock(row.verdict, textLetters, verdictPx, 6);
		const [meanA, meanB] = [textBlock(means[0], textLetters, aPx + 4, 3), textBlock(means[1], textLetters, bPx + 4, 3)];
		const place = (x: number) => ({ class: toneOf(row), x, y: y + 21 });
		ground.append(levelLine("rule", 0, widthPx, y));
		chart.append(
			...label.at(place(0)),
			...meanA.at({ ...place(aRight), "text-anchor": "end" }),
			...meanB.at({ ...place(bRight), "text-anchor": "end" }),
			differenceBar(row, { left, right, y: y + 16 }),
			...verdict.at({ ...place(verdictLeft), ...(row.tone === "difference" ? { class: "strong" } : {}) }),
		);
		const highest = Math.max(...[label, verdict, meanA, meanB].map((block) => block.heightPx));
		y += Math.max(leastRowPx, highest + 12);
	}
	ground.append(uprightLine("boundary", (left + right) / 2, firstY, y));
	return y;
}

/** Words over the bar, the bar as wide as the page. */
function appendStack(chart: ComparisonChart, data: DifferenceRowsData): number {
	const { widthPx, headPx } = chart;
	const [left, right] = [2, widthPx - 2];
	chart.append(...sideWords(data, { left, right, y: headPx + 14 }));
	let y = headPx + 24;
	for (const row of data.rows) {
		const [meanA, meanB] = meansOf(row);
		const label = textBlock(row.label, textLetters, widthPx - 4, 3);
		const means = textBlock(`${data.a} ${meanA}, ${data.b} ${meanB}`, textLetters, widthPx - 4, 4);
		const verdict = textBlock(row.verdict, textLetters, widthPx - 4, 5);
		const meansY = y + 19 + label.heightPx;
		const verdictY = meansY + means.heightPx;
		const barY = verdictY + verdict.heightPx;
		chart.append(
			levelLine("rule", 0, widthPx, y),
			...label.at({ class: `heading ${toneOf(row)}`.trim(), x: 0, y: y + 19 }),
			...means.at({ class: toneOf(row), x: 0, y: meansY }),
			...verdict.at({ class: toneOf(row), x: 0, y: verdictY }),
			uprightLine("boundary", (left + right) / 2, barY - 10, barY + 8),
			differenceBar(row, { left, right, y: barY }),
		);
		y = barY + barPx;
	}
	return y;
}
