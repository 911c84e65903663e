import type { Assumption } from "../../../src/results/index.ts";
import { type Cell, type CsvSaid, type EventSaid, wallClock } from "../check-files.ts";
import { type DayScope, dressingScopes } from "../scope.ts";
import { totals } from "../vocabulary.ts";
import { likeliestSaid } from "./day-words.ts";

export const assumptionsCsv = (assumptions: readonly Assumption[]): CsvSaid => ({
	head: ["name", "value", "unit", "provenance", "defaulted", "meaning", "source"],
	rows: assumptions.map((one) => [
		one.name,
		one.value,
		one.unit,
		one.provenance,
		one.defaulted,
		one.meaning,
		one.source,
	]),
});

/** The CSV files of a day. */
export function dayFiles(scope: DayScope): { readonly [file: string]: CsvSaid } {
	const all = dressingScopes(scope);
	return {
		"phases.csv": {
			head: ["dressing", "what", "name", "startMin", "endMin"],
			rows: all.flatMap(({ day }) =>
				[
					...day.phases.map((one): [string, string, number, number] => ["phase", one.phase, one.startMin, one.endMin]),
					...day.pauses.map((one): [string, string, number, number] => ["pause", one.reason, one.startMin, one.endMin]),
					...day.notices.map((one): [string, string, number, number] => ["notice", one.notice, one.atMin, one.atMin]),
				]
					.toSorted((a, b) => a[2] - b[2])
					.map((row) => [day.id, ...row]),
			),
		},
		"schedule.csv": {
			head: ["dressing", "what", "name", "startMin", "endMin"],
			rows: all.flatMap(({ day: { id, schedule } }) => {
				type Row = [what: string, name: string, from: number, to: number];
				return [
					...schedule.phases.map((one): Row => ["phase", one.phase, one.startMin, one.endMin]),
					...schedule.pauses.map((one): Row => ["pause", one.reason, one.startMin, one.endMin]),
					...schedule.alarms.map((one): Row => ["alarm", one.condition, one.startMin, one.endMin]),
					...schedule.sourceChanges.map((one): Row => ["source", one.reason, one.atMin, one.atMin]),
					...schedule.takeovers.map((one): Row => ["regimen", String(one.regimen + 1), one.atMin, one.atMin]),
				]
					.toSorted((a, b) => a[2] - b[2])
					.map((row) => [id, ...row]);
			}),
		},
		"alarms.csv": {
			head: ["dressing", "condition", "priority", "startMin", "endMin", "endedBy"],
			rows: all.flatMap(({ day }) =>
				day.alarms.map((one) => [day.id, one.condition, one.priority, one.startMin, one.endMin, one.endedBy]),
			),
		},
		"changes.csv": {
			head: ["dressing", "what", "basis", "ordinal", "reason", "atMin", "p10Min", "p90Min", "probability", "wastedMl"],
			rows: all.flatMap(({ day, projection }): Cell[][] => [
				...day.canisterChanges.map((one, i) => [
					day.id,
					"canister",
					"traced",
					i + 1,
					one.reason,
					one.atMin,
					null,
					null,
					null,
					null,
				]),
				...day.sourceChanges.map((one, i) => [
					day.id,
					"source",
					"traced",
					i + 1,
					one.reason,
					one.atMin,
					null,
					null,
					null,
					one.wastedMl,
				]),
				...day.dressingChanges.map((one, i) => [
					day.id,
					"dressing",
					"traced",
					i + 1,
					null,
					one.startMin,
					null,
					null,
					null,
					null,
				]),
				...(
					[
						["canisterNeeds", "canister-due"],
						["canisterChanges", "canister"],
						["sourceChanges", "source"],
					] as const
				).flatMap(([kind, what]) =>
					projection[kind].map((one) => [
						day.id,
						what,
						"projected",
						one.ordinal,
						null,
						one.p50Min,
						one.p10Min,
						one.p90Min,
						one.probabilityWithinHorizon,
						null,
					]),
				),
			]),
		},
		"totals.csv": {
			head: ["dressing", "total", "traced", "mean", "halfWidth95", "p10", "p50", "p90"],
			rows: all.flatMap(({ day, projection }) =>
				totals.map(([name]) => {
					const spread = projection.totals[name as "fills"]; // the names of the vocabulary are those of the format
					return [
						day.id,
						name,
						day.totals[name as "fills"],
						spread.mean,
						spread.halfWidth95,
						spread.p10,
						spread.p50,
						spread.p90,
					];
				}),
			),
		},
		"alarm-bins.csv": {
			head: ["dressing", "condition", "startMin", "endMin", "probability", "low95", "high95", "byChance"],
			rows: all.flatMap(({ day, projection }) =>
				projection.alarms.flatMap(({ condition, bins }) =>
					bins.map((bin) => [
						day.id,
						condition,
						bin.startMin,
						bin.endMin,
						bin.probability,
						bin.low,
						bin.high,
						bin.chance,
					]),
				),
			),
		},
		"assumptions.csv": assumptionsCsv(scope.result.assumptions),
	};
}

/** `day.ics`: windows of likely changes, and dressing changes. */
export const dayEntries = (scope: DayScope): EventSaid[] => {
	const { scenario } = scope;
	const { start } = scenario;
	return dressingScopes(scope).flatMap(({ dressing, day, projection }) => [
		...projection.canisterNeeds
			.filter(({ probabilityWithinHorizon }) => probabilityWithinHorizon >= 0.5)
			.map((need): EventSaid => {
				const { ordinal, p10Min, p90Min } = need;
				const chance = need.probabilityWithinHorizon;
				return {
					summary: `${dressing.id}: canister likely to need changing`,
					description: [
						"Change {n}[[, likeliest {said}]]; of the days on which it comes eight in ten lie within this window.[[ It comes on {percent} of the days.]]",
						ordinal,
						likeliestSaid(need, scenario),
						chance < 1 ? chance : undefined,
					],
					start: wallClock(start, p10Min),
					end: wallClock(start, Math.max(p90Min, p10Min + 15)),
					category: "canister",
				};
			}),
		...day.schedule.dressingChanges.map(
			({ startMin, endMin }): EventSaid => ({
				summary: `${dressing.id}: dressing change`,
				description: ["Have a kit at hand."],
				start: wallClock(start, startMin),
				end: wallClock(start, endMin),
				category: "dressing change",
			}),
		),
	]);
};
