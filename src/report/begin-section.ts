import type { MeasureName } from "../analysis/measures.ts";
import type { SweepPoint, SweepResult } from "../analysis/sweep-result.ts";
import { beginTimes } from "../charts/index.ts";
import { avoidedWindows } from "./avoided-windows.ts";
import { chapter } from "./chapter.ts";
import { twoWidthFigure } from "./chart-figure.ts";
import { paragraph } from "./paragraph.ts";
import { pointsTable } from "./points-table.ts";
import { pointsAlong } from "./sweep-parts.ts";

const ofTheClock: readonly MeasureName[] = [
	"callsIn.handOver",
	"callsIn.meals",
	"callsIn.smallHours",
	"nightCalls",
];

/** When to begin: what moves away from hand-over, meals and the small hours. Null where the beginning is not varied. */
export function beginSection(
	result: SweepResult,
	document: Document,
): HTMLElement | null {
	const at = result.axes.findIndex(({ name }) => name === "start");
	const axis = result.axes[at];
	if (axis === undefined) return null;
	const points = pointsAlong(result, "start");
	const rows = points.flatMap((point) =>
		point.clock === null
			? []
			: [
					{
						startClockMin: point.at[at] ?? 0,
						current: point.current || point.at[at] === axis.current,
						...point.clock,
					},
				],
	);
	const windows = avoidedWindows(result);
	const figure =
		rows.length === 0
			? null
			: twoWidthFigure(document, {
					id: "begin",
					draw: (options) =>
						beginTimes(
							{
								title: "When to begin",
								fromClockMin: Math.min(...rows.map((row) => row.startClockMin)),
								windows,
								rows,
							},
							document,
							options,
						),
				});
	return chapter(
		document,
		"begin",
		"When to begin",
		paragraph(
			document,
			`The regimen stays as it is; what changes is the clock time of its first phase, and with it when canisters fill and alarms call.${whoseCanisters(result)}`,
		),
		figure,
		callsTable(
			result,
			{
				id: "begin-calls",
				caption: "Calls of nurses by the time of the first phase",
				points,
				measures: ofTheClock,
			},
			document,
		),
	);
}

/** With several dressings the chart has the alarms of all of them, and room for the canisters of one. */
function whoseCanisters({ dressing, scenario }: SweepResult): string {
	const [first, ...others] = scenario.dressings;
	return dressing !== "all" || first === undefined || others.length === 0
		? ""
		: ` Drawn are the canisters of ${first.id} and the alarms of every dressing.`;
}

/** In step or out of step: calls for two dressings of one patient that come close to each other. */
export function apartSection(
	result: SweepResult,
	document: Document,
): HTMLElement | null {
	if (!result.axes.some(({ name }) => name === "apart")) return null;
	return chapter(
		document,
		"apart",
		"In step or out of step",
		paragraph(
			document,
			"How much later each further dressing begins its cycles than the one before, and how many calls for one patient's dressings then come within a quarter of an hour of each other, when they could have been one errand or ask for two pairs of hands.",
		),
		callsTable(
			result,
			{
				id: "apart-calls",
				caption: "Calls of nurses by the step between the dressings",
				points: pointsAlong(result, "apart"),
				measures: ["callsTogether", "nightCalls"],
			},
			document,
		),
	);
}

function callsTable(
	result: SweepResult,
	table: {
		readonly id: string;
		readonly caption: string;
		readonly points: readonly SweepPoint[];
		readonly measures: readonly MeasureName[];
	},
	document: Document,
): HTMLElement | null {
	const carried = table.measures.filter((measure) =>
		table.points.some((point) => point.measures[measure] !== undefined),
	);
	if (carried.length === 0) return null;
	return pointsTable(
		result,
		{
			...table,
			caption: `${table.caption}: means with their 95 % half-width (±), and the difference from now with its 95 % interval.`,
			measures: carried,
		},
		document,
	);
}
