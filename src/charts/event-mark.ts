import type { ChartEvent } from "./chart-events.ts";
import { svgElement } from "./svg-element.ts";
import type { TimePlot } from "./time-plot.ts";

const leastPx = 5;

/** Left and right edge of a mark in px: never thinner than can be seen. */
export function markEdges(plot: TimePlot, event: ChartEvent): [number, number] {
	const from = plot.x(Math.max(event.startMin, plot.fromMin));
	const to = plot.x(Math.min(event.endMin, plot.toMin));
	if (
		event.kind === "alarm" ||
		event.kind === "off" ||
		event.kind === "dressing" ||
		event.kind === "hidden"
	)
		return [from, Math.max(to, from + leastPx)];
	return [from - 5, from + 5];
}

/** Each kind has a shape of its own: alarm a flagged bar, canister a box, solution a drop, dressing a framed bar, off a bracket, a look a ring, what was hidden a hatched bar. */
export function eventMark(
	plot: TimePlot,
	event: ChartEvent,
	topPx: number,
): SVGGElement {
	const { document } = plot;
	const [left, right] = markEdges(plot, event);
	const [middle, base] = [(left + right) / 2, topPx + 16];
	const group = svgElement(
		document,
		"g",
		{},
		svgElement(document, "title", {}, event.label),
	);
	switch (event.kind) {
		case "alarm":
			group.append(
				svgElement(document, "path", {
					class: "alarm-edge",
					d: `M${left.toFixed(2)},${topPx}V${base}`,
				}),
				svgElement(document, "rect", {
					class: "alarm",
					x: left,
					y: topPx + 5,
					width: right - left,
					height: 11,
				}),
			);
			break;
		case "canister":
			group.append(
				svgElement(document, "rect", {
					class: "care-edge",
					x: middle - 4,
					y: topPx + 6,
					width: 8,
					height: 9,
				}),
				svgElement(document, "line", {
					class: "care-edge",
					x1: middle - 5.5,
					x2: middle + 5.5,
					y1: topPx + 4,
					y2: topPx + 4,
				}),
			);
			break;
		case "source":
			group.append(
				svgElement(document, "path", {
					class: "care-edge",
					transform: `translate(${middle.toFixed(2)},${topPx + 4})`,
					d: "M0,0C3,5 4,6.5 4,8.5A4,4 0 0 1 -4,8.5C-4,6.5 -3,5 0,0Z",
				}),
			);
			break;
		case "dressing":
			group.append(
				svgElement(document, "rect", {
					class: "care-edge",
					x: left,
					y: topPx + 5,
					width: right - left,
					height: 10,
				}),
				svgElement(document, "line", {
					class: "care-edge",
					x1: left,
					x2: right,
					y1: topPx + 10,
					y2: topPx + 10,
				}),
			);
			break;
		case "look":
			group.append(
				svgElement(document, "circle", {
					class: "care-edge",
					cx: middle,
					cy: topPx + 10,
					r: 4,
				}),
			);
			break;
		case "hidden":
			group.append(
				svgElement(document, "rect", {
					class: "alarm-edge",
					x: left,
					y: topPx + 4,
					width: right - left,
					height: 12,
				}),
				svgElement(document, "rect", {
					fill: `url(#${plot.idPrefix}-hatch)`,
					x: left,
					y: topPx + 4,
					width: right - left,
					height: 12,
				}),
			);
			break;
		case "off":
			group.append(
				svgElement(document, "path", {
					class: "care-edge",
					d: `M${left.toFixed(2)},${topPx + 5}V${topPx + 14}H${right.toFixed(2)}V${topPx + 5}`,
				}),
			);
			break;
	}
	return group;
}
