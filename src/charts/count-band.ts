import { scaleLinear } from "d3-scale";
import { area, curveStepAfter, line } from "d3-shape";
import type { CountSeries } from "../analysis/supply-result.ts";
import {
	type ChartOptions,
	chartRoot,
	chartTitle,
	setSize,
} from "./chart-root.ts";
import { type Clock, dateWords, dayOffset } from "./clock.ts";
import { dayWidthPx } from "./day-root.ts";
import { plainNumber } from "./quantity.ts";
import { svgElement } from "./svg-element.ts";
import { rowLabel, timeAxis, timePlot } from "./time-plot.ts";

/** A count at the end of each day: the band between P10 and P90 with the median, and levels that matter. */
export interface CountBandData {
	readonly title: string;
	readonly clock: Clock;
	/** What is counted, e.g. `pieces on the shelf`. */
	readonly unit: string;
	/** Day of the first value; below 0 in a warm-up. */
	readonly firstDay: number;
	readonly series: CountSeries;
	/** Drawn dashed; named in the line under the title, where no curve crosses the words. */
	readonly levels: readonly { readonly value: number; readonly name: string }[];
	/** Where something is marked along the foot, e.g. deliveries. */
	readonly marks: readonly { readonly atMin: number; readonly name: string }[];
	/** What the marks are, e.g. `listed deliveries`. */
	readonly marked?: string;
	/** A time at which the picture changes its meaning, e.g. the end of the warm-up. */
	readonly divide?: { readonly atMin: number; readonly name: string };
	/** A sentence on what to read from it. */
	readonly reading: string;
}

const minutesADay = 1440;
const panelPx = 130;

type Point = readonly [atMin: number, value: number];

/** Stock, patients or any other count over days, with its band. */
export function countBand(
	data: CountBandData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? dayWidthPx;
	const { series, firstDay, clock } = data;
	const fromMin = firstDay * minutesADay;
	const toMin = (firstDay + series.p50.length) * minutesADay;
	const root = chartRoot(
		document,
		options,
		{ widthPx, heightPx: 0 },
		{ title: data.title, description: described(data) },
	);
	const plot = timePlot(
		document,
		options.idPrefix,
		clock,
		{ fromMin, toMin },
		{ leftPx: 112, rightPx: widthPx - 34 },
	);
	const headPx = chartTitle(root, document, options, {
		title: data.title,
		legend: legendOf(data),
		leftPx: plot.leftPx,
		roomPx: plot.rightPx - plot.leftPx,
	});
	const topPx = headPx + 12;
	const most = Math.max(
		1,
		...series.p90,
		...data.levels.map(({ value }) => value),
	);
	const y = scaleLinear([0, most], [topPx + panelPx, topPx]);
	const bottomPx = topPx + panelPx;
	const points = (values: readonly number[]): Point[] => {
		const ends = values.map(
			(value, i): Point => [(firstDay + i + 1) * minutesADay, value],
		);
		const [first] = values;
		return first === undefined ? [] : [[fromMin, first], ...ends];
	};
	const low = points(series.p10);
	const band = area<Point>()
		.x(([at]) => plot.x(at))
		.y0((_, i) => y(low[i]?.[1] ?? 0))
		.y1(([, value]) => y(value))
		.curve(curveStepAfter)
		.digits(1);
	const median = line<Point>()
		.x(([at]) => plot.x(at))
		.y(([, value]) => y(value))
		.curve(curveStepAfter)
		.digits(1);
	const rule = (className: string, value: number) =>
		svgElement(document, "line", {
			class: className,
			x1: plot.leftPx,
			x2: plot.rightPx,
			y1: y(value),
			y2: y(value),
		});
	for (const tick of y.ticks(4))
		root.append(
			rule("rule", tick),
			rowLabel(plot, y(tick), plainNumber(tick, 1)),
		);
	root.append(
		svgElement(document, "path", {
			class: "canister-band",
			d: band(points(series.p90)) ?? "",
		}),
		svgElement(document, "path", {
			class: "canister-edge",
			d: median(points(series.p50)) ?? "",
		}),
	);
	for (const { value } of data.levels) root.append(rule("level", value));
	if (data.divide !== undefined) {
		const x = plot.x(data.divide.atMin);
		root.append(
			svgElement(document, "line", {
				class: "boundary",
				x1: x,
				x2: x,
				y1: topPx,
				y2: bottomPx,
			}),
			svgElement(
				document,
				"text",
				{ class: "small muted", x: x + 5, y: topPx + 11 },
				data.divide.name,
			),
		);
	}
	for (const mark of data.marks)
		root.append(
			svgElement(
				document,
				"path",
				{
					class: "canister-mark",
					d: `M${plot.x(mark.atMin).toFixed(1)},${bottomPx}l-5,9h10Z`,
				},
				svgElement(document, "title", {}, mark.name),
			),
		);
	const axisTop = bottomPx + (data.marks.length > 0 ? 10 : 2);
	const axis = timeAxis(plot, axisTop);
	root.append(axis.group);
	setSize(root, widthPx, axisTop + axis.heightPx + 6);
	return root;
}

function legendOf({ unit, levels, marks, marked }: CountBandData): string {
	const dashed = levels.map(
		({ value, name }) => `; dashed: ${name} ${plainNumber(value, 0)}`,
	);
	const triangles =
		marks.length > 0 && marked !== undefined ? `; triangles: ${marked}` : "";
	return `${unit} at the end of each day: median and eight in ten${dashed.join("")}${triangles}`;
}

function described(data: CountBandData): string {
	const { p10, p90 } = data.series;
	const low = Math.min(...p10);
	const day = data.firstDay + p10.indexOf(low);
	const date = dateWords(
		dayOffset((day + 1) * minutesADay, data.clock),
		data.clock,
	);
	return `${data.unit} at the end of each day, the middle eight in ten of the replications. Lowest at ${date}: between ${plainNumber(low, 0)} and ${plainNumber(p90[p10.indexOf(low)] ?? 0, 0)}. ${data.reading}`;
}
