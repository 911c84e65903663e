import { clockTime, conditionWords } from "../../words/index.ts";
import type { ChartOptions, ChartWords } from "../kit/chart.ts";
import { type ChartEvent, lastingEvent } from "../time/chart-events.ts";
import { TimeChart } from "../time/time-chart.ts";
import { timeGround } from "../time/time-plot.ts";
import { waterBand, waterBandRange } from "../time/water-band.ts";
import { eventSentence, type RehearsalChartData, takenEvents } from "./data.ts";

/** A rehearsal's day on one axis, with what was hidden below. Only for the debrief: it says everything. */
export function rehearsalChart(data: RehearsalChartData, document: Document, options: ChartOptions): SVGSVGElement {
	const { day } = data;
	const chart = new TimeChart(options, {
		clock: data.case,
		toMin: Math.max(1, data.case.endedMin),
		heading: data.case.title,
		legend:
			"Above what was looked at (rings) and done (bars), below what was hidden. Liquid stands above the line, hatched suction hangs below it.",
		words: words(data),
		hatched: true,
	});
	const topPx = chart.headPx + 18;
	let y = topPx;
	y += chart.appendRows(y, "looks", takenEvents(data.log, "look")) + 6;
	y += chart.appendRows(y, "acts", takenEvents(data.log, "act")) + 6;
	const band = { topPx: y + 8, abovePx: 60, belowPx: 72 };
	chart.append(waterBand(chart.plot, day.curve, waterBandRange([day.curve], [day.regimen]), band));
	y = band.topPx + band.abovePx + band.belowPx + 14;
	y += chart.appendRows(y, "alarms", alarmsOf(data)) + 6;
	y += chart.appendRows(y, "hidden", hiddenEvents(data)) + 6;
	chart.ground.append(timeGround(chart.plot, topPx, y));
	return chart.drawnToAxis(document, y, 6);
}

/** Who ended an alarm is told by the acts above it. */
const alarmsOf = ({ day }: RehearsalChartData): ChartEvent[] =>
	day.alarms.map((alarm) => lastingEvent("alarm", conditionWords[alarm.condition], alarm));

const hiddenEvents = (data: RehearsalChartData): ChartEvent[] =>
	data.causes.flatMap(({ words, onsetMin: startMin, endMin }) => {
		const kind = "hidden";
		return startMin === null
			? []
			: [{ kind, lane: words, startMin, endMin: endMin ?? data.case.endedMin, label: words }];
	});

const mostNamed = 12;

function words(data: RehearsalChartData): ChartWords {
	const sentence = (heading: string, events: readonly ChartEvent[]): string =>
		eventSentence(heading, events.slice(0, mostNamed), data.case, events.length > mostNamed ? "; and more" : "");
	return {
		title: `Rehearsal: ${data.case.title}`,
		description: [
			`From ${clockTime(0, data.case)} to ${clockTime(data.case.endedMin, data.case)}.`,
			sentence("Hidden", hiddenEvents(data)),
			sentence("Alarms", alarmsOf(data)),
			sentence("Looks", takenEvents(data.log, "look")),
			sentence("Acts", takenEvents(data.log, "act")),
		].join(" "),
	};
}
