import { clockTime, conditionWords } from "../../words/index.ts";
import type { ChartOptions, ChartWords } from "../kit/chart.ts";
import { uprightLine } from "../kit/shape.ts";
import { type ChartEvent, lastingEvent } from "../time/chart-events.ts";
import { TimeChart } from "../time/time-chart.ts";
import { timeGround } from "../time/time-plot.ts";
import { waterBand, waterBandRange } from "../time/water-band.ts";
import { eventSentence, type ShiftLineData, takenEvents } from "./data.ts";

/** A shift under way, of what the bedside has shown and the trainee has done: it gives nothing away. */
export function shiftLine(data: ShiftLineData, document: Document, options: ChartOptions): SVGSVGElement {
	const { soFar, clock } = data;
	const curve = { atMin: soFar.curve.atMin, depthMmHg: soFar.curve.depthMmHg, liquidMl: soFar.curve.filledMl };
	const chart = new TimeChart(options, {
		clock,
		toMin: clock.horizonMin,
		heading: data.title,
		legend: "Hatched suction hangs below the line; above it stands what has been run in, until the drain begins.",
		words: words(data),
		hatched: true,
	});
	const { plot } = chart;
	const topPx = chart.headPx + 18;
	let y = topPx;
	y += chart.appendRows(y, "looks", takenEvents(soFar.taken, "look")) + 4;
	y += chart.appendRows(y, "acts", takenEvents(soFar.taken, "act")) + 10;
	const band = { topPx: y, abovePx: 36, belowPx: 56 };
	chart.append(waterBand(plot, curve, waterBandRange([curve], [data.regimen]), band));
	y += band.abovePx + band.belowPx + 10;
	y += chart.appendRows(y, "alarms", alarmEvents(data)) + 4;
	chart.append(uprightLine("now care-edge", plot.x(data.nowMin), topPx, y));
	chart.ground.append(timeGround(plot, topPx, y));
	return chart.drawnToAxis(document, y, 6);
}

const alarmEvents = ({ soFar, nowMin }: ShiftLineData): ChartEvent[] =>
	soFar.alarms.map(({ condition, startMin, endMin }) => {
		const span = { startMin, endMin: endMin ?? nowMin };
		return lastingEvent("alarm", conditionWords[condition], span, endMin === null ? " so far" : "");
	});

function words(data: ShiftLineData): ChartWords {
	const { clock, soFar } = data;
	const lately = (heading: string, events: readonly ChartEvent[]): string =>
		eventSentence(heading, events.slice(-6), clock);
	return {
		title: "The shift so far",
		description: [
			`From ${clockTime(0, clock)} to ${clockTime(data.nowMin, clock)}, of a shift until ${clockTime(clock.horizonMin, clock)}.`,
			lately("Alarms", alarmEvents(data)),
			lately("Looks", takenEvents(soFar.taken, "look")),
			lately("Acts", takenEvents(soFar.taken, "act")),
		].join(" "),
	};
}
