import type { ChangeTime, DayResult, Schedule } from "../../results/index.ts";
import { assumptionColumns } from "../kit/closing-chapter.ts";
import { csvTable } from "../kit/csv-table.ts";
import { dressingParts } from "./dressing/dressing-parts.ts";
import { totalColumns, totalRows } from "./totals-table.ts";

/** One table a file, by file name. Minutes count from the start. */
export function dayTables(result: DayResult): { readonly [fileName: string]: string } {
	return {
		"phases.csv": phases(result),
		"schedule.csv": schedule(result),
		"alarms.csv": alarms(result),
		"changes.csv": changes(result),
		"totals.csv": csvTable(totalColumns, dressingParts(result).flatMap(totalRows)),
		"alarm-bins.csv": alarmBins(result),
		"assumptions.csv": csvTable(assumptionColumns, result.assumptions),
	};
}

interface Stretch {
	readonly what: string;
	readonly name: string;
	readonly startMin: number;
	readonly endMin: number;
}

/** One dressing's stretches after the other, each in the order of their beginnings. */
function stretches<Day extends { readonly id: string }>(days: readonly Day[], of: (day: Day) => Stretch[]): string {
	const rows = days.flatMap((day) => {
		const sorted = of(day).sort((a, b) => a.startMin - b.startMin);
		return sorted.map((stretch) => ({ dressing: day.id, ...stretch }));
	});
	return csvTable(["dressing", "what", "name", "startMin", "endMin"], rows);
}

const moment = (what: string, name: string, atMin: number): Stretch => ({ what, name, startMin: atMin, endMin: atMin });

const coursesOf = ({ phases, pauses }: Pick<Schedule, "phases" | "pauses">): Stretch[] => [
	...phases.map((phase) => ({ ...phase, what: "phase", name: phase.phase })),
	...pauses.map((pause) => ({ ...pause, what: "pause", name: pause.reason })),
];

const phases = (result: DayResult): string =>
	stretches(result.dressings, (day) => [
		...coursesOf(day),
		...day.notices.map(({ notice, atMin }) => moment("notice", notice, atMin)),
	]);

/** The undisturbed day: phases, and what is planned in it. */
const schedule = (result: DayResult): string =>
	stretches(result.dressings, ({ schedule: day }) => [
		...coursesOf(day),
		...day.alarms.map((alarm) => ({ ...alarm, what: "alarm", name: alarm.condition })),
		...day.sourceChanges.map(({ atMin, reason }) => moment("source", reason, atMin)),
		...day.takeovers.map(({ regimen, atMin }) => moment("regimen", String(regimen + 1), atMin)),
	]);

const alarms = (result: DayResult): string =>
	csvTable(
		["dressing", "condition", "priority", "startMin", "endMin", "endedBy"],
		result.dressings.flatMap((day) => day.alarms.map((alarm) => ({ dressing: day.id, ...alarm }))),
	);

/** Changes of the drawn day, then those projected, told apart by `basis`; a canister is due before it is changed. */
const changes = (result: DayResult): string =>
	csvTable(
		["dressing", "what", "basis", "ordinal", "reason", "atMin", "p10Min", "p90Min", "probability", "wastedMl"],
		result.dressings.flatMap((day, index) => {
			const projected = result.projection.dressings[index];
			const dressings = day.dressingChanges.map(({ startMin }) => ({ atMin: startMin }));
			return [
				...traced("canister", day.canisterChanges),
				...traced("source", day.sourceChanges),
				...traced("dressing", dressings),
				...expected("canister-due", projected.canisterNeeds),
				...expected("canister", projected.canisterChanges),
				...expected("source", projected.sourceChanges),
			].map((change) => ({ dressing: day.id, ...change }));
		}),
	);

type Traced = { readonly atMin: number; readonly reason?: string; readonly wastedMl?: number };
type Expected = Pick<ChangeTime, "p10Min" | "p90Min"> & { readonly probability: number };
type Change = Traced & Partial<Expected> & { readonly what: string; readonly basis: string; readonly ordinal: number };

const traced = (what: string, changes: readonly Traced[]): Change[] =>
	changes.map((change, place) => ({ ...change, what, basis: "traced", ordinal: place + 1 }));

const expected = (what: string, times: readonly ChangeTime[]): Change[] =>
	times.map(({ p50Min, probabilityWithinHorizon: probability, ...time }) => {
		return { ...time, what, basis: "projected", atMin: p50Min, probability };
	});

const alarmBins = (result: DayResult): string =>
	csvTable(
		[
			...(["dressing", "condition", "startMin", "endMin", "probability"] as const),
			{ key: "low95", value: ({ low }) => low },
			{ key: "high95", value: ({ high }) => high },
			{ key: "byChance", value: ({ chance }) => chance },
		],
		result.projection.dressings.flatMap(({ id, alarms: all }) =>
			all.flatMap(({ condition, bins }) => bins.map((bin) => ({ dressing: id, condition, ...bin }))),
		),
	);
