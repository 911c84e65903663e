import type {
	ChangeTime,
	DayResult,
	DressingProjection,
	DressingSummary,
	ListedHappening,
	Schedule,
} from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	dayWords,
	isInstant,
	percentWords,
	rangeWords,
	regimenWords,
	shiftsBetween,
	timeOfDay,
	timeRange,
	volumeNumber,
	volumeWords,
} from "../charts/index.ts";
import { likely, varies } from "./answer-data.ts";
import { chanceOf, likeliestWords } from "./change-words.ts";
import type { DressingParts } from "./dressing-parts.ts";
import { waits } from "./dressing-words.ts";
import { happeningWords, soundsWords } from "./happening-words.ts";

/** One line of what happens next. */
export interface ClockRow {
	readonly atMin: number;
	readonly what: string;
	readonly volume: string;
	readonly look: string;
}

export interface ClockData {
	readonly clock: Clock;
	readonly dressing: DressingSummary;
	readonly schedule: Schedule;
	readonly projection: DressingProjection;
	/** Listed for this dressing. */
	readonly happenings: readonly ListedHappening[];
	/** When the patient goes home; null where nobody does. */
	readonly homeMin: number | null;
	/** False where nothing varies: then nothing is 'likely', it is so. */
	readonly varies: boolean;
}

/** What the clock table of a dressing is made from. */
export const clockData = (
	result: DayResult,
	{ summary, day, projection }: DressingParts,
): ClockData => ({
	clock: result.scenario,
	dressing: summary,
	schedule: day.schedule,
	projection,
	happenings: result.scenario.happenings.filter(
		({ dressing }) => dressing === summary.id,
	),
	homeMin: result.home?.fromMin ?? null,
	varies: varies({
		chance: result.scenario.chance,
		replications: result.projection.replications,
	}),
});

/** A change is told where it comes in at least this share of the days. */
const leastProbability = 0.3;
/** Chance that moves a fill by less is not told, min. */
const leastShiftMin = 5;

/**
 * What happens next, in order of time: the undisturbed schedule with what is planned in it, for each fill how far chance
 * moves it, rounds with what the canister will hold, and when a canister is likely to need changing.
 */
export function clockRows(data: ClockData): ClockRow[] {
	return [
		...takeoverRows(data),
		...happeningRows(data),
		...roundRows(data),
		...canisterRows(data),
		...sourceRows(data),
		...changeRows(data),
		...homeRows(data),
		// A fill that begins with a round comes after it.
		...cycleRows(data),
	].sort((a, b) => a.atMin - b.atMin);
}

/** Until the end of the shift: the next 07:00 or 19:00 that is at least 6 h away, or the horizon. */
export function sheetEndMin(clock: Clock): number {
	const ends = shiftsBetween(0, Math.max(clock.horizonMin, 1), clock).map(
		(shift) => shift.endMin,
	);
	return ends.find((end) => end >= 360) ?? clock.horizonMin;
}

type Phase = Schedule["phases"][number];

/** The regimen in force at a time of the undisturbed day. */
function regimenAt(atMin: number, { dressing, schedule }: ClockData) {
	const last = schedule.takeovers.findLast((one) => one.atMin <= atMin);
	return dressing.regimens[last?.regimen ?? 0];
}

function cycleRows(data: ClockData): ClockRow[] {
	const { schedule, clock, projection } = data;
	const rows: ClockRow[] = [];
	schedule.phases.forEach((phase, index) => {
		if (phase.phase !== "fill") return;
		const rest = schedule.phases.slice(index + 1, index + 3);
		const dwell = rest.find((next) => next.phase === "dwell");
		const drain = rest.find((next) => next.phase === "drain");
		const moved = movedWords(
			phase.startMin,
			projection.fills,
			rows.length,
			projection.totals.fills.p90,
			clock,
		);
		rows.push({
			atMin: phase.startMin,
			what: `${cycleWords(phase, dwell, drain, clock)}${moved === "" ? "" : `; ${moved}`}`,
			volume: `${volumeNumber(regimenAt(phase.startMin, data)?.fillMl ?? 0)} mL in`,
			look:
				rows.length === 0
					? `first fill: no pooling under the drape, edges dry; ${drainLook(drain, clock)}`
					: `edges dry; ${drainLook(drain, clock)}`,
		});
	});
	if (data.dressing.regimens[0]?.fillMl !== 0) return rows;
	return [
		{
			atMin: 0,
			what: "Continuous suction",
			volume: "",
			look: "foam collapsed, edges sealed, the set depth held",
		},
		...rows,
	];
}

/**
 * Where chance carries what the schedule has at a time: 'eight days in ten between 10:02 and 10:31'; 'on 77 % of the days,
 * eight in ten of them between 02:50 and 03:05' where it does not come on nearly every day, 'not reached as simulated'
 * where none of the days comes to it; `most` is how many there are on most days, more than `times` where not all are
 * followed one by one. '' where it is hardly away from its time.
 */
function movedWords(
	atMin: number,
	times: readonly ChangeTime[],
	index: number,
	most: number,
	clock: Clock,
): string {
	const time = times[index];
	if (time === undefined)
		return most <= times.length ? "not reached as simulated" : "";
	const { p10Min, p90Min, probabilityWithinHorizon: chance } = time;
	const rare = chance < likely ? `on ${percentWords(chance)} of the days` : "";
	if (
		Math.max(Math.abs(p10Min - atMin), Math.abs(p90Min - atMin)) <=
		leastShiftMin
	)
		return rare;
	const range = timeRange(p10Min, p90Min, clock);
	if (isInstant(p10Min, p90Min, clock))
		return `${rare === "" ? "" : `${rare}, `}as simulated ${range}`;
	return rare === ""
		? `eight days in ten ${range}`
		: `${rare}, eight in ten of them ${range}`;
}

function cycleWords(
	fill: Phase,
	dwell: Phase | undefined,
	drain: Phase | undefined,
	clock: Clock,
): string {
	const until = dwell?.endMin ?? fill.endMin;
	if (drain === undefined)
		return `Fill; dwells until ${timeOfDay(until, clock)}`;
	return `Fill; drains at ${timeOfDay(drain.startMin, clock)}`;
}

const drainLook = (drain: Phase | undefined, clock: Clock): string =>
	drain === undefined
		? "foam draws down again"
		: `drawn down by ${timeOfDay(Math.ceil(drain.endMin), clock)}`;

const takeoverRows = (data: ClockData): ClockRow[] =>
	data.schedule.takeovers.flatMap((takeover) => {
		const { fromMin, atMin } = takeover;
		const next = data.dressing.regimens[takeover.regimen];
		if (next === undefined) return [];
		return [
			{
				atMin,
				what: `Regimen changes: ${regimenWords(next)}`,
				volume: "",
				look: waits(takeover)
					? `set for ${clockTime(fromMin, data.clock)}; the cycle that runs then is finished first`
					: "settings of the unit against the prescription",
			},
		];
	});

/** What the scenario lists; changes of bag and dressing stand in the schedule already. */
const happeningRows = ({
	happenings,
	schedule,
	clock,
}: ClockData): ClockRow[] =>
	happenings
		.filter(
			({ what }) => what !== "source-change" && what !== "dressing-change",
		)
		.map((happening) => ({
			atMin: happening.atMin,
			what: happeningWords(happening, clock),
			volume: "",
			look:
				soundsWords(happening, schedule, clock) ||
				(happening.planned
					? "lines free, then seal and depth"
					: "what the unit says, then find and mend it"),
		}));

function roundRows({ projection, dressing }: ClockData): ClockRow[] {
	const rest = dressing.regimens.some((regimen) => regimen.fillMl > 0)
		? "solution, edges"
		: "edges";
	return projection.rounds.map(({ atMin, p10Ml, p90Ml }) => ({
		atMin,
		what: "Round",
		volume: "",
		look: `canister ${rangeWords(p10Ml, p90Ml, volumeNumber)} of ${volumeWords(dressing.canisterMl)}; ${rest}`,
	}));
}

/** From when on a new canister should be at hand, and when it is likeliest to be wanted. */
const canisterRows = ({ projection, clock, varies }: ClockData): ClockRow[] =>
	projection.canisterNeeds
		.filter(
			({ probabilityWithinHorizon }) =>
				probabilityWithinHorizon >= leastProbability,
		)
		.map((need) => {
			const likeliest = likeliestWords(need, clock);
			const until = isInstant(need.p10Min, need.p90Min, clock)
				? ""
				: `, until ${clockTime(need.p90Min, clock)}`;
			return {
				atMin: need.p10Min,
				what: `Canister ${varies ? "likely to need" : "needs"} changing${until}${chanceOf(need)}`,
				volume: "",
				look: `${likeliest === "" ? "" : `likeliest ${likeliest}; `}new canister at hand`,
			};
		});

const bagLooks = {
	empty: "the old one runs empty in this fill",
	round: "the old one holds less than a fill",
	expired: "the old one has hung its time",
	scripted: "planned",
} as const;

/** New bags of the schedule, how far chance moves them, and those that chance alone brings. */
function sourceRows({ schedule, projection, clock }: ClockData): ClockRow[] {
	const planned = schedule.sourceChanges.map(({ atMin, reason }, i) => {
		const moved = movedWords(
			atMin,
			projection.sourceChanges,
			i,
			projection.totals.sourceChanges.p90,
			clock,
		);
		return {
			atMin,
			what: `New bag of solution${moved === "" ? "" : `; ${moved}`}`,
			volume: "",
			look: `${bagLooks[reason]}; new bag at hand`,
		};
	});
	const more = projection.sourceChanges
		.slice(planned.length)
		.filter(
			({ probabilityWithinHorizon }) =>
				probabilityWithinHorizon >= leastProbability,
		)
		.map((change) => ({
			atMin: change.p10Min,
			what: `Solution likely to be renewed${chanceOf(change)}`,
			volume: "",
			look: `${timeRange(change.p10Min, change.p90Min, clock)}; new bag at hand`,
		}));
	return [...planned, ...more];
}

const changeRows = ({ schedule, clock }: ClockData): ClockRow[] =>
	schedule.dressingChanges.map((change) => ({
		atMin: change.startMin,
		what: `Dressing change until ${timeOfDay(change.endMin, clock)}`,
		volume: "",
		look: "wound bed and edges; one kit at hand",
	}));

const homeRows = ({ homeMin, clock }: ClockData): ClockRow[] =>
	homeMin === null || homeMin >= clock.horizonMin
		? []
		: [
				{
					atMin: homeMin,
					what: "Goes home",
					volume: "",
					look: "what to send along stands under The plan",
				},
			];

/** The times of rows as a table writes them: the day with the first row of each day, then the time alone. */
export function rowTimes(rows: readonly ClockRow[], clock: Clock): string[] {
	let day = dayWords(0, clock);
	return rows.map((row) => {
		const words = dayWords(row.atMin, clock);
		const time =
			words === day ? timeOfDay(row.atMin, clock) : clockTime(row.atMin, clock);
		day = words;
		return time;
	});
}
