import type { ScaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import { measureHeading } from "./figures.ts";
import type { ResponseCurvePanel } from "./response-curve.ts";
import { svgElement } from "./svg-element.ts";
import { labelledTicks, levelAxis, valueScale } from "./value-axes.ts";
import { textLines, wrappedText } from "./wrapped-text.ts";

type Point = ResponseCurvePanel["points"][number];
type Banded = Point & { readonly low: number; readonly high: number };

const isBanded = (point: Point): point is Banded =>
	point.low !== null && point.high !== null;

export const headingLinePx = 18;

/** The heading of a curve, in lines; letters of a heading are wider than others. */
export const responseHeading = (
	curve: Pick<ResponseCurvePanel, "label" | "unit">,
	roomPx: number,
): string[] =>
	wrappedText(measureHeading(curve.label, curve.unit), 14, roomPx, 3);

/** One measure: band with dashed edges, line, a dot and a bar at each value that was run. */
export function responsePanel(
	document: Document,
	curve: ResponseCurvePanel,
	x: ScaleLinear<number, number>,
	place: {
		readonly leftPx: number;
		readonly rightPx: number;
		readonly topPx: number;
		readonly heightPx: number;
	},
): SVGGElement {
	const points = curve.points
		.filter((point) => Number.isFinite(point.x) && Number.isFinite(point.mean))
		.sort((a, b) => a.x - b.x);
	const y = valueScale(
		points.flatMap((point) => [
			point.mean,
			point.low ?? point.mean,
			point.high ?? point.mean,
		]),
		4,
	).range([place.topPx + place.heightPx, place.topPx]);
	const heading = responseHeading(curve, place.rightPx);
	const group = svgElement(
		document,
		"g",
		{},
		...levelAxis(document, y, labelledTicks(y, 4), place.leftPx, place.rightPx),
		...textLines(
			document,
			{
				class: "heading halo",
				x: 0,
				y: place.topPx - 15 - (heading.length - 1) * headingLinePx,
			},
			heading,
			headingLinePx,
		),
	);
	if (points.length === 0) {
		group.append(
			svgElement(
				document,
				"text",
				{ class: "muted halo", x: place.leftPx + 6, y: place.topPx + 20 },
				"no values",
			),
		);
		return group;
	}
	const band = area<Point>()
		.defined(isBanded)
		.x((point) => x(point.x))
		.y0((point) => y(point.low ?? point.mean))
		.y1((point) => y(point.high ?? point.mean))
		.digits(2);
	const path = line<Point>()
		.x((point) => x(point.x))
		.y((point) => y(point.mean))
		.digits(2);
	group.append(
		svgElement(document, "path", {
			class: "found found-band",
			d: band(points) ?? "",
		}),
		svgElement(document, "path", {
			class: "found-edge",
			d: path(points) ?? "",
		}),
	);
	for (const point of points) {
		if (isBanded(point) && points.length <= 40)
			group.append(
				svgElement(document, "path", {
					class: "found-edge",
					d: `M${(x(point.x) - 3).toFixed(2)},${y(point.low).toFixed(2)}h6m-3,0V${y(point.high).toFixed(2)}m-3,0h6`,
					style: "stroke-width:1.2",
				}),
			);
		group.append(
			svgElement(document, "circle", {
				class: isBanded(point) ? "found" : "found-edge hollow",
				cx: x(point.x),
				cy: y(point.mean),
				r: points.length <= 40 ? 3.5 : 2,
			}),
		);
	}
	return group;
}
