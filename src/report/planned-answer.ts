import { clockTime, durationWords, regimenWords } from "../charts/index.ts";
import { type AnswerData, varies } from "./answer-data.ts";
import { waits } from "./dressing-words.ts";
import { happeningWords, soundsWords } from "./happening-words.ts";
import { type Piece, type Sentence, strong } from "./sentence.ts";

const mostNamed = 4;

/** What the scenario itself brings, told as planned and left out of what chance brings. */
export function plannedAnswers(data: AnswerData): Sentence[] {
	return [...happenings(data), ...takeovers(data)];
}

function happenings({
	happenings,
	day,
	clock,
	chance,
	replications,
}: AnswerData): Sentence[] {
	if (happenings.length === 0) return [];
	const named = happenings.slice(0, mostNamed).flatMap((happening, i) => {
		const sounds = soundsWords(happening, day.schedule, clock);
		const pieces: Piece[] = [
			i === 0 ? "" : "; ",
			strong(clockTime(happening.atMin, clock)),
			` ${inSentence(happeningWords(happening, clock))}${sounds === "" ? "" : `, ${sounds}`}`,
		];
		return pieces;
	});
	const left = happenings.length - mostNamed;
	const more = left > 0 ? `; and ${left} more on the clock below` : "";
	return [
		[
			"From the scenario: ",
			...named,
			`${more}.${varies({ chance, replications }) && happenings.some(({ what, planned }) => what === "off" || !planned) ? " Alarms that these bring are not counted as chance." : ""}`,
		],
	];
}

const inSentence = (text: string): string =>
	`${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** When a later regimen takes over, where that is not at its own time. */
function takeovers({ day, dressing, clock, homeMin }: AnswerData): Sentence[] {
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
