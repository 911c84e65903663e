import { type Catalogue, type CellSaid, entry, fixedWords } from "../check.ts";
import { fixed } from "../holes.ts";
import { supported } from "../measures.ts";
import { listed, type Said } from "../pattern.ts";
import { type DayScope, type DressingScope, dressingScopes } from "../scope.ts";
import { conditionName, totals } from "../vocabulary.ts";
import { assumptionsTable, cautionsOfAll, raisedCautions, sourcesWords } from "./common.ts";
import { alarmWindows, dayAnswers } from "./day-answers.ts";
import {
	changeLabels,
	firstRegimen,
	heatLabels,
	heatWords,
	roundShareOf,
	sheetLineWords,
	waterLineLabels,
	waterLineWords,
} from "./day-charts.ts";
import { clockTables, clockWords, sheetsOf } from "./day-clock.ts";
import { isLate, listingsOf, planLineSaid, takeoverOf } from "./day-words.ts";
import { dressingSaid, regimenSaid } from "./regimen.ts";

const several = ({ scenario }: DayScope): boolean => scenario.dressings.length > 1;
const many = ({ result }: DayScope): number => result.projection.replications;

const ofEach = (scope: DayScope): readonly string[] => scope.scenario.dressings.map(({ id }) => id);

/** A day and its replications: `report.html`. */
export const dayCatalogue: Catalogue<DayScope, DressingScope> = {
	whole: [
		...cautionsOfAll<DayScope>("answers"),
		...raisedCautions<DayScope>(),
		...sourcesWords<DayScope>(),
		entry("{text}: a therapy day", ({ scenario }) => [[scenario.title]]),
		entry("{text}", ({ scenario }) => [[scenario.title]]),
		entry("From {date} {time} for {duration}, until {clock}.", ({ scenario: { horizonMin } }) => [
			[0, 0, horizonMin, horizonMin],
		]),
		entry("{count:replication}, chance {text}.", (scope) => [
			[fixed(many(scope), 0), scope.scenario.chance ? "on" : "off"],
		]),
		entry("{n} dressings", (scope) => (several(scope) ? [[scope.scenario.dressings.length]] : [])),
		entry("{text}", (scope) => (several(scope) ? ofEach(scope).map((id) => [id]) : [])),
		fixedWords("Together", several),
		fixedWords("For all of it"),
		entry("Together", (scope) => (several(scope) ? [[]] : [])),
		fixedWords("Supplies"),
		entry("{n}, chance {text}; half-widths stand in the tables above", (scope) => [
			[many(scope), scope.scenario.chance ? "on" : "off"],
		]),
		fixedWords("Trace of the drawn day"),
		entry("replication {n}, {n} events, {text}", ({ result: { trace } }) => [
			[trace.replication, trace.events, trace.hash],
		]),
		fixedWords("Solution"),
		entry("{text}", ({ scenario }) => [[scenario.solution.name]]),
		fixedWords("Nothing is used up in the time shown.", ({ result }) => result.scenario.supplies.length === 0),
		fixedWords(
			"Pieces for the time shown: half of the days need no more than the first number, nine in ten no more than the second.",
			({ result }) => result.scenario.supplies.length > 0,
		),
		fixedWords("The plan", hasPlan),
		fixedWords("What holds from when, and when dressings are changed, where nothing comes between.", hasPlan),
		entry("To send home for {duration} from {clock}: {said}.", ({ scenario: { home }, result }) =>
			home === null ? [] : [[home.forMin, home.fromMin, sentHome(result.home?.supplies ?? [])]],
		),
		entry("Nine in ten of {count:replication} need no more.", (scope) =>
			scope.scenario.home === null ? [] : [[fixed(many(scope), 0)]],
		),
		fixedWords("Whoever receives the patient decides what they hold already.", goesHome),
		fixedWords(
			"Pieces for the first days at home, a canister to begin with included; the dressing that is worn goes along.",
			goesHome,
		),
	],
	part: [
		...waterLineWords<DressingScope>(
			({ day }) => [day],
			(scope) => [firstRegimen(scope)],
			({ scenario }) => scenario.horizonMin,
		),
		...sheetLineWords,
		...heatWords,
		entry("Water line: {text}", ({ dressing }) => [[dressing.id]]),
		entry("Water line of {text}", (scope) => (several(scope) ? [[scope.dressing.id]] : [])),
		entry("{count:fill}, {count:alarm}.", (scope) =>
			several(scope) ? [[scope.day.totals.fills, fixed(scope.day.alarms.length, 0)]] : [],
		),
		fixedWords("Liquid stands above the line, hatched suction hangs below it."),
		fixedWords("Shaded: night shift."),
		fixedWords("Pale band: where 8 days in 10 keep.", (scope) => many(scope) > 1),
		entry(
			"Drawn is replication {n}, of the first {count:replication} the one whose courses of canister content, exudate and alarms, all taken together, lie nearest the median.",
			(scope) => {
				const { replication, typicalOf } = scope.result.trace;
				return many(scope) > 1 && typicalOf !== null ? [[replication, fixed(Math.min(400, many(scope)), 0)]] : [];
			},
		),
		entry("Drawn is replication {n}, as asked for.", (scope) => {
			const { replication, typicalOf } = scope.result.trace;
			return many(scope) > 1 && typicalOf === null ? [[replication]] : [];
		}),
		entry("The band and the change times come from all {n}.", (scope) => (many(scope) > 1 ? [[many(scope)]] : [])),
		entry("Dressing {text}", ({ dressing }) => [[dressing.id]]),
		entry("{said}.", (scope) => [[planLineSaid(scope)]]),
		entry("{said}.", ({ dressing, scenario }) => [[dressingSaid(dressing, scenario.constants["foam.capacity"])]]),
		entry(
			"{text}. For planning and teaching, not for setting a device or treating a patient: the prescription, the maker's instructions and local policy come first.",
			(scope) => (several(scope) || sheetsOf(scope).length > 1 ? [[scope.scenario.title]] : []),
		),
		fixedWords("Answers"),
		entry("{text}", ({ result, dressing }) =>
			result.cautions.filter((caution) => caution.dressing === dressing.id).map(({ text }) => [text]),
		),
		...dayAnswers,
		...clockWords,
		fixedWords("Water line"),
		fixedWords("Likely alarms"),
		fixedWords("Totals"),
		fixedWords("Handed over by"),
		fixedWords("at (time)"),
		fixedWords("Taken over by"),
		entry(
			"No alarm came[[ {text}]] in any of {n} replications.",
			(scope) => (many(scope) > 1 && noAlarm(scope) ? [[byChance(scope), many(scope)]] : []),
			true,
		),
		entry("No alarm came[[ {text}]] in the one replication.", (scope) =>
			many(scope) === 1 && noAlarm(scope) ? [[byChance(scope)]] : [],
		),
		fixedWords("What the scenario lists brings no cell.", (scope) => !noAlarm(scope) && byChance(scope) !== undefined),
		entry("Chance of alarms on {text}", (scope) => (noAlarm(scope) ? [] : [[scope.dressing.id]])),
		entry("Water-line chart of {text}", (scope) => [[scope.dressing.id]]),
		fixedWords(
			"Chance that at least one alarm of the condition starts in the time of a cell.",
			(scope) => !noAlarm(scope),
		),
		fixedWords("Where half-hours are merged they are taken as independent.", (scope) => !noAlarm(scope)),
		entry(
			"Alarms that start[[ {text}]] in 24 h, mean with its 95 % half-width (±), and the times when one starts with more than 5 % in a half-hour.",
			(scope) => (noAlarm(scope) ? [] : [[byChance(scope)]]),
		),
		entry(
			"Totals of the time shown over {count:replication}: mean with its 95 % half-width (±), the values that one day in ten (P10), half (P50) and nine in ten (P90) stay at or below, and the one day that is drawn.",
			(scope) => [[fixed(many(scope), 0)]],
		),
	],
	labels: [],
	partLabels: [
		...waterLineLabels<DressingScope>(
			(scope) => [
				{
					day: scope.day,
					regimens: scope.dressing.regimens,
					canisterMl: scope.dressing.canisterMl,
					sourceMl: scope.dressing.sourceMl,
					roundShare: roundShareOf(scope),
				},
			],
			({ scenario }) => scenario,
		),
		...changeLabels,
		...heatLabels,
	],
	tables: [
		assumptionsTable<DayScope>(),
		{
			id: /^plan$/u,
			columns: () => ["From", "Dressing", "What"],
			rows: (scope) => (hasPlan(scope) ? planRows(scope) : []),
		},
		suppliesTable(/^supplies$/u, ({ result }) => result.scenario.supplies),
		suppliesTable(/^home$/u, ({ result }) => result.home?.supplies ?? []),
	],
	partTables: [
		{
			id: /-totals$/u,
			columns: () => ["Total", "Mean", "±", "P10", "P50", "P90", "Unit", "Drawn day"],
			rows: ({ projection, day }) =>
				totals.map(([name, row, unit, decimals]): CellSaid[] => {
					const spread = projection.totals[name as "fills"]; // the names of the vocabulary are those of the format
					const cell = (value: number | null, digits = decimals): CellSaid =>
						value === null ? "" : ["{n}", fixed(value, digits)];
					const known = supported(spread.halfWidth95) ?? decimals;
					return [
						row,
						cell(spread.mean, known),
						cell(spread.halfWidth95, known),
						cell(spread.p10),
						cell(spread.p50),
						cell(spread.p90),
						unit,
						cell(day.totals[name as "fills"]),
					];
				}),
		},
		{
			id: /-alarms-table$/u,
			columns: () => ["Condition", "In 24 h", "±", "Likely times"],
			rows: (scope) =>
				scope.projection.alarms
					.filter(({ byChance: { meanPerDay } }) => meanPerDay > 0)
					.toSorted((a, b) => b.byChance.meanPerDay - a.byChance.meanPerDay)
					.map(({ condition, byChance: { meanPerDay, halfWidth95 } }) => {
						const windows = alarmWindows(scope)
							.filter((one) => one.condition === condition)
							.toSorted((a, b) => a.startMin - b.startMin);
						return [
							conditionName(condition),
							["{n}", fixed(meanPerDay, 3)],
							halfWidth95 === null ? "" : ["{n}", fixed(halfWidth95, 3)],
							windows.length === 0
								? "at no time in particular"
								: [
										"{said}[[, and {n} more]]",
										listed(
											windows
												.slice(0, 6)
												.map(
													({ startMin, endMin, peak }): Said => ["{range} (up to {percent})", [startMin, endMin], peak],
												),
										),
										windows.length > 6 ? windows.length - 6 : undefined,
									],
						];
					}),
		},
		...clockTables,
	],
};

const byChance = (scope: DressingScope): string | undefined => (listingsOf(scope).length > 0 ? "by chance" : undefined);

const noAlarm = ({ projection }: DressingScope): boolean =>
	projection.alarms.every(({ byChance: { meanPerDay } }) => meanPerDay === 0);

function goesHome({ scenario }: DayScope): boolean {
	return scenario.home !== null;
}

function hasPlan(scope: DayScope): boolean {
	return goesHome(scope) || scope.scenario.dressings.some(({ regimens }) => regimens.length > 1);
}

function planRows(scope: DayScope): CellSaid[][] {
	const { scenario } = scope;
	const rows = [
		...dressingScopes(scope).flatMap((one) => [
			...one.dressing.regimens
				.filter(({ fromMin }) => fromMin < scenario.horizonMin)
				.map((regimen, i) => {
					const atMin = i === 0 ? 0 : takeoverOf(one, i);
					return {
						atMin: atMin ?? regimen.fromMin,
						of: one.dressing.id,
						what: [
							"{said}[[ ({text})]][[ (set for {clock}; the cycle that ran then was finished first)]]",
							regimenSaid(regimen),
							atMin === null ? "not before the end of the time shown" : undefined,
							atMin !== null && isLate(regimen, atMin) ? regimen.fromMin : undefined,
						] as const,
					};
				}),
			...one.day.schedule.dressingChanges.map((change) => ({
				atMin: change.startMin,
				of: one.dressing.id,
				what: ["dressing changed, {duration} off suction", change.endMin - change.startMin] as const,
			})),
		]),
		...(scenario.home === null ? [] : [{ atMin: scenario.home.fromMin, of: "", what: "goes home" }]),
	];
	return rows.toSorted((a, b) => a.atMin - b.atMin).map(({ atMin, of, what }) => [["{clock}", atMin], of, what]);
}

interface Supplied {
	readonly item: string;
	readonly p50: number;
	readonly p90: number;
	readonly packSize: number | null;
	readonly packs: number | null;
}

function suppliesTable(id: RegExp, of: (scope: DayScope) => readonly Supplied[]) {
	return {
		id,
		columns: () => ["Item", "Half (P50)", "Nine in ten (P90)", "Packs that cover P90"],
		rows: (scope: DayScope) =>
			of(scope).map(({ item, p50, p90, packSize, packs }): CellSaid[] => [
				item,
				["{n}", fixed(p50, 1)],
				["{n}", fixed(p90, 1)],
				packSize === null || packs === null ? "" : ["{n} of {n}", Math.ceil(p90 / packSize - 1e-9), packSize],
			]),
	};
}

/** Pieces that go along: nine days in ten must need no more, so that a part of a piece is a whole one. */
function sentHome(supplies: readonly Supplied[]) {
	const sent = supplies.filter(({ p90 }) => p90 > 0);
	return sent.length === 0
		? (["nothing"] as const)
		: listed(sent.map(({ item, p90 }): Said => ["{n} × {text}", Math.ceil(p90 - 1e-9), item]));
}
