import type { ChangeTime, DayResult } from "../analysis/day-result.ts";
import { assumptionsTable, type Cell, csvTable } from "./csv-table.ts";
import { totalNames } from "./totals-table.ts";

/** One table a file, by file name. Minutes count from the start. */
export function dayTables(result: DayResult): {
	readonly [fileName: string]: string;
} {
	return {
		"phases.csv": phases(result),
		"schedule.csv": schedule(result),
		"alarms.csv": alarms(result),
		"changes.csv": changes(result),
		"totals.csv": totals(result),
		"alarm-bins.csv": alarmBins(result),
		"assumptions.csv": assumptionsTable(result.assumptions),
	};
}

const phases = (result: DayResult): string =>
	csvTable(
		["dressing", "what", "name", "startMin", "endMin"],
		result.dressings.flatMap((day) =>
			[
				...day.phases.map(
					(phase) =>
						[
							day.id,
							"phase",
							phase.phase,
							phase.startMin,
							phase.endMin,
						] as const,
				),
				...day.pauses.map(
					(pause) =>
						[
							day.id,
							"pause",
							pause.reason,
							pause.startMin,
							pause.endMin,
						] as const,
				),
				...day.notices.map(
					(notice) =>
						[
							day.id,
							"notice",
							notice.notice,
							notice.atMin,
							notice.atMin,
						] as const,
				),
			].sort((a, b) => a[3] - b[3]),
		),
	);

/** The undisturbed day: phases, and what is planned in it. */
const schedule = (result: DayResult): string =>
	csvTable(
		["dressing", "what", "name", "startMin", "endMin"],
		result.dressings.flatMap(({ id, schedule: day }) => {
			const rows: [string, string, string, number, number][] = [
				...day.phases.map(({ phase, startMin, endMin }) =>
					row("phase", phase, startMin, endMin),
				),
				...day.pauses.map(({ reason, startMin, endMin }) =>
					row("pause", reason, startMin, endMin),
				),
				...day.alarms.map(({ condition, startMin, endMin }) =>
					row("alarm", condition, startMin, endMin),
				),
				...day.sourceChanges.map(({ atMin, reason }) =>
					row("source", reason, atMin, atMin),
				),
				...day.takeovers.map(({ regimen, atMin }) =>
					row("regimen", String(regimen + 1), atMin, atMin),
				),
			];
			return rows.sort((a, b) => a[3] - b[3]);
			function row(
				what: string,
				name: string,
				startMin: number,
				endMin: number,
			): [string, string, string, number, number] {
				return [id, what, name, startMin, endMin];
			}
		}),
	);

const alarms = (result: DayResult): string =>
	csvTable(
		["dressing", "condition", "priority", "startMin", "endMin", "endedBy"],
		result.dressings.flatMap((day) =>
			day.alarms.map((alarm) => [
				day.id,
				alarm.condition,
				alarm.priority,
				alarm.startMin,
				alarm.endMin,
				alarm.endedBy,
			]),
		),
	);

/** Changes of the drawn day, then those projected, told apart by `basis`; a canister is due before it is changed. */
const changes = (result: DayResult): string =>
	csvTable(
		[
			"dressing",
			"what",
			"basis",
			"ordinal",
			"reason",
			"atMin",
			"p10Min",
			"p90Min",
			"probability",
			"wastedMl",
		],
		result.dressings.flatMap((day, index) => {
			const projected = result.projection.dressings[index];
			const traced = (
				what: string,
				atMin: number,
				ordinal: number,
				reason: string | null,
				wastedMl: number | null,
			): Cell[] => [
				day.id,
				what,
				"traced",
				ordinal,
				reason,
				atMin,
				null,
				null,
				null,
				wastedMl,
			];
			const expected = (
				what: string,
				times: readonly ChangeTime[] | undefined,
			): Cell[][] =>
				times?.map((change) => [
					day.id,
					what,
					"projected",
					change.ordinal,
					null,
					change.p50Min,
					change.p10Min,
					change.p90Min,
					change.probabilityWithinHorizon,
					null,
				]) ?? [];
			return [
				...day.canisterChanges.map((change, at) =>
					traced("canister", change.atMin, at + 1, change.reason, null),
				),
				...day.sourceChanges.map((change, at) =>
					traced(
						"source",
						change.atMin,
						at + 1,
						change.reason,
						change.wastedMl,
					),
				),
				...day.dressingChanges.map((change, at) =>
					traced("dressing", change.startMin, at + 1, null, null),
				),
				...expected("canister-due", projected?.canisterNeeds),
				...expected("canister", projected?.canisterChanges),
				...expected("source", projected?.sourceChanges),
			];
		}),
	);

const totals = (result: DayResult): string =>
	csvTable(
		["dressing", "total", "traced", "mean", "halfWidth95", "p10", "p50", "p90"],
		result.dressings.flatMap((day, index) =>
			totalNames.map((name) => {
				const spread = result.projection.dressings[index]?.totals[name];
				return [
					day.id,
					name,
					day.totals[name],
					spread?.mean ?? null,
					spread?.halfWidth95 ?? null,
					spread?.p10 ?? null,
					spread?.p50 ?? null,
					spread?.p90 ?? null,
				];
			}),
		),
	);

const alarmBins = (result: DayResult): string =>
	csvTable(
		[
			"dressing",
			"condition",
			"startMin",
			"endMin",
			"probability",
			"low95",
			"high95",
			"byChance",
		],
		result.projection.dressings.flatMap((dressing) =>
			dressing.alarms.flatMap((alarm) =>
				alarm.bins.map((bin) => [
					dressing.id,
					alarm.condition,
					bin.startMin,
					bin.endMin,
					bin.probability,
					bin.low,
					bin.high,
					bin.chance,
				]),
			),
		),
	);
