import {
	type ChartOptions,
	chartRoot,
	chartTitle,
	hatching,
} from "./chart-root.ts";
import type { Clock } from "./clock.ts";
import { svgElement } from "./svg-element.ts";
import { type TimePlot, timePlot } from "./time-plot.ts";

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

/** A chart from the beginning of a clock until `toMin`, with its title, its legend and a hatching for suction, and nothing drawn yet. */
export function dayRoot(
	document: Document,
	options: ChartOptions,
	of: {
		readonly clock: Clock;
		readonly toMin: number;
		readonly title: string;
		readonly legend: string;
		/** The text alternative. */
		readonly words: { readonly title: string; readonly description: string };
	},
): DayRoot {
	const widthPx = options.widthPx ?? 960;
	const root = chartRoot(document, options, { widthPx, heightPx: 0 }, of.words);
	const plot = timePlot(
		document,
		options.idPrefix,
		of.clock,
		{ fromMin: 0, toMin: of.toMin },
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
