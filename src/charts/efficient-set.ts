import { chartKey } from "./chart-key.ts";
import { type ChartOptions, setSize } from "./chart-root.ts";
import { comparisonRoot, narrowBelowPx } from "./comparison-root.ts";
import { efficientKey } from "./efficient-set-key.ts";
import { efficientMark, paleMark } from "./efficient-set-marks.ts";
import { namedPoints } from "./efficient-set-names.ts";
import { efficientSetWords } from "./efficient-set-words.ts";
import { measureHeading } from "./figures.ts";
import { currentMark, usualMark } from "./regimen-mark.ts";
import { svgElement } from "./svg-element.ts";
import {
	acrossAxis,
	labelledTicks,
	levelAxis,
	valueScale,
} from "./value-axes.ts";
import { textLinePx, textLines, wrappedText } from "./wrapped-text.ts";

export interface EfficientSetData {
	readonly title: string;
	readonly x: EfficientSetMeasure;
	readonly y: EfficientSetMeasure;
	/** A third measure, written beside the points of the set. */
	readonly third?: EfficientSetMeasure;
	readonly points: readonly EfficientSetPoint[];
	/** What the crossed-out points break: 'night calls under 0.5'. */
	readonly constraints?: string;
}

interface EfficientSetMeasure {
	/** 'Washes'. */
	readonly label: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	readonly decimals: number;
	readonly better: "lower" | "higher";
}

export interface EfficientSetPoint {
	/** The regimen in few words: '5 min, 2 h'. */
	readonly label: string;
	readonly x: number;
	readonly y: number;
	readonly third?: number;
	/** In the set: no other point betters it in one measure without being worse in another. */
	readonly efficient: boolean;
	readonly current?: boolean;
	readonly usual?: boolean;
	/** Breaks a constraint. */
	readonly broken?: boolean;
}

/** Two measures of many regimens: the efficient ones joined and named, the others pale. */
export function efficientSet(
	data: EfficientSetData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? 900;
	const narrow = widthPx < narrowBelowPx;
	const { root, headPx } = comparisonRoot(
		document,
		options,
		widthPx,
		efficientSetWords(data),
	);
	const key = chartKey(document, efficientKey(data, document), {
		leftPx: 0,
		topPx: headPx + 2,
		roomPx: widthPx,
	});
	root.append(key.group);
	const [leftPx, rightPx] = [narrow ? 46 : 64, widthPx - 22];
	const better = (measure: EfficientSetMeasure): string =>
		`${measureHeading(measure.label, measure.unit)} (${measure.better === "lower" ? "less" : "more"} is better)`;
	const yTitle = wrappedText(better(data.y), 14.5, widthPx - 8, 3);
	const xTitle = wrappedText(better(data.x), 14.5, widthPx - 8, 3);
	const titleTop = headPx + key.heightPx + 24;
	const topPx = titleTop + yTitle.length * textLinePx + 2;
	const bottomPx = topPx + (narrow ? 280 : 380);
	root.append(
		...textLines(
			document,
			{ class: "heading", x: 0, y: titleTop },
			yTitle,
			textLinePx,
		),
	);
	const points = data.points.filter(
		(point) => Number.isFinite(point.x) && Number.isFinite(point.y),
	);
	const tickCount = narrow ? 5 : 8;
	const x = valueScale(
		points.map((point) => point.x),
		tickCount,
		{ fromZero: false },
	).range([leftPx + 14, rightPx - 14]);
	const y = valueScale(
		points.map((point) => point.y),
		6,
		{ fromZero: false },
	).range([bottomPx - 14, topPx + 14]);
	const across = acrossAxis(
		document,
		x,
		labelledTicks(x, tickCount),
		topPx,
		bottomPx,
	);
	root.append(
		...across.lines,
		...levelAxis(document, y, labelledTicks(y, 6), leftPx, rightPx),
		...across.labels,
		...textLines(
			document,
			{ class: "heading", x: rightPx, y: bottomPx + 36, "text-anchor": "end" },
			xTitle,
			textLinePx,
		),
	);
	const at = points.map((point) => ({
		point,
		x: x(point.x),
		y: y(point.y),
	}));
	if (points.length === 0)
		root.append(
			svgElement(
				document,
				"text",
				{ class: "muted", x: leftPx + 8, y: topPx + 22 },
				"nothing was run",
			),
		);
	const efficient = at
		.filter(({ point }) => point.efficient)
		.sort((a, b) => a.x - b.x || b.y - a.y);
	// Of three measures the set is a surface: a line through it would mean nothing.
	if (data.third === undefined && efficient.length > 1)
		root.append(
			svgElement(document, "path", {
				class: "found-edge",
				d: efficient
					.map(
						(place, index) =>
							`${index === 0 ? "M" : "L"}${place.x.toFixed(2)},${place.y.toFixed(2)}`,
					)
					.join(""),
			}),
		);
	root.append(
		...at
			.filter(({ point }) => !point.efficient)
			.map((place) => paleMark(document, place, place.point)),
		...at
			.filter(({ point }) => point.usual)
			.map((place) => usualMark(document, place.x, place.y)),
		...at
			.filter(({ point }) => point.current)
			.map((place) => currentMark(document, place.x, place.y)),
		...efficient.map((place) => efficientMark(document, place, place.point)),
	);
	const names = namedPoints(data, document, efficient, {
		marks: at.map((place) => ({
			x: place.x,
			y: place.y,
			halfPx: place.point.current || place.point.usual ? 10 : 3,
		})),
		frame: { left: leftPx + 2, right: widthPx, top: topPx, bottom: bottomPx },
		listTopPx: bottomPx + 36 + xTitle.length * textLinePx,
		widthPx,
	});
	root.append(names.group);
	setSize(
		root,
		widthPx,
		bottomPx + 30 + xTitle.length * textLinePx + names.heightPx + 4,
	);
	return root;
}
