import { scaleLinear } from "d3-scale";
import { curveStepAfter } from "d3-shape";
import type { CountSeries } from "../../results/index.ts";
import { minutesADay } from "../../vocabulary/index.ts";
import { type Clock, dateWords, dayOffset, plainNumber } from "../../words/index.ts";
import type { ChartOptions } from "../kit/chart.ts";
import { path, shape, text, tooltip, uprightLine } from "../kit/shape.ts";
import { areaFromZero, lineThrough, type Point } from "../time/curve.ts";
import { TimeChart } from "../time/time-chart.ts";
import { plotLine, rowLabel } from "../time/time-plot.ts";

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

const panelPx = 130;

/** Stock, patients or any other count over days, with its band. */
export function countBand(data: CountBandData, document: Document, options: ChartOptions): SVGSVGElement {
	const { title, clock, series, firstDay, divide } = data;
	const fromMin = firstDay * minutesADay;
	const chart = new TimeChart(options, {
		clock,
		fromMin,
		toMin: (firstDay + series.p50.length) * minutesADay,
		heading: title,
		legend: legendOf(data),
		words: { title, description: described(data) },
	});
	const { plot } = chart;
	const topPx = chart.headPx + 12;
	const bottomPx = topPx + panelPx;
	const most = Math.max(1, ...series.p90, ...data.levels.map(({ value }) => value));
	const y = scaleLinear([0, most], [bottomPx, topPx]);
	const points = (values: readonly number[]): Point[] => {
		const ends = values.map((value, i): Point => [(firstDay + i + 1) * minutesADay, value]);
		const [first] = values;
		return first === undefined ? [] : [[fromMin, first], ...ends];
	};
	const low = points(series.p10);
	const band = areaFromZero(plot.x, y, 1).curve(curveStepAfter);
	const median = lineThrough(plot.x, y).curve(curveStepAfter).digits(1);
	chart.append(
		...y.ticks(4).flatMap((tick) => [plotLine(plot, "rule", y(tick)), rowLabel(plot, y(tick), plainNumber(tick, 1))]),
		path("canister-band", band.y0((_, i) => y(low[i]?.[1] ?? 0))(points(series.p90))),
		path("canister-edge", median(points(series.p50))),
		...data.levels.map(({ value }) => plotLine(plot, "level", y(value))),
	);
	if (divide !== undefined) {
		const x = plot.x(divide.atMin);
		chart.append(
			uprightLine("boundary", x, topPx, bottomPx),
			text({ class: "small muted", x: x + 5, y: topPx + 11 }, divide.name),
		);
	}
	for (const { atMin, name } of data.marks)
		chart.append(
			shape("path", { class: "canister-mark", d: `M${plot.x(atMin).toFixed(1)},${bottomPx}l-5,9h10Z` }, tooltip(name)),
		);
	return chart.drawnToAxis(document, bottomPx + (data.marks.length > 0 ? 10 : 2), 6);
}

function legendOf({ unit, levels, marks, marked }: CountBandData): string {
	const dashed = levels.map(({ value, name }) => `; dashed: ${name} ${plainNumber(value, 0)}`);
	const triangles = marks.length > 0 && marked !== undefined ? `; triangles: ${marked}` : "";
	return `${unit} at the end of each day: median and eight in ten${dashed.join("")}${triangles}`;
}

function described(data: CountBandData): string {
	const { p10, p90 } = data.series;
	const low = Math.min(...p10);
	const day = data.firstDay + p10.indexOf(low);
	const date = dateWords(dayOffset((day + 1) * minutesADay, data.clock), data.clock);
	return `${data.unit} at the end of each day, the middle eight in ten of the replications. Lowest at ${date}: between ${plainNumber(low, 0)} and ${plainNumber(p90[p10.indexOf(low)] ?? 0, 0)}. ${data.reading}`;
}
