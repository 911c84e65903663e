import type { DayResult } from "../analysis/day-result.ts";
import { sparkline } from "../charts/index.ts";
import { answers } from "./answers.ts";
import { regimenLine } from "./dressing-words.ts";
import { htmlElement, sentenceNodes } from "./html-element.ts";
import { type Sentence, sentenceText } from "./sentence.ts";
import { type DressingParts, idOf } from "./sheet-section.ts";

/** Several dressings at a glance: each with its regimen, its water line at the height of a row, and its next canister. */
export function overviewSection(
	result: DayResult,
	all: readonly DressingParts[],
	document: Document,
): HTMLElement {
	const { scenario, projection } = result;
	const items = all.map((parts) => {
		const id = idOf(parts);
		const chart = sparkline(
			{ day: parts.day, horizonMin: scenario.horizonMin },
			document,
			{
				idPrefix: `${id}-spark`,
				styled: false,
			},
		);
		const sentences = answers({
			clock: scenario,
			chance: scenario.chance,
			dressing: parts.summary,
			projection: parts.projection,
			replications: projection.replications,
		});
		const canister = sentences.find((sentence) =>
			sentenceText(sentence).startsWith("Canister"),
		);
		const alarm = sentences.find((sentence) =>
			/alarm/i.test(sentenceText(sentence)),
		);
		const words: Sentence = [
			`${regimenLine(parts.summary, scenario)}. `,
			...(canister ?? []),
			" ",
			...(alarm ?? []),
		];
		return htmlElement(
			document,
			"li",
			{},
			htmlElement(document, "a", { href: `#${id}` }, parts.summary.id),
			chart,
			htmlElement(document, "span", {}, ...sentenceNodes(document, words)),
		);
	});
	return htmlElement(
		document,
		"nav",
		{ class: "overview", "aria-labelledby": "overview-heading" },
		htmlElement(
			document,
			"h2",
			{ id: "overview-heading" },
			`${all.length} dressings`,
		),
		htmlElement(document, "ul", {}, ...items),
	);
}
