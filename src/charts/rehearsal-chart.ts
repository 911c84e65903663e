import type { Debrief } from "../rehearsal/index.ts";
import { alarmEvents, type ChartEvent } from "./chart-events.ts";
import { type ChartOptions, setSize } from "./chart-root.ts";
import { clockTime } from "./clock.ts";
import { dayRoot } from "./day-root.ts";
import { durationWords } from "./duration.ts";
import { eventRows } from "./event-rows.ts";
import { takenEvents } from "./taken-events.ts";
import { timeAxis, timeGround } from "./time-plot.ts";
import { waterBand, waterBandRange } from "./water-band.ts";

/** What the chart needs of a debrief. */
export type RehearsalChartData = Pick<
	Debrief,
	"case" | "causes" | "log" | "day"
>;

/**
 * The day of a rehearsal on one axis: the trainee's looks and acts above, the water line, the alarms, and below what was
 * hidden. Only for the debrief: it says everything.
 */
export function rehearsalChart(
	data: RehearsalChartData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const { day } = data;
	const { root, widthPx, plot, ground, headPx } = dayRoot(document, options, {
		clock: data.case,
		toMin: Math.max(1, data.case.endedMin),
		title: data.case.title,
		legend:
			"Above what was looked at (rings) and done (bars), below what was hidden. Liquid stands above the line, hatched suction hangs below it.",
		words: rehearsalChartWords(data),
	});
	const topPx = headPx + 18;
	let y = topPx;
	const rows = (heading: string, events: readonly ChartEvent[]) => {
		const drawn = eventRows(plot, y, heading, events);
		root.append(drawn.group);
		y += drawn.heightPx + 6;
	};
	rows("looks", takenEvents(data.log, "look"));
	rows("acts", takenEvents(data.log, "act"));
	const band = { topPx: y + 8, abovePx: 60, belowPx: 72 };
	root.append(
		waterBand(
			plot,
			day.curve,
			waterBandRange([day.curve], [day.regimen]),
			band,
		),
	);
	y = band.topPx + band.abovePx + band.belowPx + 14;
	rows("alarms", alarmEvents(day).map(withoutEnding));
	rows("hidden", causeEvents(data));
	ground.append(timeGround(plot, topPx, y));
	const axis = timeAxis(plot, y);
	root.append(axis.group);
	setSize(root, widthPx, y + axis.heightPx + 6);
	return root;
}

/** Who ended an alarm is told by the acts above it. */
function withoutEnding(event: ChartEvent): ChartEvent {
	return {
		...event,
		label: `${event.lane}, ${durationWords(event.endMin - event.startMin)}`,
	};
}

function causeEvents(data: RehearsalChartData): ChartEvent[] {
	return data.causes.flatMap(({ words, onsetMin, endMin }) =>
		onsetMin === null
			? []
			: [
					{
						kind: "hidden" as const,
						lane: words,
						startMin: onsetMin,
						endMin: endMin ?? data.case.endedMin,
						label: words,
					},
				],
	);
}

/** Title and text alternative: what a reader would see. */
function rehearsalChartWords(data: RehearsalChartData): {
	readonly title: string;
	readonly description: string;
} {
	const at = (event: ChartEvent) =>
		`${clockTime(event.startMin, data.case)} ${event.label}`;
	const list = (heading: string, events: readonly ChartEvent[]) =>
		events.length === 0
			? `${heading}: none.`
			: `${heading}: ${events.slice(0, 12).map(at).join("; ")}${events.length > 12 ? "; and more" : ""}.`;
	return {
		title: `Rehearsal: ${data.case.title}`,
		description: [
			`From ${clockTime(0, data.case)} to ${clockTime(data.case.endedMin, data.case)}.`,
			list("Hidden", causeEvents(data)),
			list("Alarms", alarmEvents(data.day).map(withoutEnding)),
			list("Looks", takenEvents(data.log, "look")),
			list("Acts", takenEvents(data.log, "act")),
		].join(" "),
	};
}
