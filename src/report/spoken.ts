import type { CompareResult } from "../analysis/compare-result.ts";
import type { Caution, DayResult } from "../analysis/day-result.ts";
import type { SupplyResult } from "../analysis/supply-result.ts";
import type { SweepResult } from "../analysis/sweep-result.ts";
import { bothMeans } from "../charts/index.ts";
import { answers } from "./answers.ts";
import { cautionInALine, cautionSentences, cautionWords } from "./caution.ts";
import { pairsOf } from "./compare-parts.ts";
import { questionOf } from "./compare-question.ts";
import { answerData, dressingParts, headingWords } from "./dressing-parts.ts";
import { mainRows } from "./main-rows.ts";
import { type Sentence, strong } from "./sentence.ts";
import { supplyAnswers } from "./supply-answers.ts";
import { sweepAnswers } from "./sweep-answers.ts";
import { sweepQuestion } from "./sweep-question.ts";

/** What a report answers, for whoever reads it without one: the sentences of its first page, and nothing drawn. */
export interface Spoken {
	/** What it is about, or the question that it answers. */
	readonly title: string;
	readonly parts: readonly SpokenPart[];
	/** What is said of all of it, last. */
	readonly cautions: readonly string[];
}

export interface SpokenPart {
	/** Null where there is only one thing to speak of. */
	readonly heading: string | null;
	readonly sentences: readonly Sentence[];
	readonly cautions: readonly string[];
}

/** The answers of a day, a part a dressing, each with the cautions that concern it. */
export function spokenDay(result: DayResult): Spoken {
	const all = dressingParts(result);
	return {
		title: result.scenario.title,
		parts: all.map((parts) => ({
			heading: all.length > 1 ? headingWords(parts) : null,
			sentences: answers(answerData(result, parts)),
			cautions: result.cautions
				.filter(({ dressing }) => dressing === parts.summary.id)
				.map(({ text }) => text),
		})),
		cautions: bedside,
	};
}

/** What the first two regimens of a comparison differ in most. */
export function spokenComparison(result: CompareResult): Spoken {
	const [pair] = pairsOf(result);
	const parts: SpokenPart[] = [];
	if (pair !== undefined) {
		const { heading, rows, caption } = mainRows(result, pair);
		parts.push({
			heading,
			sentences: [
				...rows.map((row) => [
					`${bothMeans(row, pair.a, pair.b)}; `,
					strong(row.verdict),
					".",
				]),
				[caption],
			],
			cautions: ofDressings(result.cautions),
		});
	}
	return { title: questionOf(result), parts, cautions: bedside };
}

export const spokenSweep = (result: SweepResult): Spoken => ({
	title: sweepQuestion(result),
	parts: [
		{
			heading: null,
			sentences: sweepAnswers(result),
			cautions: ofDressings(result.cautions),
		},
	],
	cautions: bedside,
});

export const spokenSupply = (result: SupplyResult): Spoken => ({
	title: result.scenario.title,
	parts: [{ heading: null, sentences: supplyAnswers(result), cautions: [] }],
	cautions: [cautionInALine],
});

/** What stands under the title of every report that may be read at a bedside. */
const bedside = cautionSentences.slice(0, 2);

const ofDressings = (cautions: readonly Caution[]): string[] =>
	cautions
		.filter(({ dressing }) => dressing !== undefined)
		.map((caution) => cautionWords(caution));
