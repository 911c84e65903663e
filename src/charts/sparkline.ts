import { scaleLinear } from "d3-scale";
import { area } from "d3-shape";
import type { DressingDay } from "../analysis/day-result.ts";
import { type ChartOptions, chartRoot, hatching } from "./chart-root.ts";
import { counted } from "./quantity.ts";
import { svgElement } from "./svg-element.ts";
import { type Point, thinnedCurve } from "./thin-curve.ts";
import { waterBandRange } from "./water-band.ts";

const heightPx = 24;
const linePx = 9;

/** The water line at the height of a table row, without axes: liquid above, suction below, alarms as ticks along the foot. */
export function sparkline(
	data: { readonly day: DressingDay; readonly horizonMin: number },
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? 240;
	const { day } = data;
	const words = {
		title: `Water line of ${day.id}`,
		description: `${counted(day.totals.fills, "fill")}, ${counted(day.alarms.length, "alarm")}.`,
	};
	const root = chartRoot(document, options, { widthPx, heightPx }, words);
	const range = waterBandRange([day.curve], []);
	const x = scaleLinear([0, data.horizonMin], [0, widthPx]);
	const shape = (
		values: readonly number[],
		most: number,
		farPx: number,
	): string => {
		const y = scaleLinear([0, most], [linePx, farPx]);
		const points = thinnedCurve(
			day.curve.atMin,
			values,
			0,
			data.horizonMin,
			widthPx,
		);
		const path = area<Point>()
			.x((point) => x(point[0]))
			.y0(linePx)
			.y1((point) => y(point[1]))
			.digits(1);
		return path(points) ?? "";
	};
	root.append(
		hatching(document, `${options.idPrefix}-hatch`),
		svgElement(document, "path", {
			fill: `url(#${options.idPrefix}-hatch)`,
			d: shape(day.curve.depthMmHg, range.mostDepthMmHg, 18),
		}),
		svgElement(document, "path", {
			class: "water",
			d: shape(day.curve.liquidMl, range.mostLiquidMl, 0),
		}),
		svgElement(document, "line", {
			class: "line",
			x1: 0,
			x2: widthPx,
			y1: linePx,
			y2: linePx,
			style: "stroke-width:1",
		}),
	);
	for (const alarm of day.alarms)
		root.append(
			svgElement(document, "rect", {
				class: "alarm",
				x: x(alarm.startMin),
				y: 19,
				width: Math.max(2, x(alarm.endMin) - x(alarm.startMin)),
				height: 5,
			}),
		);
	return root;
}
