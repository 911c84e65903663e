import { bothMeans } from "../charts/index.ts";
import type { CompareResult, DayResult, SupplyResult, SweepResult } from "../results/index.ts";
import { cautionInALine } from "../vocabulary/index.ts";
import { type Sentence, strong } from "../words/index.ts";
import { mainRows } from "./compare/pairs/difference-rows.ts";
import { pairsOf } from "./compare/pairs/pairs.ts";
import { questionOf } from "./compare/regimen-words.ts";
import { answers } from "./day/answers/answers.ts";
import { dressingParts } from "./day/dressing/dressing-parts.ts";
import { bedsideCautions, ofDressings } from "./kit/closing-chapter.ts";
import { supplyAnswers } from "./supply/answers.ts";
import { sweepAnswers } from "./sweep/answers.ts";
import { sweepQuestion } from "./sweep/sweep-words.ts";

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
			heading: all.length > 1 ? parts.heading : null,
			sentences: answers(parts),
			cautions: parts.cautions,
		})),
		cautions: bedsideCautions,
	};
}

/** What the first two regimens of a comparison differ in most. */
export function spokenComparison(result: CompareResult): Spoken {
	const parts = pairsOf(result)
		.slice(0, 1)
		.map((pair) => {
			const { title: heading, rows, caption } = mainRows(pair);
			const said = rows.map((row) => [`${bothMeans(row, pair.a, pair.b)}; `, strong(row.verdict), "."]);
			return { heading, sentences: [...said, [caption]], cautions: ofDressings(result) };
		});
	return { title: questionOf(result), parts, cautions: bedsideCautions };
}

export const spokenSweep = (result: SweepResult): Spoken => ({
	title: sweepQuestion(result),
	parts: [{ heading: null, sentences: sweepAnswers(result), cautions: ofDressings(result) }],
	cautions: bedsideCautions,
});

export const spokenSupply = (result: SupplyResult): Spoken => ({
	title: result.scenario.title,
	parts: [{ heading: null, sentences: supplyAnswers(result), cautions: [] }],
	cautions: [cautionInALine],
});
