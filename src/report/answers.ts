import type {
	ChangeTime,
	DressingProjection,
	DressingSummary,
	Spread,
} from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	conditionWords,
	counted,
	durationWords,
	percentWords,
	plainNumber,
	rangeWords,
	timeRange,
	volumeWords,
} from "../charts/index.ts";
import { type Piece, type Sentence, strong } from "./sentence.ts";

export interface AnswerData {
	readonly clock: Clock;
	readonly chance: "on" | "off";
	readonly dressing: DressingSummary;
	readonly projection: DressingProjection;
	readonly replications: number;
}

/** Fewer replications than this, and the ranges are called rough. */
export const fewReplications = 50;
const likely = 0.95;
const unlikely = 0.05;

/** Three to six sentences that a reader at the bedside came for, times and volumes strong, each with its range. */
export function answers(data: AnswerData): Sentence[] {
	const hasFill = data.dressing.regimens.some((regimen) => regimen.fillMl > 0);
	return [
		...howSure(data),
		canisterAnswer(data),
		...(hasFill ? [solutionAnswer(data), returnAnswer(data)] : []),
		alarmAnswer(data),
		offAnswer(data),
	];
}

/** Said first where the ranges mean little. */
function howSure(data: AnswerData): Sentence[] {
	if (data.chance === "off")
		return [
			[
				"Chance is off: ",
				strong("nothing fails by itself and nothing varies"),
				", so there are no ranges.",
			],
		];
	if (data.replications < 2)
		return [
			[
				"One replication only: ",
				strong("there are no ranges"),
				". Run more to see them.",
			],
		];
	if (data.replications < fewReplications)
		return [
			[
				`Only ${counted(data.replications, "replication")}: `,
				strong("the ranges are rough"),
				".",
			],
		];
	return [];
}

function canisterAnswer({ projection, clock, dressing }: AnswerData): Sentence {
	const first = projection.canisterChanges.find(
		(change) => change.ordinal === 1,
	);
	const until = clockTime(clock.horizonMin, clock);
	const content = projection.totals.toCanisterMl;
	if (first === undefined || first.probabilityWithinHorizon < unlikely) {
		const chance =
			first === undefined
				? ""
				: ` (${percentWords(first.probabilityWithinHorizon)})`;
		return [
			"Canister: ",
			strong(`no change likely before ${until}`),
			`${chance}; ${spreadVolume(content)} of its ${volumeWords(dressing.canisterMl)} will be in it.`,
		];
	}
	const when = changeWhen(first, clock);
	const later = laterChanges(projection.totals.canisterChanges);
	if (first.probabilityWithinHorizon < likely)
		return [
			"Canister: ",
			strong(
				`may need changing (${percentWords(first.probabilityWithinHorizon)})`,
			),
			", and then ",
			...when,
			`.${later}`,
		];
	return ["Canister: likely to need changing ", ...when, `.${later}`];
}

/** 'between 19:05 and 21:40, most likely 20:15', or 'at 19:00'. */
function changeWhen(change: ChangeTime, clock: Clock): Piece[] {
	const range = timeRange(change.p10Min, change.p90Min, clock);
	if (range.startsWith("at ")) return [strong(range)];
	return [
		strong(range),
		", most likely ",
		strong(clockTime(change.p50Min, clock)),
	];
}

function laterChanges(changes: Spread): string {
	if (changes.p90 < 1.5) return "";
	return ` Over the whole time ${rangeWords(changes.p10, changes.p90, (value) => plainNumber(value, 0))} changes.`;
}

function solutionAnswer({ projection, clock, dressing }: AnswerData): Sentence {
	const { instilledMl, fills, sourceChanges } = projection.totals;
	const bags = 1 + Math.round(sourceChanges.p90);
	const bag = `${volumeWords(dressing.sourceMl)} bag`;
	const have = bags === 1 ? `one ${bag}` : `${bags} of the ${bag}s`;
	const first = projection.sourceChanges.find((change) => change.ordinal === 1);
	const good =
		first === undefined || first.probabilityWithinHorizon < unlikely
			? `, good until ${clockTime(clock.horizonMin, clock)}`
			: `; the first is renewed ${timeRange(first.p10Min, first.p90Min, clock)}`;
	const range = spreadRange(instilledMl, volumeWords);
	return [
		"Solution: ",
		strong(volumeWords(instilledMl.p50)),
		` in ${counted(fills.p50, "fill")}${range}; have `,
		strong(have),
		`${good}.`,
	];
}

function returnAnswer({ projection }: AnswerData): Sentence {
	const { notReturnedMl } = projection.totals;
	return [
		"Did not come back: ",
		strong(volumeWords(notReturnedMl.p50)),
		` of the solution${spreadRange(notReturnedMl, volumeWords)}.`,
	];
}

function alarmAnswer({
	projection,
	clock,
	replications,
}: AnswerData): Sentence {
	const windows = projection.alarms.flatMap((alarm) =>
		alarm.windows.map((window) => ({ ...window, condition: alarm.condition })),
	);
	const peak = windows.toSorted(
		(a, b) => b.peakProbability - a.peakProbability || a.startMin - b.startMin,
	)[0];
	if (peak !== undefined)
		return [
			"An alarm is likeliest ",
			strong(timeRange(peak.startMin, peak.endMin, clock)),
			`: ${conditionWords[peak.condition]}, up to `,
			strong(percentWords(peak.peakProbability)),
			" in a half-hour.",
		];
	const commonest = projection.alarms.toSorted(
		(a, b) => b.meanPerDay - a.meanPerDay,
	)[0];
	if (commonest === undefined || commonest.meanPerDay === 0) {
		const where =
			replications < 2
				? "in this day"
				: `in any of ${counted(replications, "replication")}`;
		return [strong("No alarm came"), ` ${where}.`];
	}
	return [
		strong("No time of day stands out for alarms"),
		`: no half-hour reaches 5 %. The commonest is ${conditionWords[commonest.condition]}, ${perDay(commonest.meanPerDay, commonest.halfWidth95)}.`,
	];
}

/** 'about 0.3 in 24 h (between 0.2 and 0.4)'. */
export function perDay(mean: number, halfWidth95: number | null): string {
	const number = (value: number): string =>
		plainNumber(value, value < 1 ? 2 : 1);
	if (halfWidth95 === null) return `${number(mean)} in 24 h`;
	return `about ${number(mean)} in 24 h (${rangeWords(Math.max(0, mean - halfWidth95), mean + halfWidth95, number)})`;
}

function offAnswer({ projection }: AnswerData): Sentence {
	const { offSuctionMin } = projection.totals;
	const range = spreadRange(offSuctionMin, durationWords);
	if (offSuctionMin.p90 < 0.05)
		return [
			"Off suction outside fills and dwells: ",
			strong("hardly at all"),
			".",
		];
	return [
		"Off suction outside fills and dwells: ",
		strong(durationWords(offSuctionMin.p50)),
		`${range}.`,
	];
}

/** ' (between 520 mL and 560 mL)', or nothing where it does not vary. */
function spreadRange(spread: Spread, words: (value: number) => string): string {
	const [low, high] = [words(spread.p10), words(spread.p90)];
	return low === high ? "" : ` (between ${low} and ${high})`;
}

const spreadVolume = (spread: Spread): string =>
	`${volumeWords(spread.p50)}${spreadRange(spread, volumeWords)}`;
