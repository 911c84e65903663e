import type { Condition, DressingDay } from "../analysis/day-result.ts";
import { durationWords } from "./duration.ts";
import { stackedRows } from "./stack-labels.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { rowLabel, type TimePlot } from "./time-plot.ts";
import {
	canisterReasonWords,
	conditionWords,
	endingWords,
	pauseWords,
	sourceReasonWords,
} from "./vocabulary.ts";

/** Something that happened for a while, or at an instant (`endMin` = `startMin`). */
export interface ChartEvent {
	readonly kind: "alarm" | "canister" | "source" | "dressing" | "off";
	/** Lane it falls into when there are too many to label one by one. */
	readonly lane: string;
	readonly startMin: number;
	readonly endMin: number;
	readonly label: string;
}

const rowPx = 20;
/** More events than this, or more rows, and they are counted in lanes instead of labelled one by one. */
const mostLabelled = 14;
const mostRows = 5;

export function alarmEvents(day: DressingDay): ChartEvent[] {
	return day.alarms.map((alarm) => ({
		kind: "alarm",
		lane: conditionWords[alarm.condition],
		startMin: alarm.startMin,
		endMin: alarm.endMin,
		label: `${conditionWords[alarm.condition]}, ${durationWords(alarm.endMin - alarm.startMin)}: ${endingWords[alarm.endedBy]}`,
	}));
}

/** What care did: changes of canister, solution and dressing, and times switched off. */
export function careEvents(day: DressingDay): ChartEvent[] {
	const instant = (
		kind: ChartEvent["kind"],
		lane: string,
		atMin: number,
		label: string,
	): ChartEvent => ({
		kind,
		lane,
		startMin: atMin,
		endMin: atMin,
		label,
	});
	return [
		...day.canisterChanges.map((change) =>
			instant(
				"canister",
				"canister changed",
				change.atMin,
				`canister changed (${canisterReasonWords[change.reason]})`,
			),
		),
		...day.sourceChanges.map((change) =>
			instant(
				"source",
				"solution renewed",
				change.atMin,
				`solution renewed (${sourceReasonWords[change.reason]})`,
			),
		),
		...day.dressingChanges.map(
			(change): ChartEvent => ({
				kind: "dressing",
				lane: "dressing changed",
				...change,
				label: `dressing changed, ${durationWords(change.endMin - change.startMin)}`,
			}),
		),
		...day.pauses
			.filter((pause) => pause.reason === "off" || pause.reason === "port")
			.map(
				(pause): ChartEvent => ({
					kind: "off",
					lane: pauseWords[pause.reason],
					startMin: pause.startMin,
					endMin: pause.endMin,
					label: `${pauseWords[pause.reason]}, ${durationWords(pause.endMin - pause.startMin)}`,
				}),
			),
	].sort((a, b) => a.startMin - b.startMin);
}

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
	if (events.length > mostLabelled || rowCount > mostRows)
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

const leastPx = 5;

/** Left and right edge of a mark in px: never thinner than can be seen. */
function markEdges(plot: TimePlot, event: ChartEvent): [number, number] {
	const from = plot.x(event.startMin);
	const to = plot.x(Math.min(event.endMin, plot.toMin));
	if (
		event.kind === "alarm" ||
		event.kind === "off" ||
		event.kind === "dressing"
	)
		return [from, Math.max(to, from + leastPx)];
	return [from - 5, from + 5];
}

/** Each kind has a shape of its own: alarm a flagged bar, canister a box, solution a drop, dressing a framed bar, off a bracket. */
function eventMark(
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

function laneRows(
	plot: TimePlot,
	topPx: number,
	heading: string,
	events: readonly ChartEvent[],
): EventRows {
	const lanes = [...new Set(events.map((event) => event.lane))];
	const group = svgElement(plot.document, "g", {});
	lanes.forEach((lane, index) => {
		const inLane = events.filter((event) => event.lane === lane);
		const top = topPx + index * rowPx * 1.6;
		const [first, second] = twoLines(lane);
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
	});
	if (lanes.length === 0) group.append(rowLabel(plot, topPx, heading));
	return { group, heightPx: lanes.length * rowPx * 1.6 };
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

/** A lane's name on two lines, broken at the space nearest its middle. */
function twoLines(text: string): [string, string] {
	const words = text.split(" ");
	if (words.length < 2) return [text, ""];
	const half = words.length === 2 ? 1 : Math.ceil(words.length / 2);
	return [words.slice(0, half).join(" "), words.slice(half).join(" ")];
}

/** Conditions that a day raised, in the order in which they first came. */
export const conditionsOf = (day: DressingDay): Condition[] => [
	...new Set(day.alarms.map((alarm) => alarm.condition)),
];
