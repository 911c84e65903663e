import type { DayResult } from "../analysis/day-result.ts";
import { sparkline } from "../charts/index.ts";
import { alarmAnswer } from "./alarm-answer.ts";
import { canisterAnswer } from "./canister-answer.ts";
import { dressingCautions } from "./caution.ts";
import { answerData, type DressingParts, idOf } from "./dressing-parts.ts";
import { regimenLine } from "./dressing-words.ts";
import { htmlElement, sentenceNodes } from "./html-element.ts";
import type { Sentence } from "./sentence.ts";

/** Several dressings at a glance: each with its regimen, its water line at the height of a row, and its next canister. */
export function overviewSection(
	result: DayResult,
	all: readonly DressingParts[],
	document: Document,
): HTMLElement {
	const { scenario } = result;
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
		const data = answerData(result, parts);
		const words: Sentence = [
			`${regimenLine(parts.summary, scenario, true, parts.day.schedule.takeovers)}. `,
			...canisterAnswer(data),
			" ",
			...alarmAnswer(data),
		];
		return htmlElement(
			document,
			"li",
			{},
			htmlElement(document, "a", { href: `#${id}` }, parts.summary.id),
			chart,
			htmlElement(
				document,
				"div",
				{},
				htmlElement(document, "p", {}, ...sentenceNodes(document, words)),
				...dressingCautions(result, parts.summary.id, document),
			),
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
