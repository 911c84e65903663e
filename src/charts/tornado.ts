import { chartKey } from "./chart-key.ts";
import { type ChartOptions, setSize } from "./chart-root.ts";
import { comparisonRoot, narrowBelowPx } from "./comparison-root.ts";
import { sideWords } from "./difference-bar.ts";
import { figureWords, threeFigures } from "./figures.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { tornadoSample } from "./tornado-bar.ts";
import { tornadoRow, tornadoScale } from "./tornado-row.ts";
import { drawnRows, tornadoWords } from "./tornado-words.ts";
import { acrossAxis, labelledTicks } from "./value-axes.ts";
import { smallLinePx, textLines, wrappedText } from "./wrapped-text.ts";

export interface TornadoData {
	/** 'Washes a day, short − long: what the difference rests on'. */
	readonly title: string;
	/** Names of the regimens; the difference is a − b. */
	readonly a: string;
	readonly b: string;
	/** 'mL', 'a day'; '' for a bare count. */
	readonly unit: string;
	/** Most digits after the point of its numbers; by default three figures of the largest. */
	readonly decimals?: number;
	/** The difference with every assumption as it is. */
	readonly base: number;
	/** Any order; they are sorted by reach, the widest at the top. */
	readonly rows: readonly TornadoRow[];
	/** How many are drawn at most, those that turn the verdict first kept; 12 by default. The rest are counted in words. */
	readonly top?: number;
}

export interface TornadoRow {
	/** What is assumed: 'rate of breaches of a dry seal'. */
	readonly label: string;
	/** Its value in words: '0.004 /h'. */
	readonly value: string;
	/** The difference at half and at twice the value; null where that setting cannot be run. */
	readonly half: number | null;
	readonly twice: number | null;
	/** The verdict is another one at half or at twice. */
	readonly turns: boolean;
}

/** One measure's difference under each assumption at half and at twice its value: bars from the base, widest first. */
export function tornado(
	data: TornadoData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? 900;
	const narrow = widthPx < narrowBelowPx;
	const { rows, left: leftOut } = drawnRows(data);
	const decimals =
		data.decimals ??
		threeFigures([
			data.base,
			...rows.flatMap((row) => [row.half ?? 0, row.twice ?? 0]),
		]);
	const { root, headPx } = comparisonRoot(
		document,
		options,
		widthPx,
		tornadoWords(data, decimals),
	);
	const key = chartKey(
		document,
		[
			{
				words: "½: at half the value",
				sample: (x, y) => tornadoSample(document, "half", x, y),
			},
			{
				words: "2×: at twice the value",
				sample: (x, y) => tornadoSample(document, "twice", x, y),
			},
		],
		{ leftPx: 0, topPx: headPx, roomPx: widthPx },
	);
	root.append(key.group);
	const turnsPx = narrow ? 0 : textWidth("turns", 13) + 14;
	const labelPx = narrow ? 0 : Math.min(300, widthPx * 0.34);
	const left = narrow ? 2 : labelPx + 14;
	const right = widthPx - 2 - turnsPx;
	const x = tornadoScale(data.base, rows, decimals, [left, right]);
	const zeroPx = x(0);
	const basePx = x(data.base);
	let y = headPx + key.heightPx + 16;
	root.append(...sideWords(document, data, { left, right, y }));
	const baseWords = `as assumed: ${figureWords(data.base, decimals, data.unit)}`;
	const half = textWidth(baseWords, 11.5) / 2;
	y += 20;
	root.append(
		svgElement(
			document,
			"text",
			{
				class: "small strong",
				x: Math.min(Math.max(basePx, left + half), right - half),
				y,
				"text-anchor": "middle",
			},
			baseWords,
		),
	);
	y += 6;
	const firstY = y;
	const ground = svgElement(document, "g", {});
	root.append(ground);
	/** Where lines may run down: all the way, or on a narrow page behind the bars only. */
	const spans: (readonly [number, number])[] = [];
	for (const row of rows) {
		const drawn = tornadoRow(document, data, row, {
			x,
			topPx: y,
			widthPx,
			labelPx: narrow ? null : labelPx,
			decimals,
		});
		root.append(drawn.group);
		if (narrow) spans.push([drawn.barTopPx, drawn.bottomPx]);
		y = drawn.bottomPx;
	}
	if (rows.length === 0) {
		root.append(
			svgElement(
				document,
				"text",
				{ class: "muted", x: 0, y: y + 18 },
				"no assumption was varied",
			),
		);
		y += 26;
	}
	if (!narrow) spans.push([firstY, y]);
	const ticks = labelledTicks(x, narrow ? 4 : 6);
	for (const [from, to] of spans)
		ground.append(
			...acrossAxis(document, x, ticks, from, to).lines,
			downLine(document, zeroPx, from, to, "ink-edge dashed", 1),
			downLine(document, basePx, from, to, "ink-edge", 1.8),
		);
	root.append(...acrossAxis(document, x, ticks, firstY, y).labels);
	y += 20;
	if (data.unit !== "") {
		y += 14;
		root.append(
			svgElement(
				document,
				"text",
				{ class: "small muted", x: right, y, "text-anchor": "end" },
				data.unit,
			),
		);
	}
	const rest = wrappedText(leftOut, 11.5, widthPx - 4, 3);
	root.append(
		...textLines(
			document,
			{ class: "small muted", x: 0, y: y + 16 },
			rest,
			smallLinePx,
		),
	);
	setSize(root, widthPx, y + rest.length * smallLinePx + 6);
	return root;
}

const downLine = (
	document: Document,
	x: number,
	fromPx: number,
	toPx: number,
	className: string,
	strokePx: number,
): SVGLineElement =>
	svgElement(document, "line", {
		class: className,
		x1: x,
		x2: x,
		y1: fromPx,
		y2: toPx,
		style: `stroke-width:${strokePx}`,
	});
