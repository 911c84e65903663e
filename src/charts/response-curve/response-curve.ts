import { area } from "d3-shape";
import { figureWords, measureHeading, threeFigures } from "../../words/index.ts";
import type { ChartOptions } from "../kit/chart.ts";
import { ComparisonChart, type ComparisonWords, hollowWords } from "../kit/comparison-chart.ts";
import { type TextBlock, textBlock, textWidth } from "../kit/fitted-text.ts";
import { centred, rowCount, stackedRows } from "../kit/label-places.ts";
import { diamondPath, markLine, markWords } from "../kit/marks.ts";
import { circle, group, path, type Shape, text } from "../kit/shape.ts";
import type { Scale } from "../kit/value-axis.ts";
import { labelledTicks, levelAxis, minuteTicks, tickLines, tickNumbers, valueScale } from "../kit/value-axis.ts";
import { smallLetters, smallPx } from "../theme/letters.ts";
import { lineThrough } from "../time/curve.ts";
import type { Edges } from "../time/time-plot.ts";

export interface ResponseCurveData {
	readonly title: string;
	readonly x: {
		/** 'Dwell'. */
		readonly label: string;
		readonly unit: string;
		/** The value of the reader's own regimen; null where it has none. */
		readonly current: number | null;
		/** That of the site's usual regimen. */
		readonly usual?: number | null;
		/** True where values are minutes, so that ticks fall on hours and quarters of them. */
		readonly inMinutes?: boolean;
		/** How a value on the axis is written; by default a plain number. */
		readonly words?: (value: number) => string;
	};
	/** One panel a measure, from the top. */
	readonly curves: readonly ResponseCurvePanel[];
}

interface ResponseCurvePanel {
	/** 'Washes'. */
	readonly label: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	readonly points: readonly {
		readonly x: number;
		readonly mean: number;
		/** 95 % interval of the mean; null where none could be given. */
		readonly low: number | null;
		readonly high: number | null;
	}[];
}

const panelPx = 104;
const panelGapPx = 42;

/** The mean of each measure, with its 95 % band, over one variable; small multiples on one axis. */
export function responseCurve(data: ResponseCurveData, document: Document, options: ChartOptions): SVGSVGElement {
	const chart = new ComparisonChart(options, responseWords(data));
	const { widthPx, isNarrow, headPx } = chart;
	const { curves } = data;
	const [leftPx, rightPx] = [isNarrow ? 52 : 70, widthPx - 24];
	const tickCount = isNarrow ? 5 : 8;
	const marked = markedValues(data);
	const values = [...curves.flatMap(({ points }) => points.map((point) => point.x)), ...marked.map((one) => one.value)];
	const x = valueScale(values, tickCount).range([leftPx, rightPx]);
	const names = marked.map((mark) => ({
		...mark,
		...centred(x(mark.value), textWidth(mark.words, smallPx) + 20, { left: 0, right: widthPx }),
	}));
	const rows = stackedRows(names, 6);
	const namesPx = rowCount(rows) * smallLetters.linePx;
	// A heading that takes more than a line has its room above the panel.
	const headings = curves.map((curve) => responseHeading(curve, rightPx).heightPx);
	const morePx = Math.max(headingLetters.linePx, ...headings) - headingLetters.linePx;
	const firstTop = headPx + namesPx + 38 + morePx;
	const stepPx = panelPx + panelGapPx + morePx;
	const tops = Array.from({ length: Math.max(1, curves.length) }, (_, index) => firstTop + index * stepPx);
	const bottomPx = firstTop + (tops.length - 1) * stepPx + panelPx;
	const ticks = (data.x.inMinutes === true ? minuteTicks : labelledTicks)(x, tickCount, data.x.words);
	chart.append(
		...tops.flatMap((top) => tickLines(x, ticks, top, top + panelPx)),
		// Lower than the lowest number at the left, which stands beside the first of them.
		...tickNumbers(x, ticks, bottomPx + 6),
	);
	names.forEach(({ value, isUsual, words, left }, index) => {
		const y = headPx + 14 + (rows[index] ?? 0) * smallLetters.linePx;
		chart.append(
			// In pieces, so that no heading is struck through.
			markLine(x(value), headPx + namesPx + 2, headPx + namesPx + 10, isUsual),
			...tops.map((top) => markLine(x(value), top - 4, top + panelPx, isUsual)),
			isUsual ? path("ink", diamondPath(left + 6, y - 4, 5)) : circle("ink", left + 6, y - 4, 4),
			text({ class: "small", x: left + 15, y }, words),
		);
	});
	chart.append(
		...curves.map((curve, index) => responsePanel(curve, x, { leftPx, rightPx }, firstTop + index * stepPx)),
	);
	if (curves.length === 0) {
		const none = "no measure differs between the regimens that were run";
		chart.append(text({ class: "muted", x: leftPx + 6, y: firstTop + 20 }, none));
	}
	const xName = measureHeading(data.x.label, data.x.words === undefined ? data.x.unit : "");
	chart.append(text({ class: "heading", x: rightPx, y: bottomPx + 40, "text-anchor": "end" }, xName));
	return chart.drawnIn(document, bottomPx + 48);
}

function markedValues(data: ResponseCurveData) {
	const mark = (value: number | null | undefined, name: string, isUsual: boolean) =>
		value === null || value === undefined ? [] : [{ value, isUsual, words: `${name}: ${valueWords(data, value)}` }];
	return [...mark(data.x.current, "current", false), ...mark(data.x.usual, markWords.usual, true)];
}

/** A value of the variable, as the axis writes it. */
const valueWords = (data: ResponseCurveData, value: number): string =>
	data.x.words === undefined ? figureWords(value, threeFigures([value]), data.x.unit) : data.x.words(value);

/** Title, how to read, and what a reader would see in the curves. */
function responseWords(data: ResponseCurveData): ComparisonWords {
	const hollow = hollowWords(data.curves.flatMap((curve) => curve.points));
	return {
		title: data.title,
		legend: `Dots: means, with bars and a band of 95 %. Everything else stays as it is.${hollow}`,
		description:
			data.curves.length === 0
				? "No measure differs between the regimens that were run."
				: data.curves.map((curve) => curveWords(data, curve)).join(" "),
	};
}

function curveWords(data: ResponseCurveData, curve: ResponseCurvePanel): string {
	const points = [...curve.points].sort((a, b) => a.x - b.x);
	const [first, last] = [points[0], points.at(-1)];
	if (first === undefined || last === undefined) return `${curve.label}: no values.`;
	const decimals = threeFigures(points.map((point) => point.mean));
	const number = (value: number): string => figureWords(value, decimals, curve.unit);
	const current = points.find((point) => point.x === data.x.current);
	const now = current === undefined ? "" : `; ${number(current.mean)} at the current one`;
	const ends = points.length === 1 ? [first] : [first, last];
	const run = ends.map((point) => `${number(point.mean)} at ${valueWords(data, point.x)}`);
	return `${curve.label} by ${data.x.label}: ${run.join(", ")}${now}.`;
}

type Point = ResponseCurvePanel["points"][number];
type Banded = Point & { readonly low: number; readonly high: number };

const isBanded = (point: Point): point is Banded => point.low !== null && point.high !== null;

/** Letters of a heading are wider than others. */
const headingLetters = { sizePx: 14, linePx: 18 };

const responseHeading = (curve: ResponseCurvePanel, roomPx: number): TextBlock =>
	textBlock(measureHeading(curve.label, curve.unit), headingLetters, roomPx, 3);

/** One measure: band with dashed edges, line, a dot and a bar at each value that was run. */
function responsePanel(curve: ResponseCurvePanel, x: Scale, { leftPx, rightPx }: Edges, topPx: number): Shape {
	const points = curve.points
		.filter((point) => Number.isFinite(point.x) && Number.isFinite(point.mean))
		.sort((a, b) => a.x - b.x);
	const values = points.flatMap((point) => [point.mean, point.low ?? point.mean, point.high ?? point.mean]);
	const y = valueScale(values, 4).range([topPx + panelPx, topPx]);
	const heading = responseHeading(curve, rightPx);
	const headingY = topPx - 15 + headingLetters.linePx - heading.heightPx;
	const panel = group(
		...levelAxis(y, labelledTicks(y, 4), leftPx, rightPx),
		...heading.at({ class: "heading halo", x: 0, y: headingY }),
	);
	if (points.length === 0) {
		panel.append(text({ class: "muted halo", x: leftPx + 6, y: topPx + 20 }, "no values"));
		return panel;
	}
	const band = area<Point>()
		.defined(isBanded)
		.x((point) => x(point.x))
		.y0((point) => y(point.low ?? point.mean))
		.y1((point) => y(point.high ?? point.mean))
		.digits(2);
	const means = lineThrough(x, y)(points.map((point) => [point.x, point.mean]));
	panel.append(path("found found-band", band(points)), path("found-edge", means));
	const few = points.length <= 40;
	for (const point of points)
		panel.append(
			isBanded(point) && few ? path("found-edge", intervalPath(point, x, y), { style: "stroke-width:1.2" }) : null,
			circle(isBanded(point) ? "found" : "found-edge hollow", x(point.x), y(point.mean), few ? 3.5 : 2),
		);
	return panel;
}

const intervalPath = (point: Banded, x: Scale, y: Scale): string =>
	`M${(x(point.x) - 3).toFixed(2)},${y(point.low).toFixed(2)}h6m-3,0V${y(point.high).toFixed(2)}m-3,0h6`;
