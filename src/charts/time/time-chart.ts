import type { Clock } from "../../words/index.ts";
import { Chart, type ChartOptions, type ChartWords } from "../kit/chart.ts";
import { fittedText, textBlock } from "../kit/fitted-text.ts";
import { hatchPattern, hatchStroke } from "../kit/marks.ts";
import { group, type Shape, shape, text } from "../kit/shape.ts";
import { smallLetters, titleLetters } from "../theme/letters.ts";
import type { ChartEvent } from "./chart-events.ts";
import { eventRows } from "./event-rows.ts";
import { type Edges, type TimePlot, timeAxis, timePlot } from "./time-plot.ts";

/** Width of a chart of a day, px of its grid: on a page of A4, 188 mm of text, its smallest letters are 6.6 pt. */
export const dayWidthPx = 920;

/** Where the time axis of a water-line chart of a width begins and ends, px. */
export const waterLineEdges = (widthPx: number): Edges => ({ leftPx: 112, rightPx: widthPx - 34 });

interface TimeChartFrame {
	readonly clock: Clock;
	readonly fromMin?: number;
	readonly toMin: number;
	readonly heading: string;
	readonly legend?: string;
	readonly words: ChartWords;
	readonly edges?: Edges;
	/** Suction is drawn in it, over night and hours on the ground. */
	readonly hatched?: boolean;
}

/** A chart on one time axis, with its title and its legend, and nothing drawn yet. */
export class TimeChart extends Chart {
	readonly plot: TimePlot;
	/** What lies behind everything else. */
	readonly ground = group();
	/** Room that title and legend take at the top. */
	readonly headPx: number;

	constructor(options: ChartOptions, frame: TimeChartFrame) {
		const widthPx = options.widthPx ?? dayWidthPx;
		super(options, widthPx, frame.words);
		const { clock, fromMin = 0, toMin, edges = waterLineEdges(widthPx) } = frame;
		this.plot = timePlot({ clock, hatch: hatchFill(options.idPrefix), ...edges }, { fromMin, toMin });
		if (frame.hatched) this.append(suctionHatch(options.idPrefix), this.ground);
		this.headPx = options.titled === false ? 0 : this.#appendHead(frame);
	}

	/** Writes the title, and a line that says how to read the chart, at the top; returns the px they take. */
	#appendHead({ heading, legend }: TimeChartFrame): number {
		const [x, roomPx] = [this.plot.leftPx, this.plot.rightPx - this.plot.leftPx];
		this.append(text({ class: "title", x, y: 20 }, fittedText(heading, titleLetters.sizePx, roomPx)));
		if (legend === undefined) return 28;
		const lines = textBlock(legend, smallLetters, roomPx);
		this.append(...lines.at({ class: "small muted", x, y: 38 }));
		return 46 - smallLetters.linePx + lines.heightPx;
	}

	/** Events in rows from `topPx` on; returns the px they take. */
	appendRows(topPx: number, heading: string, events: readonly ChartEvent[]): number {
		const rows = eventRows(this.plot, topPx, heading, events);
		this.append(rows.group);
		return rows.heightPx;
	}

	/** The chart with the labels of its axis under `axisPx`, and room below them. */
	drawnToAxis(document: Document, axisPx: number, belowPx: number): SVGSVGElement {
		const axis = timeAxis(this.plot, axisPx);
		this.append(axis.group);
		return this.drawnIn(document, axisPx + axis.heightPx + belowPx);
	}
}

/** What suction is filled with in a chart that holds its hatching. */
export const hatchFill = (idPrefix: string): string => `url(#${idPrefix}-hatch)`;

export function suctionHatch(idPrefix: string): Shape {
	const ground = shape("rect", { class: "hatch-ground", width: 6, height: 6 });
	return shape("defs", {}, hatchPattern(`${idPrefix}-hatch`, 6, ground, hatchStroke("hatch-stroke", 6)));
}
