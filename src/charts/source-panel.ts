import { scaleLinear } from "d3-scale";
import { type Area, area } from "d3-shape";
import type { DayCurve } from "../analysis/day-result.ts";
import { volumeWords } from "./quantity.ts";
import { svgElement } from "./svg-element.ts";
import { type Point, thinnedCurve } from "./thin-curve.ts";
import { rowLabel, type TimePlot } from "./time-plot.ts";

/** The solution that is left in the source, falling fill by fill. */
export function sourcePanel(
	plot: TimePlot,
	curve: DayCurve,
	sourceMl: number,
	topPx: number,
	panelPx: number,
): SVGGElement {
	const { document } = plot;
	const y = scaleLinear([0, sourceMl], [topPx + panelPx, topPx]);
	const points = thinnedCurve(
		curve.atMin,
		curve.sourceMl,
		plot.fromMin,
		plot.toMin,
		Math.ceil(plot.rightPx - plot.leftPx),
	);
	const ground: Area<Point> = area<Point>()
		.x((point) => plot.x(point[0]))
		.y0(y(0))
		.y1((point) => y(point[1]))
		.digits(2);
	return svgElement(
		document,
		"g",
		{},
		svgElement(document, "path", { class: "source", d: ground(points) ?? "" }),
		svgElement(document, "path", {
			class: "source-edge",
			d: ground.lineY1()(points) ?? "",
		}),
		svgElement(document, "line", {
			class: "rule",
			x1: plot.leftPx,
			x2: plot.rightPx,
			y1: y(0),
			y2: y(0),
		}),
		rowLabel(plot, y(sourceMl) + 3, volumeWords(sourceMl)),
		rowLabel(plot, y(0) - 4, "solution left"),
	);
}
