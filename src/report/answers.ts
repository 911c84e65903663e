import { counted, durationWords } from "../charts/index.ts";
import { alarmAnswer } from "./alarm-answer.ts";
import type { AnswerData } from "./answer-data.ts";
import { canisterAnswer } from "./canister-answer.ts";
import { plannedAnswers } from "./planned-answer.ts";
import { type Sentence, strong } from "./sentence.ts";
import { returnAnswer, solutionAnswer } from "./solution-answer.ts";
import { spreadRange } from "./spread-words.ts";
import { startAnswer } from "./start-answer.ts";

/** Fewer replications than this, and the ranges are called rough. */
const fewReplications = 50;

/** A few sentences that a reader at the bedside came for, times and volumes strong, each with its range. */
export function answers(data: AnswerData): Sentence[] {
	const hasFill = data.dressing.regimens.some((regimen) => regimen.fillMl > 0);
	return [
		...howSure(data),
		canisterAnswer(data),
		...(hasFill ? [solutionAnswer(data), returnAnswer(data)] : []),
		startAnswer(data.dressing),
		...plannedAnswers(data),
		alarmAnswer(data),
		offAnswer(data),
	];
}

/** Said first where the ranges mean little. */
function howSure({ chance, replications }: AnswerData): Sentence[] {
	if (chance === "off")
		return [
			[
				"Chance is off: ",
				strong("nothing fails by itself and nothing varies"),
				", so there are no ranges.",
			],
		];
	if (replications < 2)
		return [
			[
				"One replication only: ",
				strong("there are no ranges"),
				". Run more to see them.",
			],
		];
	if (replications < fewReplications)
		return [
			[
				`Only ${counted(replications, "replication")}: `,
				strong("the ranges are rough"),
				".",
			],
		];
	return [];
}

function offAnswer({ projection }: AnswerData): Sentence {
	const { offSuctionMin } = projection.totals;
	const lead = "Off suction outside fills and dwells: ";
	if (offSuctionMin.p90 < 0.05) return [lead, strong("hardly at all"), "."];
	return [
		lead,
		strong(durationWords(offSuctionMin.p50)),
		`${spreadRange(offSuctionMin, durationWords)}.`,
	];
}
