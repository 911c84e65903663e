import type { SoFar } from "../rehearsal/index.ts";
import type { ChartEvent } from "./chart-events.ts";
import { type ChartOptions, setSize } from "./chart-root.ts";
import { type Clock, clockTime } from "./clock.ts";
import { dayRoot } from "./day-root.ts";
import { durationWords } from "./duration.ts";
import { eventRows } from "./event-rows.ts";
import { svgElement } from "./svg-element.ts";
import { takenEvents } from "./taken-events.ts";
import { timeAxis, timeGround } from "./time-plot.ts";
import { conditionWords } from "./vocabulary.ts";
import { waterBand, waterBandRange } from "./water-band.ts";

export interface ShiftLineData {
	readonly title: string;
	/** The whole shift, which the line has still to fill. */
	readonly clock: Clock;
	readonly nowMin: number;
	readonly regimen: { readonly depthMmHg: number; readonly fillMl: number };
	readonly soFar: SoFar;
}

/**
 * The water line of a shift that is under way: it grows from left to right, and is made of what the bedside has shown
 * and of what the trainee has done, so that it gives nothing away.
 */
export function shiftLine(
	data: ShiftLineData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const { soFar, clock } = data;
	const curve = {
		atMin: soFar.curve.atMin,
		depthMmHg: soFar.curve.depthMmHg,
		liquidMl: soFar.curve.filledMl,
	};
	const { root, widthPx, plot, ground, headPx } = dayRoot(document, options, {
		clock,
		toMin: clock.horizonMin,
		title: data.title,
		legend:
			"Hatched suction hangs below the line; above it stands what has been run in, until the drain begins.",
		words: shiftLineWords(data),
	});
	const topPx = headPx + 18;
	const looks = eventRows(
		plot,
		topPx,
		"looks",
		takenEvents(soFar.taken, "look"),
	);
	const acts = eventRows(
		plot,
		topPx + looks.heightPx + 4,
		"acts",
		takenEvents(soFar.taken, "act"),
	);
	const band = {
		topPx: topPx + looks.heightPx + acts.heightPx + 14,
		abovePx: 36,
		belowPx: 56,
	};
	const underPx = band.topPx + band.abovePx + band.belowPx + 10;
	const alarms = eventRows(plot, underPx, "alarms", alarmEvents(data));
	const endPx = underPx + alarms.heightPx + 4;
	root.append(
		looks.group,
		acts.group,
		waterBand(plot, curve, waterBandRange([curve], [data.regimen]), band),
		alarms.group,
		svgElement(document, "line", {
			class: "now care-edge",
			x1: plot.x(data.nowMin),
			x2: plot.x(data.nowMin),
			y1: topPx,
			y2: endPx,
		}),
	);
	ground.append(timeGround(plot, topPx, endPx));
	const axis = timeAxis(plot, endPx);
	root.append(axis.group);
	setSize(root, widthPx, endPx + axis.heightPx + 6);
	return root;
}

const alarmEvents = ({ soFar, nowMin }: ShiftLineData): ChartEvent[] =>
	soFar.alarms.map(({ condition, startMin, endMin }) => ({
		kind: "alarm",
		lane: conditionWords[condition],
		startMin,
		endMin: endMin ?? nowMin,
		label: `${conditionWords[condition]}, ${durationWords((endMin ?? nowMin) - startMin)}${endMin === null ? " so far" : ""}`,
	}));

function shiftLineWords(data: ShiftLineData): {
	readonly title: string;
	readonly description: string;
} {
	const { clock, soFar } = data;
	const list = (heading: string, events: readonly ChartEvent[]) =>
		events.length === 0
			? `${heading}: none.`
			: `${heading}: ${events
					.slice(-6)
					.map((event) => `${clockTime(event.startMin, clock)} ${event.label}`)
					.join("; ")}.`;
	return {
		title: "The shift so far",
		description: [
			`From ${clockTime(0, clock)} to ${clockTime(data.nowMin, clock)}, of a shift until ${clockTime(clock.horizonMin, clock)}.`,
			list("Alarms", alarmEvents(data)),
			list("Looks", takenEvents(soFar.taken, "look")),
			list("Acts", takenEvents(soFar.taken, "act")),
		].join(" "),
	};
}
