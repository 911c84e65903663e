import type { DressingDay } from "../../../src/results/index.ts";
import { type Entry, entry, fixedWords } from "../check.ts";
import type { Clock } from "../clock.ts";
import { fixed } from "../holes.ts";
import { type Listed, listed, type Said } from "../pattern.ts";
import type { DayScope, DressingScope } from "../scope.ts";
import { capital, conditionName } from "../vocabulary.ts";
import { regimenSaid } from "./regimen.ts";

interface Happened {
	readonly lane: string;
	readonly startMin: number;
	readonly said: Said;
}

const endings: { readonly [ending: string]: string } = {
	call: "nurse called",
	round: "mended at a round",
	scripted: "as scripted",
	"dressing-change": "dressing changed",
	"by-itself": "ended by itself",
	horizon: "still standing",
};
const reasons: { readonly [reason: string]: string } = {
	"at-capacity": "full",
	round: "at a round",
	scripted: "scripted",
	empty: "empty",
	expired: "hung too long",
};

const alarmsOf = (day: Pick<DressingDay, "alarms">): Happened[] =>
	day.alarms.map(({ condition, startMin, endMin, endedBy }) => ({
		lane: conditionName(condition),
		startMin,
		said: ["{text}, {duration}: {text}", conditionName(condition), endMin - startMin, endings[endedBy]],
	}));

const careOf = (day: DressingDay): Happened[] =>
	[
		...day.canisterChanges.map(
			({ atMin, reason }): Happened => ({
				lane: "canister changed",
				startMin: atMin,
				said: ["canister changed ({text})", reasons[reason]],
			}),
		),
		...day.sourceChanges.map(
			({ atMin, reason }): Happened => ({
				lane: "solution renewed",
				startMin: atMin,
				said: ["solution renewed ({text})", reasons[reason]],
			}),
		),
		...day.dressingChanges.map(
			({ startMin, endMin }): Happened => ({
				lane: "dressing changed",
				startMin,
				said: ["dressing changed, {duration}", endMin - startMin],
			}),
		),
		...day.pauses
			.filter(({ reason }) => reason === "off" || reason === "port")
			.map(({ reason, startMin, endMin }): Happened => {
				const lane = reason === "off" ? "switched off" : "new port";
				return { lane, startMin, said: ["{text}, {duration}", lane, endMin - startMin] };
			}),
	].toSorted((a, b) => a.startMin - b.startMin);

/** The first eight with their times, and how many more. */
function eventsSaid(kind: string, events: readonly Happened[]): readonly (readonly unknown[])[] {
	if (events.length === 0) return [];
	return [
		[
			kind,
			listed(
				events.slice(0, 8).map(({ startMin, said }): Said => ["{clock} {said}", startMin, said]),
				"; ",
			),
			events.length > 8 ? events.length - 8 : undefined,
		],
	];
}

/** Sentences of a water line's text alternative, for each day that is drawn on a paper. */
export const waterLineWords = <S>(
	days: (scope: S) => readonly DressingDay[],
	first: (scope: S) => readonly Said[],
	horizonMin: (scope: S) => number,
): Entry<S>[] => [
	entry("From {clock} to {clock}.", (scope) => [[0, horizonMin(scope)]]),
	entry("{said}.", (scope) => first(scope).map((said) => [said])),
	entry("{count:fill}, {ml} of solution in, {ml} to the canister.", (scope) =>
		days(scope).map(({ totals }) => [totals.fills, totals.instilledMl, totals.toCanisterMl]),
	),
	fixedWords("No alarms.", (scope) => days(scope).some(({ alarms }) => alarms.length === 0)),
	fixedWords("No care.", (scope) => days(scope).some((day) => careOf(day).length === 0)),
	entry("{text}: {said}[[ and {word} more]].", (scope) =>
		days(scope).flatMap((day) => eventsSaid("Alarms", alarmsOf(day))),
	),
	entry("{text}: {said}[[ and {word} more]].", (scope) =>
		days(scope).flatMap((day) => eventsSaid("Care", careOf(day))),
	),
];

/** Labels of a water line. */
export function waterLineLabels<S>(
	of: (
		scope: S,
	) => readonly {
		readonly day: DressingDay;
		readonly regimens: DressingScope["dressing"]["regimens"];
		readonly canisterMl: number;
		readonly sourceMl: number;
		readonly roundShare: number;
	}[],
	clock: (scope: S) => Clock,
): Entry<S>[] {
	const days = (scope: S) => of(scope).map(({ day }) => day);
	/** The whole day, and each 24 h of it. */
	const spans = (scope: S): Span[] => {
		const { horizonMin } = clock(scope);
		return [
			{ fromMin: 0, toMin: horizonMin },
			...Array.from({ length: Math.ceil(horizonMin / 1440) }, (_, i) => ({
				fromMin: 1440 * i,
				toMin: Math.min(1440 * (i + 1), horizonMin),
			})),
		];
	};
	const events = (scope: S) => days(scope).flatMap((day) => [...alarmsOf(day), ...careOf(day)]);
	const laned = (scope: S) =>
		days(scope).flatMap((day) =>
			spans(scope).flatMap((span) => {
				const part = dayIn(day, span);
				return [alarmsOf(part), careOf(part)];
			}),
		);
	return [
		fixedWords("vented"),
		fixedWords("alarms"),
		fixedWords("care"),
		fixedWords("none"),
		fixedWords("canister"),
		fixedWords("solution left"),
		fixedWords("the part that is enlarged below"),
		...["day", "night"].flatMap((shift) => [fixedWords<S>(shift), fixedWords<S>(`${shift} shift`)]),
		entry("{percent}: round", (scope) => of(scope).map(({ roundShare }) => [roundShare])),
		entry("{ml}", (scope) =>
			of(scope).flatMap(({ canisterMl, sourceMl, regimens }) => [
				[canisterMl],
				[sourceMl],
				...regimens.map(({ fillMl }) => [fillMl]),
			]),
		),
		// A round number above the fills, where more than they are stands in the dressing.
		entry("{ml}", () => [10, 100, 1000].flatMap((power) => [1, 2, 5].map((lead) => [lead * power]))),
		entry("{mmHg}", (scope) => of(scope).flatMap(({ regimens }) => regimens.map(({ depthMmHg }) => [depthMmHg]))),
		entry("{said}", (scope) => events(scope).map(({ said }) => [said])),
		entry("×{n}", (scope) => laned(scope).flatMap((some) => lanesOf(some).map(([, many]) => [many]))),
		entry("{text}", (scope) =>
			laned(scope).flatMap((some) => lanesOf(some).flatMap(([lane]) => piecesOf(lane).map((one) => [one]))),
		),
		entry("{text}, {n} times", (scope) =>
			laned(scope).flatMap((some) =>
				lanesOf(some).flatMap(([lane, many]) => Array.from({ length: many - 1 }, (_, i) => [lane, i + 2])),
			),
		),
		entry("One cycle, enlarged: {range}", (scope) =>
			spans(scope).flatMap((span) => days(scope).flatMap((day) => cyclesOf(day, span))),
		),
		entry("The first minutes, enlarged: {range}", (scope) =>
			spans(scope).map(({ fromMin, toMin }) => [[fromMin, Math.min(fromMin + 10, toMin)]]),
		),
		entry("{text}[[ {duration}]]", (scope) =>
			days(scope).flatMap((day) =>
				day.phases.flatMap(({ phase, startMin, endMin }) => {
					const name = phase === "change" ? "dressing change" : phase;
					return [
						[name, endMin - startMin],
						[name, undefined],
					];
				}),
			),
		),
	];
}

const lanesOf = (events: readonly Happened[]): [string, number][] =>
	[...new Set(events.map(({ lane }) => lane))].map((lane) => [
		lane,
		events.filter((event) => event.lane === lane).length,
	]);

/** A name on one line or broken over two. */
const piecesOf = (text: string): string[] => {
	const words = text.split(" ");
	return [text, ...words.slice(1).flatMap((_, i) => [words.slice(0, i + 1).join(" "), words.slice(i + 1).join(" ")])];
};

interface Span {
	readonly fromMin: number;
	readonly toMin: number;
}

/** What of a day began in a span, or had begun before it and lasts into it. */
function dayIn(day: DressingDay, { fromMin, toMin }: Span): DressingDay {
	const lasts = ({ startMin, endMin }: { readonly startMin: number; readonly endMin: number }): boolean =>
		startMin < toMin && (startMin >= fromMin || endMin > fromMin);
	const came = ({ atMin }: { readonly atMin: number }): boolean => atMin >= fromMin && atMin <= toMin;
	return {
		...day,
		alarms: day.alarms.filter(lasts),
		pauses: day.pauses.filter(lasts),
		dressingChanges: day.dressingChanges.filter(lasts),
		canisterChanges: day.canisterChanges.filter(came),
		sourceChanges: day.sourceChanges.filter(came),
	};
}

/** Every cycle of a span with a little suction about it, one of which may be enlarged. */
function cyclesOf(day: DressingDay, { fromMin, toMin }: Span): [number, number][][] {
	return day.phases.flatMap((fill, at) => {
		if (fill.phase !== "fill") return [];
		const rest = day.phases.slice(at + 1, at + 3).filter(({ phase }) => phase === "dwell" || phase === "drain");
		const endMin = Math.min(toMin, rest.at(-1)?.endMin ?? fill.endMin);
		const margin = Math.max(1, (endMin - fill.startMin) * 0.35);
		return [[[Math.max(fromMin, fill.startMin - margin * 0.6), Math.min(toMin, endMin + margin)]]];
	});
}

/** What the water line of each 24 h says, where there are several. */
export const sheetLineWords: Entry<DressingScope>[] = [
	entry("From {clock} to {clock}.", (scope) => partsOf(scope).map(({ fromMin, toMin }) => [fromMin, toMin])),
	entry("{said}.", (scope) =>
		partsOf(scope).map(({ fromMin }) => {
			const { regimens } = scope.dressing;
			const last = scope.day.takeovers.findLast(({ atMin }) => atMin <= fromMin);
			const regimen = regimens[last?.regimen ?? 0];
			if (regimen === undefined) throw new RangeError("no such regimen");
			return [regimenSaid(regimen)];
		}),
	),
	entry("{count:fill} in this time.", (scope) =>
		partsOf(scope).map(({ fromMin, toMin }) => [
			fixed(
				scope.day.phases.filter(({ phase, startMin }) => phase === "fill" && startMin >= fromMin && startMin < toMin)
					.length,
				0,
			),
		]),
	),
	...(["alarms", "care"] as const).flatMap((kind) => [
		fixedWords<DressingScope>(`No ${kind}.`, (scope) =>
			partsOf(scope).some((span) => eventsIn(scope, span, kind).length === 0),
		),
		entry<DressingScope>("{text}: {said}[[ and {word} more]].", (scope) =>
			partsOf(scope).flatMap((span) => eventsSaid(capital(kind), eventsIn(scope, span, kind))),
		),
	]),
];

/** Each 24 h; none where they are one. */
function partsOf({ scenario: { horizonMin } }: DressingScope): Span[] {
	const many = Math.min(7, Math.ceil(horizonMin / 1440));
	return many < 2
		? []
		: Array.from({ length: many }, (_, i) => ({ fromMin: 1440 * i, toMin: Math.min(1440 * (i + 1), horizonMin) }));
}

const eventsIn = ({ day }: DressingScope, span: Span, kind: "alarms" | "care"): Happened[] =>
	kind === "alarms" ? alarmsOf(dayIn(day, span)) : careOf(dayIn(day, span));

/** When a canister is changed, beside its climb. */
export const changeLabels: Entry<DressingScope>[] = [
	fixedWords("likely change"),
	fixedWords("changes"),
	entry("change {n}: {range}[[ (if at all: {percent})]]", ({ projection }) =>
		projection.canisterNeeds.map(({ ordinal, p10Min, p90Min, probabilityWithinHorizon: chance }) => [
			ordinal,
			[p10Min, p90Min],
			chance < 0.95 ? chance : undefined,
		]),
	),
];

/** Widths that a cell of the strip may have, min: as many as it takes for each to have room. */
const cellsMin = [30, 60, 120, 240, 360, 720, 1440];
const cellNames: { readonly [min: number]: string } = { 30: "a half-hour", 60: "an hour", 1440: "a day" };
const cellName = (min: number): string => cellNames[min] ?? `${min / 60} h`;

/** The least width of which each cell has 15.5 px of the 770 that there are. */
const cellMin = (horizonMin: number): number => cellsMin.find((min) => (min / horizonMin) * 770 >= 15.5) ?? 1440;

/** Chances of half-hours that are put together as if independent, in cells of every width. */
function cellsOf(bins: DressingScope["projection"]["alarms"][number]["bins"]) {
	return cellsMin.flatMap((min) => {
		const many = min / 30;
		const cells = [];
		for (let at = 0; at < bins.length; at += many) {
			const some = bins.slice(at, at + many);
			const [first, last] = [some[0], some.at(-1)];
			if (first === undefined || last === undefined) continue;
			cells.push({
				startMin: first.startMin,
				endMin: last.endMin,
				probability: some.length === 1 ? first.chance : 1 - some.reduce((none, bin) => none * (1 - bin.chance), 1),
			});
		}
		return cells;
	});
}

/** Text alternative of the strip of alarms. */
export const heatWords: Entry<DressingScope>[] = [
	entry("{text}: when an alarm is likely", (scope) => (cameAny(scope) ? [[scope.dressing.id]] : [])),
	entry("Chance by condition that an alarm starts in {text}.", (scope) =>
		cameAny(scope) ? [[cellName(cellMin(scope.scenario.horizonMin))]] : [],
	),
	fixedWords("No half-hour passes 5 %.", (scope) => cameAny(scope) && windowsOf(scope).items.length === 0),
	entry("{said}.", (scope) => (windowsOf(scope).items.length === 0 ? [] : [[windowsOf(scope)]])),
];

const cameAny = ({ projection }: DressingScope): boolean =>
	projection.alarms.some(({ byChance }) => byChance.meanPerDay > 0);

function windowsOf({ projection }: DressingScope): Listed {
	return listed(
		projection.alarms
			.filter(({ byChance }) => byChance.meanPerDay > 0)
			.toSorted((a, b) => b.byChance.meanPerDay - a.byChance.meanPerDay)
			.flatMap(({ condition, windows }) =>
				windows.map(
					({ startMin, endMin, peakProbability }): Said => [
						"{text} {range}, up to {percent} in a half-hour",
						conditionName(condition),
						[startMin, endMin],
						peakProbability,
					],
				),
			)
			.slice(0, 12),
		"; ",
	);
}

const edges = [0.5, 2, 5, 10, 20, 40];

export const heatLabels: Entry<DressingScope>[] = [
	entry("{text}", ({ projection }) =>
		projection.alarms
			.filter(({ byChance }) => byChance.meanPerDay > 0)
			.flatMap(({ condition }) => piecesOf(conditionName(condition)).map((one) => [one])),
	),
	entry("{range}: {percent}", ({ projection }) =>
		projection.alarms.flatMap(({ bins }) =>
			cellsOf(bins).map(({ startMin, endMin, probability }) => [[startMin, endMin], probability]),
		),
	),
	entry("{n}", ({ projection }) =>
		projection.alarms.flatMap(({ bins }) =>
			cellsOf(bins)
				.filter(({ probability }) => probability > 0.05)
				.map(({ probability }) => [fixed(probability < 1 ? Math.min(99, Math.round(100 * probability)) : 100, 0)]),
		),
	),
	entry("chance that one starts in {text}, in %:", ({ scenario }) => [[cellName(cellMin(scenario.horizonMin))]]),
	entry("from {n}", () => edges.map((edge) => [fixed(edge, 1)])),
	fixedWords("{n} and more".replace("{n}", "40")),
];

/** The first regimen that a water line names. */
export const firstRegimen = ({ dressing }: DressingScope): Said => {
	const [first] = dressing.regimens;
	if (first === undefined) throw new RangeError("a dressing has a regimen");
	return regimenSaid(first);
};

/** Share of a canister at which a round changes it. */
export const roundShareOf = ({ scenario }: DayScope): number => scenario.constants["round.canisterAbove"];
