import { measureHeading } from "../../words/index.ts";
import type { ChartOptions } from "../kit/chart.ts";
import { ComparisonChart, type KeyItem } from "../kit/comparison-chart.ts";
import { textBlock } from "../kit/fitted-text.ts";
import { currentMark, markWords, usualMark } from "../kit/marks.ts";
import { circle, path, type Shape, shape, text, tooltip } from "../kit/shape.ts";
import { labelledTicks, levelAxis, tickLines, tickNumbers, valueScale } from "../kit/value-axis.ts";
import { textLetters } from "../theme/letters.ts";
import { type EfficientSetData, type EfficientSetMeasure, type EfficientSetPoint, efficientSetWords } from "./data.ts";
import { namedPoints } from "./names.ts";

/** Letters of a title of an axis are bold. */
const letters = { sizePx: 14.5, linePx: textLetters.linePx };

const axisTitle = ({ label, unit, better }: EfficientSetMeasure, roomPx: number) =>
	textBlock(`${measureHeading(label, unit)} (${better === "lower" ? "less" : "more"} is better)`, letters, roomPx, 3);

/** Two measures of many regimens: the efficient ones joined and named, the others pale. */
export function efficientSet(data: EfficientSetData, document: Document, options: ChartOptions): SVGSVGElement {
	const chart = new ComparisonChart(options, efficientSetWords(data));
	const { widthPx, isNarrow, headPx } = chart;
	const titleY = headPx + chart.appendKey(efficientKey(data), headPx + 2) + 24;
	const [leftPx, rightPx] = [isNarrow ? 46 : 64, widthPx - 22];
	const yTitle = axisTitle(data.y, widthPx - 8);
	const xTitle = axisTitle(data.x, widthPx - 8);
	const topPx = titleY + yTitle.heightPx + 2;
	const bottomPx = topPx + (isNarrow ? 280 : 380);
	const points = data.points.filter((point) => Number.isFinite(point.x) && Number.isFinite(point.y));
	const scale = (key: "x" | "y", tickCount: number, ends: readonly [fromPx: number, toPx: number]) => {
		const values = points.map((point) => point[key]);
		const axis = valueScale(values, tickCount, { fromZero: false }).range(ends);
		return { axis, ticks: labelledTicks(axis, tickCount) };
	};
	const x = scale("x", isNarrow ? 5 : 8, [leftPx + 14, rightPx - 14]);
	const y = scale("y", 6, [bottomPx - 14, topPx + 14]);
	chart.append(
		...yTitle.at({ class: "heading", x: 0, y: titleY }),
		...tickLines(x.axis, x.ticks, topPx, bottomPx),
		...levelAxis(y.axis, y.ticks, leftPx, rightPx),
		...tickNumbers(x.axis, x.ticks, bottomPx),
		...xTitle.at({ class: "heading", x: rightPx, y: bottomPx + 36, "text-anchor": "end" }),
	);
	const at = points.map((point) => ({ point, x: x.axis(point.x), y: y.axis(point.y) }));
	if (points.length === 0) chart.append(text({ class: "muted", x: leftPx + 8, y: topPx + 22 }, "nothing was run"));
	const efficient = at.filter(({ point }) => point.efficient).sort((a, b) => a.x - b.x || b.y - a.y);
	// Of three measures the set is a surface: a line through it would mean nothing.
	if (data.third === undefined && efficient.length > 1) {
		const through = efficient.map((place) => `${place.x.toFixed(2)},${place.y.toFixed(2)}`);
		chart.append(path("found-edge", `M${through.join("L")}`));
	}
	const names = namedPoints(data, efficient, {
		marks: at.map((place) => ({ x: place.x, y: place.y, halfPx: place.point.current || place.point.usual ? 10 : 3 })),
		frame: { left: leftPx + 2, right: widthPx, top: topPx, bottom: bottomPx },
		listTopPx: bottomPx + 36 + xTitle.heightPx,
		widthPx,
	});
	chart.append(
		...at.filter(({ point }) => !point.efficient).map((place) => paleMark(place.x, place.y, place.point)),
		...at.filter(({ point }) => point.usual).map((place) => usualMark(place.x, place.y)),
		...at.filter(({ point }) => point.current).map((place) => currentMark(place.x, place.y)),
		...efficient.map((place) => efficientMark(place.x, place.y, place.point.label)),
		names.group,
	);
	return chart.drawnIn(document, bottomPx + 30 + xTitle.heightPx + names.heightPx + 4);
}

/** A pale ring, or a cross where a limit is not kept. */
function paleMark(x: number, y: number, { broken, label }: Pick<EfficientSetPoint, "broken" | "label">): Shape {
	if (broken !== true) return circle("unsure-edge faint", x, y, 3.5, tooltip(label));
	const cross = `M${(x - 3.5).toFixed(2)},${(y - 3.5).toFixed(2)}l7,7m0,-7l-7,7`;
	return shape("path", { class: "unsure-edge", d: cross }, tooltip(label));
}

const efficientMark = (x: number, y: number, label: string): Shape => circle("found", x, y, 5, tooltip(label));

/** What the marks of the scatter mean, those that occur. */
function efficientKey({ points, constraints }: EfficientSetData): (KeyItem | null)[] {
	const item = (occurs: boolean, words: string, sample: KeyItem["sample"]) => (occurs ? { words, sample } : null);
	const others = points.filter(({ efficient }) => !efficient);
	const broken = others.filter((point) => point.broken);
	const isMarked = (mark: "current" | "usual") => points.some((point) => point[mark]);
	const pale = (isBroken: boolean) => (x: number, y: number) => paleMark(x, y, { label: "", broken: isBroken });
	const notKept = constraints === undefined ? "breaks a limit" : `does not keep: ${constraints}`;
	const unbettered = "no other regimen betters it in one measure without being worse in another";
	return [
		item(others.length < points.length, unbettered, (x, y) => efficientMark(x, y, "")),
		item(broken.length < others.length, "another regimen is better all round", pale(false)),
		item(broken.length > 0, notKept, pale(true)),
		item(isMarked("current"), markWords.current, currentMark),
		item(isMarked("usual"), markWords.usual, usualMark),
	];
}
