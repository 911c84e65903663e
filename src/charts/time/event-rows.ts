import { textWidth, twoLines } from "../kit/fitted-text.ts";
import { rowCount, stackedRows } from "../kit/label-places.ts";
import { circle, group, levelLine, path, rect, type Shape, shape, text, tooltip } from "../kit/shape.ts";
import { textPx } from "../theme/letters.ts";
import type { ChartEvent } from "./chart-events.ts";
import { rowLabel, type TimePlot } from "./time-plot.ts";

const rowPx = 20;
/** A lane whose name stands on one line, or on two. */
const oneLinePx = 25;
const twoLinesPx = 38;
/** More events than this, or more rows, and they are counted in lanes instead of labelled one by one. */
const mostLabelled = 14;
const mostRows = 5;

/** Events with their labels stacked so that none overlap; by lanes with counts when there are many. Nothing to show takes one quiet row. */
export function eventRows(plot: TimePlot, topPx: number, heading: string, events: readonly ChartEvent[]) {
	const placed = events.map((event) => placement(plot, event));
	const rows = stackedRows(placed, 8);
	const isTight = placed.some(({ right }) => right > plot.rightPx + 12);
	if (events.length > mostLabelled || rowCount(rows) > mostRows || isTight) return laneRows(plot, topPx, events);
	const labelled = group(rowLabel(plot, topPx + rowPx / 2, heading));
	placed.forEach(({ event, textX, anchor }, index) => {
		const top = topPx + (rows[index] ?? 0) * rowPx;
		const className = event.kind === "alarm" ? "alarm-text" : "";
		const at = { x: textX, y: top + 14, "text-anchor": anchor, class: className };
		labelled.append(eventMark(plot, event, top), text(at, event.label));
	});
	if (events.length === 0) labelled.append(text({ class: "muted", x: plot.leftPx + 6, y: topPx + 14 }, "none"));
	return { group: labelled, heightPx: Math.max(1, rowCount(rows)) * rowPx };
}

/** Label to the right of its mark, or to the left where the right edge is near. */
function placement(plot: TimePlot, event: ChartEvent) {
	const [from, to] = markEdges(plot, event);
	const wide = textWidth(event.label, textPx) + 6;
	return to + wide > plot.rightPx + 12 && from - wide >= plot.leftPx
		? { event, left: from - wide, right: to, textX: from - 5, anchor: "end" }
		: { event, left: from, right: to + wide, textX: to + 5, anchor: "start" };
}

function laneRows(plot: TimePlot, topPx: number, events: readonly ChartEvent[]) {
	const lanes = group();
	let lanePx = topPx;
	for (const lane of new Set(events.map((event) => event.lane))) {
		const inLane = events.filter((event) => event.lane === lane);
		const [first, second] = twoLines(lane, plot.leftPx - 14);
		const highPx = second === "" ? oneLinePx : twoLinesPx;
		const top = lanePx + (highPx - rowPx) / 2;
		const marks = merged(plot, inLane).map((event) => eventMark(plot, event, top));
		const count = text({ class: "muted", x: plot.rightPx + 6, y: top + 14 }, `×${inLane.length}`);
		lanes.append(rowLabel(plot, top + rowPx / 2, first, second), ...marks, count);
		lanePx += highPx;
	}
	return { group: lanes, heightPx: lanePx - topPx };
}

/** Events that would be drawn over each other become one mark that names how many it holds. */
function merged(plot: TimePlot, events: readonly ChartEvent[]): ChartEvent[] {
	const marks: (ChartEvent & { count: number })[] = [];
	for (const event of events) {
		const last = marks.at(-1);
		if (last !== undefined && markEdges(plot, event)[0] <= markEdges(plot, last)[1]) {
			const count = last.count + 1;
			const endMin = Math.max(last.endMin, event.endMin);
			Object.assign(last, { endMin, count, label: `${event.lane}, ${count} times` });
		} else marks.push({ ...event, count: 1 });
	}
	return marks;
}

const leastPx = 5;
const lasting: readonly ChartEvent["kind"][] = ["alarm", "off", "dressing", "hidden"];

/** Left and right edge of a mark in px: never thinner than can be seen. */
function markEdges(plot: TimePlot, event: ChartEvent): [number, number] {
	const from = plot.x(Math.max(event.startMin, plot.fromMin));
	const to = plot.x(Math.min(event.endMin, plot.toMin));
	return lasting.includes(event.kind) ? [from, Math.max(to, from + leastPx)] : [from - 5, from + 5];
}

function eventMark(plot: TimePlot, event: ChartEvent, topPx: number): Shape {
	const [left, right] = markEdges(plot, event);
	return group(tooltip(event.label), ...markOf(event.kind, left, right, topPx, plot.hatch));
}

/** Each kind has a shape of its own: alarm a flagged bar, canister a box, solution a drop, dressing a framed bar, off a bracket, a look a ring, what was hidden a hatched bar. */
function markOf(kind: ChartEvent["kind"], left: number, right: number, topPx: number, hatch: string): Shape[] {
	const middle = (left + right) / 2;
	const bar = (fromPx: number, height: number) => ({ x: left, y: topPx + fromPx, width: right - left, height });
	switch (kind) {
		case "alarm":
			return [path("alarm-edge", `M${left.toFixed(2)},${topPx}V${topPx + 16}`), rect("alarm", bar(5, 11))];
		case "canister": {
			const box = { x: middle - 4, y: topPx + 6, width: 8, height: 9 };
			return [rect("care-edge", box), levelLine("care-edge", middle - 5.5, middle + 5.5, topPx + 4)];
		}
		case "source": {
			const transform = `translate(${middle.toFixed(2)},${topPx + 4})`;
			const drop = "M0,0C3,5 4,6.5 4,8.5A4,4 0 0 1 -4,8.5C-4,6.5 -3,5 0,0Z";
			return [shape("path", { class: "care-edge", transform, d: drop })];
		}
		case "dressing":
			return [rect("care-edge", bar(5, 10)), levelLine("care-edge", left, right, topPx + 10)];
		case "look":
			return [circle("care-edge", middle, topPx + 10, 4)];
		case "hidden":
			return [rect("alarm-edge", bar(4, 12)), shape("rect", { fill: hatch, ...bar(4, 12) })];
		case "off":
			return [path("care-edge", `M${left.toFixed(2)},${topPx + 5}V${topPx + 14}H${right.toFixed(2)}V${topPx + 5}`)];
	}
}
