import {
	clockTime,
	counted,
	durationWords,
	happeningWords,
	type Piece,
	regimenWords,
	type Sentence,
	soundsWords,
	spreadRange,
	strong,
	volumeWords,
	waits,
} from "../../../words/index.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";
import { alarmAnswer } from "./alarm-answer.ts";
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

/** Said first where the ranges mean little. */
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

const mostNamed = 4;

/** What the scenario itself brings, told as planned and left out of what chance brings. */
const plannedAnswers = (parts: DressingParts): Sentence[] => [...listed(parts), ...takeovers(parts)];

const inSentence = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

function listed({ happenings, day, clock, varies }: DressingParts): Sentence[] {
	if (happenings.length === 0) return [];
	const named = happenings.slice(0, mostNamed).flatMap((happening, i): Piece[] => {
		const sounds = soundsWords(happening, day.schedule, clock);
		const words = `${inSentence(happeningWords(happening, clock))}${sounds === "" ? "" : `, ${sounds}`}`;
		return [i === 0 ? "" : "; ", strong(clockTime(happening.atMin, clock)), ` ${words}`];
	});
	const left = happenings.length - mostNamed;
	const more = left > 0 ? `; and ${left} more on the clock below` : "";
	const brings = varies && happenings.some(({ what, planned }) => what === "off" || !planned);
	const uncounted = brings ? " Alarms that these bring are not counted as chance." : "";
	return [["From the scenario: ", ...named, `${more}.${uncounted}`]];
}

/** When a later regimen takes over, where that is not at its own time. */
function takeovers({ day, dressing, clock, homeMin }: DressingParts): Sentence[] {
	return day.schedule.takeovers.flatMap((takeover) => {
		const { fromMin, atMin } = takeover;
		const next = dressing.regimens[takeover.regimen];
		if (next === undefined || !waits(takeover)) return [];
		return [
			[
				`Set for ${clockTime(fromMin, clock)}, ${regimenWords(next)} takes over `,
				strong(`at ${clockTime(atMin, clock)}`),
				`: the cycle that runs at its time is finished first, and is supplied for.${afterHome(atMin, homeMin)}`,
			],
		];
	});
}

/** Said where it comes only after the patient has left. */
const afterHome = (atMin: number, homeMin: number | null): string =>
	homeMin !== null && atMin > homeMin
		? ` That is ${durationWords(atMin - homeMin)} after going home: bring it forward, or send solution along.`
		: "";
