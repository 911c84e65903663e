import type { ChartEvent } from "./chart-events.ts";
import { eventMark, markEdges } from "./event-mark.ts";
import { stackedRows } from "./stack-labels.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { rowLabel, type TimePlot } from "./time-plot.ts";
import { twoLines } from "./two-lines.ts";

const rowPx = 20;
/** A lane whose name stands on one line, or on two. */
const oneLinePx = 25;
const twoLinesPx = 38;
/** More events than this, or more rows, and they are counted in lanes instead of labelled one by one. */
const mostLabelled = 14;
const mostRows = 5;

export interface EventRows {
	readonly group: SVGGElement;
	readonly heightPx: number;
}

/** Events with their labels stacked so that none overlap; by lanes with counts when there are many. Nothing to show takes one quiet row. */
export function eventRows(
	plot: TimePlot,
	topPx: number,
	heading: string,
	events: readonly ChartEvent[],
): EventRows {
	const group = svgElement(plot.document, "g", {});
	if (events.length === 0) {
		const words = svgElement(
			plot.document,
			"text",
			{ class: "muted", x: plot.leftPx + 6, y: topPx + 14 },
			"none",
		);
		group.append(rowLabel(plot, topPx + rowPx / 2, heading), words);
		return { group, heightPx: rowPx };
	}
	const placed = events.map((event) => placement(plot, event));
	const rows = stackedRows(placed, 8);
	const rowCount = Math.max(...rows) + 1;
	const isTight = placed.some(({ right }) => right > plot.rightPx + 12);
	if (events.length > mostLabelled || rowCount > mostRows || isTight)
		return laneRows(plot, topPx, heading, events);
	group.append(rowLabel(plot, topPx + rowPx / 2, heading));
	events.forEach((event, index) => {
		const place = placed[index];
		const top = topPx + (rows[index] ?? 0) * rowPx;
		if (place === undefined) return;
		group.append(eventMark(plot, event, top));
		const text = {
			x: place.textX,
			y: top + 14,
			"text-anchor": place.anchor,
			class: event.kind === "alarm" ? "alarm-text" : "",
		};
		group.append(svgElement(plot.document, "text", text, event.label));
	});
	return { group, heightPx: rowCount * rowPx };
}

/** Label to the right of its mark, or to the left where the right edge is near. */
function placement(plot: TimePlot, event: ChartEvent) {
	const [from, to] = markEdges(plot, event);
	const wide = textWidth(event.label, 13) + 6;
	if (to + wide <= plot.rightPx + 12)
		return {
			left: from,
			right: to + wide,
			textX: to + 5,
			anchor: "start",
		} as const;
	if (from - wide >= plot.leftPx)
		return {
			left: from - wide,
			right: to,
			textX: from - 5,
			anchor: "end",
		} as const;
	return {
		left: from,
		right: to + wide,
		textX: to + 5,
		anchor: "start",
	} as const;
}

function laneRows(
	plot: TimePlot,
	topPx: number,
	heading: string,
	events: readonly ChartEvent[],
): EventRows {
	const lanes = [...new Set(events.map((event) => event.lane))];
	const group = svgElement(plot.document, "g", {});
	let lanePx = topPx;
	for (const lane of lanes) {
		const inLane = events.filter((event) => event.lane === lane);
		const [first, second] = twoLines(lane, plot.leftPx - 14);
		const highPx = second === "" ? oneLinePx : twoLinesPx;
		const top = lanePx + (highPx - rowPx) / 2;
		group.append(rowLabel(plot, top + rowPx / 2, first, second));
		for (const event of merged(plot, inLane))
			group.append(eventMark(plot, event, top));
		const count = svgElement(
			plot.document,
			"text",
			{ class: "muted", x: plot.rightPx + 6, y: top + 14 },
			`×${inLane.length}`,
		);
		group.append(count);
		lanePx += highPx;
	}
	if (lanes.length === 0) group.append(rowLabel(plot, topPx, heading));
	return { group, heightPx: lanePx - topPx };
}

/** Events that would be drawn over each other become one mark that names how many it holds. */
function merged(plot: TimePlot, events: readonly ChartEvent[]): ChartEvent[] {
	const marks: (ChartEvent & { count: number })[] = [];
	for (const event of events) {
		const last = marks.at(-1);
		if (
			last !== undefined &&
			markEdges(plot, event)[0] <= markEdges(plot, last)[1]
		) {
			const count = last.count + 1;
			marks[marks.length - 1] = {
				...last,
				endMin: Math.max(last.endMin, event.endMin),
				count,
				label: `${event.lane}, ${count} times`,
			};
		} else marks.push({ ...event, count: 1 });
	}
	return marks;
}
