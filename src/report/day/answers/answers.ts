import {
	clockTime,
	conditionWords,
	counted,
	durationWords,
	happeningWords,
	numberWord,
	type Piece,
	percentWords,
	plainNumber,
	rangeWords,
	regimenWords,
	type Sentence,
	sentenceInner,
	sentenceStart,
	soundsWords,
	spreadRange,
	strong,
	timeRange,
	volumeWords,
	waits,
} from "../../../words/index.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";
import { canisterAnswer, returnAnswer, solutionAnswer } from "./change-answers.ts";

/** Fewer replications than this, and the ranges are called rough. */
const fewReplications = 50;

/** A few sentences that a reader at the bedside came for, times and volumes strong, each with its range. */
export const answers = (parts: DressingParts): Sentence[] => [
	...howSure(parts),
	canisterAnswer(parts),
	...(parts.hasFill ? [solutionAnswer(parts), returnAnswer(parts)] : []),
	startAnswer(parts),
	...plannedAnswers(parts),
	alarmAnswer(parts),
	offAnswer(parts),
];

function howSure({ result: { scenario }, replications }: DressingParts): Sentence[] {
	if (scenario.chance === "off")
		return [["Chance is off: ", strong("nothing fails by itself and nothing varies"), ", so there are no ranges."]];
	if (replications < 2) return [["One replication only: ", strong("there are no ranges"), ". Run more to see them."]];
	if (replications < fewReplications)
		return [[`Only ${counted(replications, "replication")}: `, strong("the ranges are rough"), "."]];
	return [];
}

/** What hangs on the unit when the day begins: every time and volume of canister and bag counts from it. */
function startAnswer({ dressing, hasFill }: DressingParts): Sentence {
	const { canisterHoldsMl, sourceLeftMl, sourceMl } = dressing;
	const fresh = canisterHoldsMl === 0;
	const full = sourceLeftMl >= sourceMl;
	if (fresh && (full || !hasFill))
		return [`The canister is taken to be empty${hasFill ? " and the bag full" : ""} at the start.`];
	const held = fresh ? "an empty canister" : `${volumeWords(canisterHoldsMl)} in the canister`;
	const left = full ? "a full bag" : `${volumeWords(sourceLeftMl)} left in the bag`;
	return ["The day starts with ", strong(hasFill ? `${held} and ${left}` : held), "."];
}

function offAnswer({ projection }: DressingParts): Sentence {
	const { offSuctionMin } = projection.totals;
	const lead = "Off suction outside fills and dwells: ";
	if (offSuctionMin.p90 < 0.05) return [lead, strong("hardly at all"), "."];
	return [lead, strong(durationWords(offSuctionMin.p50)), `${spreadRange(offSuctionMin, durationWords)}.`];
}

const mostListed = 4;

/** What the scenario itself brings, told as planned and left out of what chance brings. */
const plannedAnswers = (parts: DressingParts): Sentence[] => [...listed(parts), ...takeovers(parts)];

function listed({ happenings, day, clock, varies }: DressingParts): Sentence[] {
	if (happenings.length === 0) return [];
	const named = happenings.slice(0, mostListed).flatMap((happening, i): Piece[] => {
		const sounds = soundsWords(happening, day.schedule, clock);
		const words = `${sentenceInner(happeningWords(happening, clock))}${sounds === "" ? "" : `, ${sounds}`}`;
		return [i === 0 ? "" : "; ", strong(clockTime(happening.atMin, clock)), ` ${words}`];
	});
	const left = happenings.length - mostListed;
	const more = left > 0 ? `; and ${left} more on the clock below` : "";
	const brings = varies && happenings.some(({ what, planned }) => what === "off" || !planned);
	const uncounted = brings ? " Alarms that these bring are not counted as chance." : "";
	return [["From the scenario: ", ...named, `${more}.${uncounted}`]];
}

/** When a later regimen takes over, where that is not at its own time. */
function takeovers({ day, dressing, clock, homeMin }: DressingParts): Sentence[] {
	return day.schedule.takeovers
		.filter(waits)
		.map(({ fromMin, atMin, regimen }) => [
			`Set for ${clockTime(fromMin, clock)}, ${regimenWords(dressing.regimens[regimen])} takes over `,
			strong(`at ${clockTime(atMin, clock)}`),
			`: the cycle that runs at its time is finished first, and is supplied for.${afterHome(atMin, homeMin)}`,
		]);
}

/** Said where it comes only after the patient has left. */
const afterHome = (atMin: number, homeMin: number | null): string =>
	homeMin !== null && atMin > homeMin
		? ` That is ${durationWords(atMin - homeMin)} after going home: bring it forward, or send solution along.`
		: "";

const mostAlarms = 3;

/** Another window is named where it is at least this part of the likeliest one. */
const nextToPeak = 0.5;

/** When chance is likeliest to bring an alarm, and of what; honest words where nothing stands out; the alarms themselves where nothing varies. */
export function alarmAnswer(parts: DressingParts): Sentence {
	const { projection, clock, replications, happenings } = parts;
	if (!parts.varies) return tracedAnswer(parts);
	const [peak, next] = projection.alarms
		.flatMap(({ condition, windows }) => windows.map((window) => ({ ...window, condition })))
		.sort((a, b) => b.peakProbability - a.peakProbability || a.startMin - b.startMin);
	const byChance = happenings.length > 0 ? " by chance" : "";
	if (peak !== undefined) {
		const named = ({ startMin, endMin, condition, peakProbability }: typeof peak): Piece[] => [
			strong(timeRange(startMin, endMin, clock)),
			`: ${conditionWords[condition]}, up to `,
			strong(percentWords(peakProbability)),
			" in a half-hour",
		];
		const isSecond = next !== undefined && next.peakProbability >= nextToPeak * peak.peakProbability;
		const second = isSecond ? ["; then ", ...named(next)] : [];
		return [`An alarm${byChance} is likeliest `, ...named(peak), ...second, "."];
	}
	const [commonest] = projection.alarms.toSorted((a, b) => b.byChance.meanPerDay - a.byChance.meanPerDay);
	if (commonest === undefined || commonest.byChance.meanPerDay === 0)
		return [strong(`No alarm came${byChance}`), ` in any of ${counted(replications, "replication")}.`];
	const { meanPerDay, halfWidth95 } = commonest.byChance;
	return [
		strong(`No time stands out for alarms${byChance}`),
		`: no half-hour passes 5 %. The commonest is ${conditionWords[commonest.condition]}, ${perDay(meanPerDay, halfWidth95)}.`,
	];
}

function tracedAnswer({ day, clock }: DressingParts): Sentence {
	const { alarms } = day;
	if (alarms.length === 0) return [strong("No alarm comes"), "."];
	const named = alarms
		.slice(0, mostAlarms)
		.map((alarm) => `${clockTime(alarm.startMin, clock)} ${conditionWords[alarm.condition]}`);
	const more = alarms.length > mostAlarms ? ` and ${numberWord(alarms.length - mostAlarms)} more` : "";
	const count = alarms.length === 1 ? "One alarm" : `${sentenceStart(numberWord(alarms.length))} alarms`;
	return [strong(count), `: ${named.join(", ")}${more}.`];
}

/** 'about 0.3 in 24 h (between 0.2 and 0.4)'. */
function perDay(mean: number, halfWidth95: number | null): string {
	const number = (value: number): string => plainNumber(value, value < 1 ? 2 : 1);
	if (halfWidth95 === null) return `${number(mean)} in 24 h`;
	return `about ${number(mean)} in 24 h (${rangeWords(Math.max(0, mean - halfWidth95), mean + halfWidth95, number)})`;
}
