import type { ChangeTime } from "../../../results/index.ts";
import {
	type Clock,
	clockTime,
	dayWords,
	happeningWords,
	isInstant,
	percentWords,
	rangeWords,
	regimenWords,
	shiftsBetween,
	soundsWords,
	timeOfDay,
	timeRange,
	volumeNumber,
	volumeWords,
	waits,
} from "../../../words/index.ts";
import type { HtmlMaker } from "../../kit/html-element.ts";
import { type Column, htmlTable } from "../../kit/table.ts";
import { chanceOf, likeliestWords, likely } from "../answers/change-answers.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";

/** One line of what happens next. */
export interface ClockRow {
	readonly atMin: number;
	readonly what: string;
	/** What goes in, where something does. */
	readonly volume?: string;
	readonly look: string;
}

/** A change is told where it comes in at least this share of the days. */
const leastProbability = 0.3;
/** Chance that moves a fill by less is not told, min. */
const leastShiftMin = 5;

/**
 * What happens next, in order of time: the undisturbed schedule with what is planned in it, for each fill how far chance
 * moves it, rounds with what the canister will hold, and when a canister is likely to need changing.
 */
export const clockRows = (parts: DressingParts): ClockRow[] =>
	[
		...takeoverRows(parts),
		...happeningRows(parts),
		...roundRows(parts),
		...canisterRows(parts),
		...sourceRows(parts),
		...changeRows(parts),
		...homeRows(parts),
		// A fill that begins with a round comes after it.
		...cycleRows(parts),
	].sort((a, b) => a.atMin - b.atMin);

/** Until the end of the shift: the next 07:00 or 19:00 that is at least 6 h away, or the horizon. */
export function sheetEndMin(clock: Clock): number {
	const ends = shiftsBetween(0, Math.max(clock.horizonMin, 1), clock).map((shift) => shift.endMin);
	return ends.find((end) => end >= 360) ?? clock.horizonMin;
}

export const clockCaption = (until: string): string =>
	`What comes next, until ${until}, where nothing comes between; a fill that chance moves by more than ${leastShiftMin} min says so.`;

/** The regimen in force at a time of the undisturbed day. */
function regimenAt(atMin: number, { dressing, day }: DressingParts) {
	const last = day.schedule.takeovers.findLast((one) => one.atMin <= atMin);
	return dressing.regimens[last?.regimen ?? 0];
}

function cycleRows(parts: DressingParts): ClockRow[] {
	const { clock, dressing, projection } = parts;
	const { phases } = parts.day.schedule;
	const fills = phases.flatMap((phase, index) => (phase.phase === "fill" ? [{ ...phase, index }] : []));
	const rows = fills.map(({ startMin, endMin, index }, place): ClockRow => {
		const rest = phases.slice(index + 1, index + 3);
		const dwell = rest.find((next) => next.phase === "dwell");
		const drain = rest.find((next) => next.phase === "drain");
		const moved = movedWords(startMin, projection.fills, place, projection.totals.fills.p90, clock);
		const ends =
			drain === undefined
				? { what: `dwells until ${timeOfDay(dwell?.endMin ?? endMin, clock)}`, look: "foam draws down again" }
				: {
						what: `drains at ${timeOfDay(drain.startMin, clock)}`,
						look: `drawn down by ${timeOfDay(Math.ceil(drain.endMin), clock)}`,
					};
		return {
			atMin: startMin,
			what: `Fill; ${ends.what}${moved === "" ? "" : `; ${moved}`}`,
			volume: `${volumeNumber(regimenAt(startMin, parts)?.fillMl ?? 0)} mL in`,
			look: `${place === 0 ? "first fill: no pooling under the drape, " : ""}edges dry; ${ends.look}`,
		};
	});
	if (dressing.regimens[0]?.fillMl !== 0) return rows;
	return [{ atMin: 0, what: "Continuous suction", look: "foam collapsed, edges sealed, the set depth held" }, ...rows];
}

/**
 * Where chance carries what the schedule has at a time: 'eight days in ten between 10:02 and 10:31'; 'on 77 % of the days,
 * eight in ten of them between 02:50 and 03:05' where it does not come on nearly every day, 'not reached as simulated'
 * where none of the days comes to it; `most` is how many there are on most days, more than `times` where not all are
 * followed one by one. '' where it is hardly away from its time.
 */
function movedWords(atMin: number, times: readonly ChangeTime[], index: number, most: number, clock: Clock): string {
	const time = times[index];
	if (time === undefined) return most <= times.length ? "not reached as simulated" : "";
	const { p10Min, p90Min, probabilityWithinHorizon: chance } = time;
	const rare = chance < likely ? `on ${percentWords(chance)} of the days` : "";
	if (Math.max(Math.abs(p10Min - atMin), Math.abs(p90Min - atMin)) <= leastShiftMin) return rare;
	const range = timeRange(p10Min, p90Min, clock);
	if (isInstant(p10Min, p90Min, clock)) return `${rare === "" ? "" : `${rare}, `}as simulated ${range}`;
	return rare === "" ? `eight days in ten ${range}` : `${rare}, eight in ten of them ${range}`;
}

const takeoverRows = ({ day, dressing, clock }: DressingParts): ClockRow[] =>
	day.schedule.takeovers.flatMap((takeover) => {
		const next = dressing.regimens[takeover.regimen];
		const look = waits(takeover)
			? `set for ${clockTime(takeover.fromMin, clock)}; the cycle that runs then is finished first`
			: "settings of the unit against the prescription";
		return next === undefined ? [] : [{ atMin: takeover.atMin, what: `Regimen changes: ${regimenWords(next)}`, look }];
	});

/** What the scenario lists; changes of bag and dressing stand in the schedule already. */
const happeningRows = ({ happenings, day, clock }: DressingParts): ClockRow[] =>
	happenings
		.filter(({ what }) => what !== "source-change" && what !== "dressing-change")
		.map((happening) => ({
			atMin: happening.atMin,
			what: happeningWords(happening, clock),
			look:
				soundsWords(happening, day.schedule, clock) ||
				(happening.planned ? "lines free, then seal and depth" : "what the unit says, then find and mend it"),
		}));

const roundRows = ({ projection, dressing, hasFill }: DressingParts): ClockRow[] =>
	projection.rounds.map(({ atMin, p10Ml, p90Ml }) => ({
		atMin,
		what: "Round",
		look: `canister ${rangeWords(p10Ml, p90Ml, volumeNumber)} of ${volumeWords(dressing.canisterMl)}; ${hasFill ? "solution, edges" : "edges"}`,
	}));

/** From when on a new canister should be at hand, and when it is likeliest to be wanted. */
const canisterRows = ({ projection, clock, varies }: DressingParts): ClockRow[] =>
	projection.canisterNeeds
		.filter(({ probabilityWithinHorizon }) => probabilityWithinHorizon >= leastProbability)
		.map((need) => {
			const likeliest = likeliestWords(need, clock);
			const until = isInstant(need.p10Min, need.p90Min, clock) ? "" : `, until ${clockTime(need.p90Min, clock)}`;
			return {
				atMin: need.p10Min,
				what: `Canister ${varies ? "likely to need" : "needs"} changing${until}${chanceOf(need)}`,
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
function sourceRows({ day, projection, clock }: DressingParts): ClockRow[] {
	const planned = day.schedule.sourceChanges.map(({ atMin, reason }, i) => {
		const moved = movedWords(atMin, projection.sourceChanges, i, projection.totals.sourceChanges.p90, clock);
		return {
			atMin,
			what: `New bag of solution${moved === "" ? "" : `; ${moved}`}`,
			look: `${bagLooks[reason]}; new bag at hand`,
		};
	});
	const more = projection.sourceChanges
		.slice(planned.length)
		.filter(({ probabilityWithinHorizon }) => probabilityWithinHorizon >= leastProbability)
		.map((change) => ({
			atMin: change.p10Min,
			what: `Solution likely to be renewed${chanceOf(change)}`,
			look: `${timeRange(change.p10Min, change.p90Min, clock)}; new bag at hand`,
		}));
	return [...planned, ...more];
}

const changeRows = ({ day, clock }: DressingParts): ClockRow[] =>
	day.schedule.dressingChanges.map((change) => ({
		atMin: change.startMin,
		what: `Dressing change until ${timeOfDay(change.endMin, clock)}`,
		look: "wound bed and edges; one kit at hand",
	}));

const homeRows = ({ homeMin, clock }: DressingParts): ClockRow[] =>
	homeMin === null || homeMin >= clock.horizonMin
		? []
		: [{ atMin: homeMin, what: "Goes home", look: "what to send along stands under The plan" }];

const columns: readonly Column<ClockRow & { readonly time: string }>[] = [
	// A long date breaks after its day, so that it takes no room from the words beside it.
	{ head: "Time", written: ({ time }) => time.replace(" ", "\u00A0") },
	{ head: "What", written: ({ what }) => what },
	{ head: "Volume", numeric: true, written: ({ volume = "" }) => volume },
	{ head: "Look at", written: ({ look }) => look },
];

export const clockTable = (
	html: HtmlMaker,
	ids: { readonly id: string; readonly under: string },
	caption: string,
	rows: readonly ClockRow[],
	clock: Clock,
): HTMLElement => htmlTable(html, { ...ids, caption, stacks: true }, columns, timed(rows, clock));

/** Rows with their times as a table writes them: the day with the first row of each day, then the time alone. */
export function timed(rows: readonly ClockRow[], clock: Clock): (ClockRow & { readonly time: string })[] {
	let day = dayWords(0, clock);
	return rows.map((row) => {
		const words = dayWords(row.atMin, clock);
		const time = words === day ? timeOfDay(row.atMin, clock) : clockTime(row.atMin, clock);
		day = words;
		return { ...row, time };
	});
}
