import { type ChartOptions, setSize } from "./chart-root.ts";
import { comparisonRoot, narrowBelowPx } from "./comparison-root.ts";
import { measureHeading } from "./figures.ts";
import { diamondPath, usualWords } from "./regimen-mark.ts";
import {
	headingLinePx,
	responseHeading,
	responsePanel,
} from "./response-panel.ts";
import { responseWords, valueWords } from "./response-words.ts";
import { stackedRows } from "./stack-labels.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import {
	acrossAxis,
	labelledTicks,
	minuteTicks,
	valueScale,
} from "./value-axes.ts";

export interface ResponseCurveData {
	readonly title: string;
	/** What is varied. */
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

export interface ResponseCurvePanel {
	/** 'Washes'. */
	readonly label: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	/** Any order. */
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
export function responseCurve(
	data: ResponseCurveData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? 900;
	const narrow = widthPx < narrowBelowPx;
	const { root, headPx } = comparisonRoot(
		document,
		options,
		widthPx,
		responseWords(data),
	);
	const [leftPx, rightPx] = [narrow ? 52 : 70, widthPx - 24];
	const marked = markedValues(data);
	const x = valueScale(
		[
			...data.curves.flatMap((curve) => curve.points.map((point) => point.x)),
			...marked.map((mark) => mark.value),
		],
		narrow ? 5 : 8,
	).range([leftPx, rightPx]);
	const names = marked.map((mark) => {
		const half = textWidth(mark.words, 11.5) / 2 + 10;
		const middle = Math.min(
			Math.max(x(mark.value), half),
			Math.max(half, widthPx - half),
		);
		return { ...mark, middle, left: middle - half, right: middle + half };
	});
	const rows = stackedRows(names, 6);
	const namesPx = names.length === 0 ? 0 : (Math.max(...rows) + 1) * 17;
	// A heading that takes more than a line has its room above the panel.
	const moreLines = Math.max(
		0,
		...data.curves.map((curve) => responseHeading(curve, rightPx).length - 1),
	);
	const gapPx = panelGapPx + moreLines * headingLinePx;
	const firstTop = headPx + namesPx + 38 + moreLines * headingLinePx;
	const bottom =
		firstTop + Math.max(1, data.curves.length) * (panelPx + gapPx) - gapPx;
	const tops = Array.from(
		{ length: Math.max(1, data.curves.length) },
		(_, index) => firstTop + index * (panelPx + gapPx),
	);
	const ticks = (data.x.inMinutes === true ? minuteTicks : labelledTicks)(
		x,
		narrow ? 5 : 8,
		data.x.words,
	);
	for (const top of tops)
		root.append(...acrossAxis(document, x, ticks, top, top + panelPx).lines);
	// Lower than the lowest number at the left, which stands beside the first of them.
	const across = acrossAxis(document, x, ticks, firstTop, bottom + 6);
	root.append(...across.labels);
	names.forEach((name, index) => {
		const y = headPx + 14 + (rows[index] ?? 0) * 17;
		root.append(
			// In pieces, so that no heading is struck through.
			...[
				[headPx + namesPx + 2, headPx + namesPx + 10] as const,
				...tops.map((top) => [top - 4, top + panelPx] as const),
			].map(([from, to]) =>
				svgElement(document, "line", {
					class: name.usual ? "ink-edge dashed" : "ink-edge",
					x1: x(name.value),
					x2: x(name.value),
					y1: from,
					y2: to,
					style: `stroke-width:${name.usual ? 1 : 1.8}`,
				}),
			),
			name.usual
				? svgElement(document, "path", {
						class: "ink",
						d: diamondPath(name.left + 6, y - 4, 5),
					})
				: svgElement(document, "circle", {
						class: "ink",
						cx: name.left + 6,
						cy: y - 4,
						r: 4,
					}),
			svgElement(
				document,
				"text",
				{ class: "small", x: name.left + 15, y },
				name.words,
			),
		);
	});
	data.curves.forEach((curve, index) => {
		root.append(
			responsePanel(document, curve, x, {
				leftPx,
				rightPx,
				topPx: tops[index] ?? firstTop,
				heightPx: panelPx,
			}),
		);
	});
	if (data.curves.length === 0)
		root.append(
			svgElement(
				document,
				"text",
				{ class: "muted", x: leftPx + 6, y: firstTop + 20 },
				"no measure differs between the regimens that were run",
			),
		);
	root.append(
		svgElement(
			document,
			"text",
			{ class: "heading", x: rightPx, y: bottom + 40, "text-anchor": "end" },
			measureHeading(
				data.x.label,
				data.x.words === undefined ? data.x.unit : "",
			),
		),
	);
	setSize(root, widthPx, bottom + 48);
	return root;
}

/** The values that are marked, the reader's own first. */
function markedValues(data: ResponseCurveData) {
	const { current, usual } = data.x;
	const mark = (
		value: number | null | undefined,
		name: string,
		usual: boolean,
	) =>
		value === null || value === undefined
			? []
			: [{ value, usual, words: `${name}: ${valueWords(data, value)}` }];
	return [...mark(current, "current", false), ...mark(usual, usualWords, true)];
}
