import type { ChangeTime } from "../../../src/results/index.ts";
import { type CellSaid, type Entry, entry, fixedWords, type TableEntry } from "../check.ts";
import type { OnDay } from "../holes.ts";
import { listed, type Said } from "../pattern.ts";
import { type DressingScope, placed } from "../scope.ts";
import { capital } from "../vocabulary.ts";
import {
	dayOf,
	isLate,
	isPlanned,
	likeliestSaid,
	listingSaid,
	listingsOf,
	rareness,
	soundsAt,
	soundsSaid,
	takeoverOf,
} from "./day-words.ts";
import { regimenSaid } from "./regimen.ts";

interface Row {
	readonly atMin: number;
	readonly what: Said;
	readonly volume: CellSaid;
	readonly look: Said;
}

/** Most rows of the sheet, and most of what comes later. */
const mostOnSheet = 14;
const mostLater = 120;

/** Until the next 07:00 or 19:00 that is at least 6 h away, or the end. */
function sheetEndMin({ scenario }: DressingScope): number {
	const { startClockMin, horizonMin } = scenario;
	for (let at = 420; at < startClockMin + horizonMin; at += 720)
		if (at - startClockMin >= 360) return at - startClockMin;
	return horizonMin;
}

/** Rows of the table, in order of time. */
function rowsOf(scope: DressingScope): Row[] {
	return [
		...takeoverRows(scope),
		...listingRows(scope),
		...roundRows(scope),
		...canisterRows(scope),
		...bagRows(scope),
		...changeRows(scope),
		...homeRows(scope),
		...cycleRows(scope),
	].toSorted((a, b) => a.atMin - b.atMin);
}

const takeoverRows = (scope: DressingScope): Row[] =>
	scope.dressing.regimens.flatMap((regimen, i): Row[] => {
		const atMin = i === 0 ? null : takeoverOf(scope, i);
		return atMin === null
			? []
			: [
					{
						atMin,
						what: ["Regimen changes: {said}", regimenSaid(regimen)],
						volume: "",
						look: isLate(regimen, atMin)
							? ["set for {clock}; the cycle that runs then is finished first", regimen.fromMin]
							: ["settings of the unit against the prescription"],
					},
				];
	});

const listingRows = (scope: DressingScope): Row[] =>
	listingsOf(scope)
		.filter(({ what }) => what !== "source-change" && what !== "dressing-change")
		.map((one) => {
			const sounds = soundsAt(scope, one);
			return {
				atMin: one.atMin,
				what: ["{said}", listingSaid(one, capital)],
				volume: "",
				look:
					sounds !== null
						? soundsSaid(sounds)
						: isPlanned(one)
							? ["lines free, then seal and depth"]
							: ["what the unit says, then find and mend it"],
			};
		});

/** Every time of a round after the start and before the end. */
function roundsOf({ scenario }: DressingScope): number[] {
	const { startClockMin, horizonMin, care } = scenario;
	const days = Math.ceil((startClockMin + horizonMin) / 1440);
	return Array.from({ length: days + 1 }, (_, day) =>
		care.roundsClockMin.map((clock) => day * 1440 + clock - startClockMin),
	)
		.flat()
		.filter((atMin) => atMin > 0 && atMin < horizonMin)
		.toSorted((a, b) => a - b);
}

const roundRows = (scope: DressingScope): Row[] =>
	roundsOf(scope).map((atMin) => {
		const level = placed(
			scope.projection.rounds.filter((one) => one.atMin === atMin),
			0,
		);
		return {
			atMin,
			what: ["Round"],
			volume: "",
			look: [
				"canister {betweenml} of {ml}; {text}",
				[level.p10Ml, level.p90Ml],
				scope.dressing.canisterMl,
				hasFill(scope) ? "solution, edges" : "edges",
			],
		};
	});

const hasFill = ({ dressing }: DressingScope): boolean => dressing.regimens.some(({ fillMl }) => fillMl > 0);

const oftenEnough = ({ probabilityWithinHorizon }: ChangeTime): boolean => probabilityWithinHorizon >= 0.3;

const canisterRows = ({ projection, scenario, result }: DressingScope): Row[] =>
	projection.canisterNeeds.filter(oftenEnough).map((need) => {
		const { p10Min, p90Min } = need;
		const instant = Math.round(scenario.startClockMin + p10Min) === Math.round(scenario.startClockMin + p90Min);
		return {
			atMin: p10Min,
			what: [
				scenario.chance && result.projection.replications > 1
					? "Canister likely to need changing[[, until {clock}]][[ ({percent})]]"
					: "Canister needs changing[[, until {clock}]][[ ({percent})]]",
				instant ? undefined : p90Min,
				rareness(need),
			],
			volume: "",
			look: ["[[likeliest {said}; ]]new canister at hand", likeliestSaid(need, scenario)],
		};
	});

const bagReasons: { readonly [reason: string]: string } = {
	empty: "the old one runs empty in this fill",
	round: "the old one holds less than a fill",
	expired: "the old one has hung its time",
	scripted: "planned",
};

/**
 * On how many days what the schedule has at a time comes at all, where that is fewer than 95 %, and how far chance moves it,
 * where that is more than 5 min; undefined where neither is to be said. `most` is how many there are on nine days in ten.
 */
function movedSaid(
	atMin: number,
	times: readonly ChangeTime[],
	index: number,
	most: number,
	scope: DressingScope,
): Said | undefined {
	const time = times[index];
	if (time === undefined) return most <= times.length ? ["not reached as simulated"] : undefined;
	const { p10Min, p90Min, probabilityWithinHorizon: share } = time;
	const often = share >= 0.95;
	const far = Math.max(Math.abs(p10Min - atMin), Math.abs(p90Min - atMin));
	if (far <= 5) return often ? undefined : ["on {percent} of the days", share];
	const { startClockMin } = scope.scenario;
	const range: [number, number] = [p10Min, p90Min];
	const isInstant = Math.round(startClockMin + p10Min) === Math.round(startClockMin + p90Min);
	if (often) return [isInstant ? "as simulated {range}" : "eight days in ten {range}", range];
	return [
		isInstant
			? "on {percent} of the days, as simulated {range}"
			: "on {percent} of the days, eight in ten of them {range}",
		share,
		range,
	];
}

function bagRows(scope: DressingScope): Row[] {
	const { sourceChanges } = scope.day.schedule;
	const { sourceChanges: simulated } = scope.projection;
	return [
		...sourceChanges.map(
			({ atMin, reason }, i): Row => ({
				atMin,
				what: [
					"New bag of solution[[; {said}]]",
					movedSaid(atMin, simulated, i, scope.projection.totals.sourceChanges.p90, scope),
				],
				volume: "",
				look: ["{text}; new bag at hand", bagReasons[reason]],
			}),
		),
		...simulated
			.slice(sourceChanges.length)
			.filter(oftenEnough)
			.map(
				(change): Row => ({
					atMin: change.p10Min,
					what: ["Solution likely to be renewed[[ ({percent})]]", rareness(change)],
					volume: "",
					look: ["{range}; new bag at hand", [change.p10Min, change.p90Min]],
				}),
			),
	];
}

const changeRows = ({ day }: DressingScope): Row[] =>
	day.schedule.dressingChanges.map(({ startMin, endMin }) => ({
		atMin: startMin,
		what: ["Dressing change until {time}", endMin],
		volume: "",
		look: ["wound bed and edges; one kit at hand"],
	}));

const homeRows = ({ scenario: { home, horizonMin } }: DressingScope): Row[] =>
	home === null || home.fromMin >= horizonMin
		? []
		: [{ atMin: home.fromMin, what: ["Goes home"], volume: "", look: ["what to send along stands under The plan"] }];

function cycleRows(scope: DressingScope): Row[] {
	const { phases } = scope.day.schedule;
	const fills = phases.flatMap((phase, at) =>
		phase.phase === "fill" ? [{ phase, rest: phases.slice(at + 1, at + 3) }] : [],
	);
	const rows = fills.map(({ phase, rest }, i): Row => {
		const dwell = rest.find((one) => one.phase === "dwell");
		const drain = rest.find((one) => one.phase === "drain");
		const moved = movedSaid(phase.startMin, scope.projection.fills, i, scope.projection.totals.fills.p90, scope);
		const drawn: Said = drain === undefined ? ["foam draws down again"] : ["drawn down by {timeby}", drain.endMin];
		return {
			atMin: phase.startMin,
			what:
				drain === undefined
					? ["Fill; dwells until {time}[[; {said}]]", dwell?.endMin ?? phase.endMin, moved]
					: ["Fill; drains at {time}[[; {said}]]", drain.startMin, moved],
			volume: ["{bareml} mL in", fillAt(scope, phase.startMin)],
			look:
				i === 0 ? ["first fill: no pooling under the drape, edges dry; {said}", drawn] : ["edges dry; {said}", drawn],
		};
	});
	return placed(scope.dressing.regimens, 0).fillMl === 0
		? [
				{
					atMin: 0,
					what: ["Continuous suction"],
					volume: "",
					look: ["foam collapsed, edges sealed, the set depth held"],
				},
				...rows,
			]
		: rows;
}

/** The fill of the regimen in force at a time. */
function fillAt(scope: DressingScope, atMin: number): number {
	const { regimens } = scope.dressing;
	const last = regimens.findLastIndex((_, i) => {
		const from = i === 0 ? 0 : takeoverOf(scope, i);
		return from !== null && from <= atMin;
	});
	return placed(regimens, Math.max(0, last)).fillMl;
}

/** What stands on the sheet, what comes later, and how many rows are left. */
function parts(scope: DressingScope) {
	const rows = rowsOf(scope);
	const end = sheetEndMin(scope);
	const first = rows.filter(({ atMin }) => atMin < end).slice(0, mostOnSheet);
	const later = rows.slice(first.length, first.length + mostLater);
	return { first, later, left: rows.length - first.length - later.length };
}

function cells(rows: readonly Row[], { scenario }: DressingScope): CellSaid[][] {
	let day = 0;
	return rows.map(({ atMin, what, volume, look }) => {
		const time: OnDay = { from: atMin, to: atMin, day };
		day = dayOf(atMin, scenario);
		return [["{rowtime}", time], what, volume, look];
	});
}

/** Most sheets of paper of one dressing. */
const mostSheets = 7;

/** The 24 h of each sheet of paper. */
export function sheetsOf({ scenario: { horizonMin } }: DressingScope) {
	const many = Math.min(mostSheets, Math.max(1, Math.ceil(horizonMin / 1440)));
	return Array.from({ length: many }, (_, i) => ({
		fromMin: 1440 * i,
		toMin: Math.min(1440 * (i + 1), horizonMin),
		isLast: i === many - 1,
	}));
}

const rowsOfSheet = (scope: DressingScope, { fromMin, toMin, isLast }: ReturnType<typeof sheetsOf>[number]): Row[] =>
	rowsOf(scope).filter(({ atMin }) => atMin >= fromMin && (atMin < toMin || (isLast && atMin <= toMin)));

const columns = () => ["Time", "What", "Volume", "Look at"];

export const clockTables: TableEntry<DressingScope>[] = [
	{ id: /-clock-next$/u, columns, rows: (scope) => cells(parts(scope).first, scope) },
	{ id: /-clock-later$/u, columns, rows: (scope) => cells(parts(scope).later, scope) },
	...Array.from(
		{ length: mostSheets },
		(_, i): TableEntry<DressingScope> => ({
			id: new RegExp(`-day-${i + 1}-clock-table$`, "u"),
			columns,
			firstOnly: true,
			rows: (scope) => {
				const sheet = sheetsOf(scope)[i];
				return sheet === undefined ? [] : cells(rowsOfSheet(scope, sheet), scope);
			},
		}),
	),
];

export const clockWords: Entry<DressingScope>[] = [
	fixedWords("On the clock"),
	entry(
		"What comes next, until {clock}, where nothing comes between; a fill that chance moves by more than 5 min says so.",
		(scope) => [
			[Math.min(sheetEndMin(scope), scope.scenario.horizonMin)],
			...sheetsOf(scope).map(({ toMin }) => [toMin]),
		],
	),
	entry("Sheet {n} of {n}: {range}.", (scope) => {
		const sheets = sheetsOf(scope);
		return sheets.length === 1 ? [] : sheets.map(({ fromMin, toMin }, i) => [i + 1, sheets.length, [fromMin, toMin]]);
	}),
	entry(
		"Further, for want of room: {tail}.",
		(scope) =>
			sheetsOf(scope).map((sheet) => {
				let day = 0;
				return [
					listed(
						rowsOfSheet(scope, sheet).map(({ atMin, what }): Said => {
							const time: OnDay = { from: atMin, to: atMin, day };
							day = dayOf(atMin, scope.scenario);
							return ["{rowtime} {said}", time, what];
						}),
						" · ",
						", in schedule.csv",
					),
				];
			}),
		true,
	),
	entry(
		"Further, for want of room: {n} rows, in schedule.csv.",
		(scope) => sheetsOf(scope).map((sheet) => [rowsOfSheet(scope, sheet).length - 1]),
		true,
	),
	entry("Later: {n} rows[[, then {n} more in schedule.csv]]", (scope) => {
		const { later, left } = parts(scope);
		return later.length === 0 ? [] : [[later.length, left > 0 ? left : undefined]];
	}),
	fixedWords("What comes later.", (scope) => parts(scope).later.length > 0),
];
