import {
	type ChartOptions,
	chartRoot,
	chartTitle,
	hatching,
} from "./chart-root.ts";
import type { Clock } from "./clock.ts";
import { svgElement } from "./svg-element.ts";
import { type TimePlot, timePlot } from "./time-plot.ts";

/** Width of a chart of a day, px of its grid: on a page of A4, 188 mm of text, its smallest letters are 6.6 pt. */
export const dayWidthPx = 920;

/** Where the time axis of a water-line chart of a width begins and ends, px. */
export const waterLineEdges = (widthPx: number) => ({
	leftPx: 112,
	rightPx: widthPx - 34,
});

/** How every chart of a day on one time axis begins. */
export interface DayRoot {
	readonly root: SVGSVGElement;
	readonly widthPx: number;
	readonly plot: TimePlot;
	/** What lies behind everything else: night and hours. */
	readonly ground: SVGGElement;
	/** Room that title and legend take at the top. */
	readonly headPx: number;
}

/** A chart of a clock until `toMin`, with its title, its legend and a hatching for suction, and nothing drawn yet. */
export function dayRoot(
	document: Document,
	options: ChartOptions,
	of: {
		readonly clock: Clock;
		/** The start of the day by default. */
		readonly fromMin?: number;
		readonly toMin: number;
		readonly title: string;
		readonly legend: string;
		/** The text alternative. */
		readonly words: { readonly title: string; readonly description: string };
	},
): DayRoot {
	const widthPx = options.widthPx ?? dayWidthPx;
	const root = chartRoot(document, options, { widthPx, heightPx: 0 }, of.words);
	const plot = timePlot(
		document,
		options.idPrefix,
		of.clock,
		{ fromMin: of.fromMin ?? 0, toMin: of.toMin },
		waterLineEdges(widthPx),
	);
	const ground = svgElement(document, "g", {});
	root.append(hatching(document, `${options.idPrefix}-hatch`), ground);
	const headPx = chartTitle(root, document, options, {
		title: of.title,
		legend: of.legend,
		leftPx: plot.leftPx,
		roomPx: plot.rightPx - plot.leftPx,
	});
	return { root, widthPx, plot, ground, headPx };
}
