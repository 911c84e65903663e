import Papa from "papaparse";
import type { DayResult } from "../analysis/day-result.ts";
import { legalText } from "../charts/index.ts";
import { totalNames } from "./totals-table.ts";

export type Cell = string | number | boolean | null;

/**
 * Text that a spreadsheet might run as a formula: first sign = + - @ or their wide forms, after blanks or not, or a tab,
 * carriage return or line feed in front. Such a cell gets an apostrophe; numbers are numbers and keep their minus.
 */
const formula = /^(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/u;

/** One table a file, RFC 4180 with CRLF, by file name. Numbers at full precision, minutes from the start. */
export function dayTables(result: DayResult): {
	readonly [fileName: string]: string;
} {
	return {
		"phases.csv": phases(result),
		"alarms.csv": alarms(result),
		"changes.csv": changes(result),
		"totals.csv": totals(result),
		"alarm-bins.csv": alarmBins(result),
		"assumptions.csv": assumptions(result),
	};
}

export function csv(
	fields: readonly string[],
	rows: readonly (readonly Cell[])[],
): string {
	const data = rows.map((row) =>
		row.map((cell) => (typeof cell === "string" ? legalText(cell) : cell)),
	);
	return `${Papa.unparse([[...fields], ...data], { newline: "\r\n", escapeFormulae: formula })}\r\n`;
}

const phases = (result: DayResult): string =>
	csv(
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

const alarms = (result: DayResult): string =>
	csv(
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

/** Changes of the traced day, then those projected, told apart by `basis`. */
const changes = (result: DayResult): string =>
	csv(
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
			const expected = (what: string, times: typeof projected): Cell[][] =>
				(what === "canister"
					? times?.canisterChanges
					: times?.sourceChanges
				)?.map((change) => [
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
				...expected("canister", projected),
				...expected("source", projected),
			];
		}),
	);

const totals = (result: DayResult): string =>
	csv(
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
	csv(
		[
			"dressing",
			"condition",
			"startMin",
			"endMin",
			"probability",
			"low95",
			"high95",
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
				]),
			),
		),
	);

const assumptions = (result: DayResult): string =>
	csv(
		["name", "value", "unit", "provenance", "defaulted", "meaning", "source"],
		result.assumptions.map((assumption) => [
			assumption.name,
			assumption.value,
			assumption.unit,
			assumption.provenance,
			assumption.defaulted,
			assumption.meaning,
			assumption.source,
		]),
	);
