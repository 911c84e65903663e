import type { Debrief } from "../rehearsal/index.ts";
import { cautionSentences } from "../report/caution.ts";
import { wrapped } from "./wrapped.ts";

/** The debrief for a terminal, in lines of `columns`: the day in sentences, what was not needed, the orderly search, the cautions. */
export function debriefWords(debrief: Debrief, columns?: number): string {
	const needless = debrief.log
		.filter((entry) => entry.needless !== "")
		.map(
			({ span, kind, what, needless }) =>
				`${span}  ${kind} ${what}: ${needless}.`,
		);
	const believed = debrief.log
		.filter((entry) => entry.believed !== "")
		.map(({ span, what, believed }) => `${span}  ${what}: ${believed}.`);
	const parts: [string, readonly string[]][] = [
		["DEBRIEF", debrief.facts],
		["Not needed, or out of order", needless],
		["What could be believed after each look", believed],
		[
			"An orderly search, cheapest and likeliest first",
			debrief.search.sentences,
		],
		["What is said of likelihood", [debrief.search.note]],
		["", cautionSentences],
	];
	return parts
		.filter(([, sentences]) => sentences.length > 0)
		.map(
			([heading, sentences]) =>
				`\n${heading === "" ? "" : `${heading}\n`}${sentences.map((sentence) => wrapped(sentence, "  ", columns)).join("")}`,
		)
		.join("");
}
