import { counted, figureWords, numberWord, threeFigures } from "../../words/index.ts";
import type { ChartOptions } from "../kit/chart.ts";
import { ComparisonChart, type ComparisonWords, sideWords } from "../kit/comparison-chart.ts";
import { textBlock, textWidth } from "../kit/fitted-text.ts";
import { centred } from "../kit/label-places.ts";
import { markLine } from "../kit/marks.ts";
import { group, text } from "../kit/shape.ts";
import { labelledTicks, tickLines, tickNumbers } from "../kit/value-axis.ts";
import { smallLetters, smallPx, textPx } from "../theme/letters.ts";
import type { TornadoData, TornadoRow } from "./data.ts";
import { tornadoRow, tornadoSample, tornadoScale } from "./row.ts";

/** One measure's difference under each assumption at half and at twice its value: bars from the base, widest first. */
export function tornado(data: TornadoData, document: Document, options: ChartOptions): SVGSVGElement {
	const { base, unit } = data;
	const { rows, left: leftOut } = drawnRows(data);
	const decimals = data.decimals ?? threeFigures([base, ...rows.flatMap((row) => [row.half ?? 0, row.twice ?? 0])]);
	const chart = new ComparisonChart(options, tornadoWords(data, decimals));
	const { widthPx, isNarrow, headPx } = chart;
	const keyPx = chart.appendKey(
		[
			{ words: "½: at half the value", sample: tornadoSample("half") },
			{ words: "2×: at twice the value", sample: tornadoSample("twice") },
		],
		headPx,
	);
	const labelPx = isNarrow ? null : Math.min(300, widthPx * 0.34);
	const left = labelPx === null ? 2 : labelPx + 14;
	const right = widthPx - 2 - (isNarrow ? 0 : textWidth("turns", textPx) + 14);
	const x = tornadoScale(base, rows, decimals, [left, right]);
	let y = headPx + keyPx + 16;
	chart.append(...sideWords(data, { left, right, y }));
	const baseWords = `as assumed: ${figureWords(base, decimals, unit)}`;
	const baseAt = centred(x(base), textWidth(baseWords, smallPx), { left, right }).middle;
	y += 20;
	const ground = group();
	chart.append(text({ class: "small strong", x: baseAt, y, "text-anchor": "middle" }, baseWords), ground);
	y += 6;
	const firstY = y;
	/** Where lines may run down: all the way, or on a narrow page behind the bars only. */
	const spans: (readonly [number, number])[] = [];
	for (const row of rows) {
		const drawn = tornadoRow(row, base, decimals, x, { topPx: y, widthPx, labelPx });
		chart.append(drawn.group);
		if (isNarrow) spans.push([drawn.barTopPx, drawn.bottomPx]);
		y = drawn.bottomPx;
	}
	if (rows.length === 0) {
		chart.append(text({ class: "muted", x: 0, y: y + 18 }, "no assumption was varied"));
		y += 26;
	}
	if (!isNarrow) spans.push([firstY, y]);
	const ticks = labelledTicks(x, isNarrow ? 4 : 6);
	for (const [from, to] of spans)
		ground.append(...tickLines(x, ticks, from, to), markLine(x(0), from, to, true), markLine(x(base), from, to, false));
	chart.append(...tickNumbers(x, ticks, y));
	y += 20;
	if (unit !== "") {
		y += 14;
		chart.append(text({ class: "small muted", x: right, y, "text-anchor": "end" }, unit));
	}
	const rest = textBlock(leftOut, smallLetters, widthPx - 4, 3);
	chart.append(...rest.at({ class: "small muted", x: 0, y: y + 16 }));
	return chart.drawnIn(document, y + rest.heightPx + 6);
}

const defaultTop = 12;

/** How far a row moves the difference, at the most, to nine figures: rounding sorts nothing. */
function reachOf({ half, twice }: TornadoRow, base: number): number {
	const moves = [half, twice].map((value) => (Number.isFinite(value) ? Math.abs(Number(value) - base) : 0));
	return Number(Math.max(...moves).toPrecision(9));
}

/** Rows that are drawn, widest first; rows that turn the verdict are the last to be left out. And what is said of the rest. */
function drawnRows(data: TornadoData): { readonly rows: TornadoRow[]; readonly left: string } {
	const byReach = (a: TornadoRow, b: TornadoRow): number => reachOf(b, data.base) - reachOf(a, data.base);
	const chosen = [...data.rows].sort((a, b) => Number(b.turns) - Number(a.turns) || byReach(a, b));
	const top = data.top ?? defaultTop;
	const rest = chosen.slice(top);
	const widest = rest.reduce((most, row) => Math.max(most, reachOf(row, data.base)), 0);
	const turning = rest.filter((row) => row.turns).length;
	const left =
		rest.length === 0
			? ""
			: `${counted(rest.length, "assumption")} more ${rest.length === 1 ? "is" : "are"} not drawn: ${widest === 0 ? "none of them moves the difference" : `none of them moves it by more than ${figureWords(widest, threeFigures([widest]), data.unit)}`}${turning === 0 ? "" : `, but ${numberWord(turning)} of them would turn the verdict`}.`;
	return { rows: chosen.slice(0, top).sort(byReach), left };
}

/** Title, how to read, and what a reader would see in the bars. */
function tornadoWords(data: TornadoData, decimals: number): ComparisonWords {
	const { rows, left } = drawnRows(data);
	const number = (value: number | null): string =>
		value === null ? "cannot be run" : figureWords(value, decimals, data.unit);
	const named = rows.map(
		(row) =>
			`${row.label} (${row.value}): ${number(row.half)} at half, ${number(row.twice)} at twice${row.turns ? "; the verdict turns" : ""}.`,
	);
	const turning = data.rows.filter((row) => row.turns).length;
	const found =
		data.rows.length === 0
			? "No assumption was varied."
			: `The difference, ${data.a} less ${data.b}, is ${number(data.base)} as assumed. ${turning === 0 ? "No assumption at half or twice its value would turn the verdict." : `${counted(turning, "assumption")} would turn the verdict.`}`;
	return {
		title: data.title,
		legend: `Mean difference, ${data.a} less ${data.b}, with one assumption at a time at half and at twice its value. Dashed: no difference.${turning > 0 ? " 'turns': the verdict would be another one." : ""}`,
		description: [found, ...named, left].filter((sentence) => sentence !== "").join(" "),
	};
}
