import type { ScaleLinear } from "d3-scale";
import { figureWords } from "./figures.ts";
import { levelRule } from "./level-rule.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import type { TornadoData, TornadoRow } from "./tornado.ts";
import { tornadoBar } from "./tornado-bar.ts";
import { valueScale } from "./value-axes.ts";
import {
	smallLinePx,
	textLinePx,
	textLines,
	wrappedText,
} from "./wrapped-text.ts";

/** Two bars, one for half and one for twice. */
const barsPx = 36;

/** A scale of zero, the base and every end, with room at both sides for '½' and '2×' with their numbers. */
export function tornadoScale(
	base: number,
	rows: readonly TornadoRow[],
	decimals: number,
	[left, right]: readonly [number, number],
): ScaleLinear<number, number> {
	const ends = rows
		.flatMap((row) => [row.half, row.twice])
		.filter((value) => value !== null);
	const widest = ends.reduce(
		(most, value) =>
			Math.max(most, textWidth(`2× ${figureWords(value, decimals, "")}`, 11.5)),
		0,
	);
	return valueScale([0, base, ...ends], 5, { fromZero: false }).range([
		left + widest + 12,
		right - widest - 12,
	]);
}

/** What is assumed, its bars beside it, and 'turns' at the end; on a narrow page (`labelPx` null) the words stand over the bars. */
export function tornadoRow(
	document: Document,
	data: TornadoData,
	row: TornadoRow,
	place: {
		readonly x: ScaleLinear<number, number>;
		readonly topPx: number;
		readonly widthPx: number;
		readonly labelPx: number | null;
		readonly decimals: number;
	},
): {
	readonly group: SVGGElement;
	readonly barTopPx: number;
	readonly bottomPx: number;
} {
	const { x, topPx, widthPx, labelPx, decimals } = place;
	const narrow = labelPx === null;
	const room = labelPx ?? widthPx - 4;
	const label = wrappedText(row.label, 13, room, 4);
	const value = wrappedText(
		row.turns && narrow ? `${row.value}; the verdict turns` : row.value,
		11.5,
		room,
		2,
	);
	const textPx = label.length * textLinePx + value.length * smallLinePx;
	const barTopPx = narrow ? topPx + textPx + 6 : topPx + 2;
	const group = svgElement(
		document,
		"g",
		{},
		levelRule(document, 0, widthPx, topPx),
		...textLines(document, { x: 0, y: topPx + 16 }, label, textLinePx),
		...textLines(
			document,
			{
				class: row.turns && narrow ? "small strong" : "small muted",
				x: 0,
				y: topPx + 15 + label.length * textLinePx,
			},
			value,
			smallLinePx,
		),
		tornadoBar(document, data, row, { x, topPx: barTopPx, decimals }),
	);
	if (row.turns && !narrow)
		group.append(
			svgElement(
				document,
				"text",
				{
					class: "strong",
					x: widthPx - 2,
					y: topPx + 23,
					"text-anchor": "end",
				},
				"turns",
			),
		);
	const bottomPx = narrow
		? barTopPx + barsPx
		: topPx + Math.max(barsPx + 4, textPx + 10);
	return { group, barTopPx, bottomPx };
}
