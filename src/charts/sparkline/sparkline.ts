import { scaleLinear } from "d3-scale";
import type { DressingDay } from "../../results/index.ts";
import { counted } from "../../words/index.ts";
import { Chart, type ChartOptions } from "../kit/chart.ts";
import { levelLine, path, rect, shape } from "../kit/shape.ts";
import { areaFromZero, thinnedCurve } from "../time/curve.ts";
import { hatchFill, suctionHatch } from "../time/time-chart.ts";
import { waterBandRange } from "../time/water-band.ts";

const heightPx = 24;
const linePx = 9;

type SparklineData = { readonly day: DressingDay; readonly horizonMin: number };

/** The water line at the height of a table row, without axes: liquid above, suction below, alarms as ticks along the foot. */
export function sparkline(data: SparklineData, document: Document, options: ChartOptions): SVGSVGElement {
	const widthPx = options.widthPx ?? 240;
	const { day, horizonMin } = data;
	const chart = new Chart(options, widthPx, {
		title: `Water line of ${day.id}`,
		description: `${counted(day.totals.fills, "fill")}, ${counted(day.alarms.length, "alarm")}.`,
	});
	const range = waterBandRange([day.curve], []);
	const x = scaleLinear([0, horizonMin], [0, widthPx]);
	const area = (values: readonly number[], most: number, farPx: number): string => {
		const points = thinnedCurve(day.curve.atMin, values, 0, horizonMin, widthPx);
		return areaFromZero(x, scaleLinear([0, most], [linePx, farPx]), 1)(points) ?? "";
	};
	chart.append(
		suctionHatch(options.idPrefix),
		shape("path", { fill: hatchFill(options.idPrefix), d: area(day.curve.depthMmHg, range.mostDepthMmHg, 18) }),
		path("water", area(day.curve.liquidMl, range.mostLiquidMl, 0)),
		levelLine("line", 0, widthPx, linePx, { style: "stroke-width:1" }),
		...day.alarms.map(({ startMin, endMin }) =>
			rect("alarm", { x: x(startMin), y: 19, width: Math.max(2, x(endMin) - x(startMin)), height: 5 }),
		),
	);
	return chart.drawnIn(document, heightPx);
}
