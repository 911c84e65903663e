import { type BeginTimesData, beginTimes } from "../../charts/index.ts";
import type { SweepResult } from "../../results/index.ts";
import type { AvoidedTime } from "../../vocabulary/index.ts";
import { twoWidthFigure } from "../kit/chart-figure.ts";
import { chapter, type HtmlMaker } from "../kit/html-element.ts";
import { pointsTable } from "./points-section.ts";
import { clockMeasures, pointsAlong } from "./shown-measures.ts";

/** When to begin: what moves away from hand-over, meals and the small hours. Null where the beginning is not varied. */
export function beginSection(html: HtmlMaker, result: SweepResult): HTMLElement | null {
	const at = result.axes.findIndex(({ name }) => name === "start");
	const axis = result.axes[at];
	if (axis === undefined) return null;
	const rows = pointsAlong(result, "start").flatMap(({ clock, at: values, current }) => {
		const startClockMin = values[at] ?? 0;
		return clock === null ? [] : [{ ...clock, startClockMin, current: current || startClockMin === axis.current }];
	});
	const fromClockMin = Math.min(...rows.map(({ startClockMin }) => startClockMin));
	const data: BeginTimesData = { title: "When to begin", fromClockMin, windows: avoidedWindows(result), rows };
	const words = `The regimen stays as it is; what changes is the clock time of its first phase, and with it when canisters fill and alarms call.${whoseCanisters(result)}`;
	const figure = rows.length === 0 ? null : twoWidthFigure(html, "begin", beginTimes, data);
	const calls = callsTable(html, result, "start", "begin-calls", "the time of the first phase");
	return chapter(html, "begin", "When to begin", words, figure, calls);
}

/** With several dressings the chart has the alarms of all of them, and room for the canisters of one. */
const whoseCanisters = ({ dressing, scenario: { dressings } }: SweepResult): string =>
	dressing === "all" && dressings.length > 1
		? ` Drawn are the canisters of ${dressings[0].id} and the alarms of every dressing.`
		: "";

/** In step or out of step: calls for two dressings of one patient that come close to each other. */
export function apartSection(html: HtmlMaker, result: SweepResult): HTMLElement | null {
	if (!result.axes.some(({ name }) => name === "apart")) return null;
	const calls = callsTable(html, result, "apart", "apart-calls", "the step between the dressings");
	const words =
		"How much later each further dressing begins its cycles than the one before, and how many calls for one patient's dressings then come within a quarter of an hour of each other, when they could have been one errand or ask for two pairs of hands.";
	return chapter(html, "apart", "In step or out of step", words, calls);
}

/** Calls along an axis of the clock: those that it asks about, and those at night. */
function callsTable(html: HtmlMaker, result: SweepResult, axis: "start" | "apart", id: string, by: string) {
	const points = pointsAlong(result, axis);
	const measures = [...(clockMeasures[axis] ?? []), "nightCalls" as const].filter((measure) =>
		points.some((point) => point.measures[measure] !== undefined),
	);
	const caption = `Calls of nurses by ${by}: means with their 95 % half-width (±), and the difference from now with its 95 % interval.`;
	return measures.length === 0 ? null : pointsTable(html, result, { id, caption, points, measures });
}

const names: { readonly [T in AvoidedTime]: string } = {
	handOver: "hand-over",
	meals: "meals",
	smallHours: "small hours",
};

/** The stretches of the day that the scenario keeps clear, for the chart of beginnings. */
const avoidedWindows = (result: SweepResult): BeginTimesData["windows"] =>
	(Object.keys(names) as AvoidedTime[]) // the keys of the record above
		.flatMap((time) => result.avoid[time].map((avoided) => ({ ...avoided, label: names[time] })))
		.map(({ label, fromMin, toMin }) => ({ label, startClockMin: fromMin, endClockMin: toMin }));
