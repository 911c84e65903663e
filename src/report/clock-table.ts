import type {
	ChangeTime,
	DressingDay,
	DressingProjection,
	DressingSummary,
} from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	dayWords,
	percentWords,
	rangeWords,
	shiftsBetween,
	timeOfDay,
	timeRange,
	volumeNumber,
	volumeWords,
} from "../charts/index.ts";

/** One line of what happens next. */
export interface ClockRow {
	readonly atMin: number;
	readonly what: string;
	readonly volume: string;
	readonly look: string;
}

export interface ClockData {
	readonly clock: Clock;
	readonly roundsClockMin: readonly number[];
	readonly dressing: DressingSummary;
	readonly day: DressingDay;
	readonly projection: DressingProjection;
}

const leastProbability = 0.3;

/** What happens next, in order of time: each cycle a row, rounds, likely changes of canister and solution, dressing changes. */
export function clockRows(data: ClockData): ClockRow[] {
	return [
		...cycleRows(data),
		...roundRows(data),
		...changeRows(data.projection.canisterChanges, data.clock, canisterLook),
		...changeRows(data.projection.sourceChanges, data.clock, sourceLook),
		...data.day.dressingChanges.map((change) => ({
			atMin: change.startMin,
			what: `Dressing change until ${timeOfDay(change.endMin, data.clock)}`,
			volume: "",
			look: "wound bed and edges; one kit at hand",
		})),
	].sort((a, b) => a.atMin - b.atMin);
}

/** Until the end of the shift: the next 07:00 or 19:00 that is at least 6 h away, or the horizon. */
export function sheetEndMin(clock: Clock): number {
	const ends = shiftsBetween(0, Math.max(clock.horizonMin, 1), clock).map(
		(shift) => shift.endMin,
	);
	return ends.find((end) => end >= 360) ?? clock.horizonMin;
}

type Phase = DressingDay["phases"][number];

function cycleRows({ day, clock, dressing }: ClockData): ClockRow[] {
	const rows: ClockRow[] = [];
	day.phases.forEach((phase, index) => {
		if (phase.phase !== "fill") return;
		const rest = day.phases.slice(index + 1, index + 3);
		const dwell = rest.find((next) => next.phase === "dwell");
		const drain = rest.find((next) => next.phase === "drain");
		rows.push({
			atMin: phase.startMin,
			what: cycleWords(phase, dwell, drain, clock),
			volume: `${volumeNumber(levelChange(day, phase))} mL in`,
			look:
				rows.length === 0
					? `first fill: no pooling under the drape, edges dry; ${drainLook(drain, clock)}`
					: `edges dry; ${drainLook(drain, clock)}`,
		});
	});
	if (rows.length > 0 || dressing.regimens.length === 0) return rows;
	return [
		{
			atMin: 0,
			what: "Continuous suction",
			volume: "",
			look: "foam collapsed, edges sealed, the set depth held",
		},
	];
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

/** What the source gave during a fill, read from the curve. */
function levelChange(day: DressingDay, fill: Phase): number {
	const { atMin, sourceMl } = day.curve;
	let poured = 0;
	for (let index = 1; index < atMin.length; index++) {
		const [from, to] = [atMin[index - 1] ?? 0, atMin[index] ?? 0];
		if (from < fill.startMin - 1e-9 || to > fill.endMin + 1e-9) continue;
		poured += Math.max(0, (sourceMl[index - 1] ?? 0) - (sourceMl[index] ?? 0));
	}
	return poured;
}

function roundRows({
	clock,
	roundsClockMin,
	projection,
	dressing,
}: ClockData): ClockRow[] {
	const rows: ClockRow[] = [];
	for (
		let midnight = -1440;
		midnight < clock.startClockMin + clock.horizonMin;
		midnight += 1440
	)
		for (const round of roundsClockMin) {
			const atMin = midnight + round - clock.startClockMin;
			if (atMin < 1 || atMin >= clock.horizonMin) continue;
			rows.push({
				atMin,
				what: "Round",
				volume: "",
				look: roundLook(projection, dressing, atMin),
			});
		}
	return rows;
}

/** Coarser steps than this say nothing of the hour of a round. */
const coarsestStepMin = 60;

/** The content that a canister is likely to hold when a round comes by. */
function roundLook(
	{ canisterLevel }: DressingProjection,
	dressing: DressingSummary,
	atMin: number,
): string {
	const rest = dressing.regimens.some((regimen) => regimen.fillMl > 0)
		? "solution, edges"
		: "edges";
	// The level just before the round: at the round itself a change may already have emptied it.
	const index = Math.max(0, Math.ceil(atMin / canisterLevel.stepMin) - 1);
	const [low, high] = [canisterLevel.p10Ml[index], canisterLevel.p90Ml[index]];
	if (
		low === undefined ||
		high === undefined ||
		canisterLevel.stepMin > coarsestStepMin
	)
		return `canister, ${rest}`;
	return `canister ${rangeWords(low, high, volumeNumber)} of ${volumeWords(dressing.canisterMl)}; ${rest}`;
}

interface ChangeLook {
	readonly what: string;
	readonly look: string;
}

const canisterLook: ChangeLook = {
	what: "Canister likely to need changing",
	look: "new canister at hand",
};
const sourceLook: ChangeLook = {
	what: "Solution likely to be renewed",
	look: "new bag at hand",
};

const changeRows = (
	changes: readonly ChangeTime[],
	clock: Clock,
	words: ChangeLook,
): ClockRow[] =>
	changes
		.filter((change) => change.probabilityWithinHorizon >= leastProbability)
		.map((change) => ({
			atMin: change.p50Min,
			what: words.what,
			volume: "",
			look: `${timeRange(change.p10Min, change.p90Min, clock)}${chanceWords(change)}; ${words.look}`,
		}));

const chanceWords = (change: ChangeTime): string =>
	change.probabilityWithinHorizon < 0.95
		? ` (${percentWords(change.probabilityWithinHorizon)})`
		: "";

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
