import type { SweepResult } from "../analysis/sweep-result.ts";
import { numberWord } from "../charts/index.ts";
import { chapter } from "./chapter.ts";
import { htmlElement } from "./html-element.ts";
import { paragraph } from "./paragraph.ts";
import { countedPoints, pointWords } from "./sweep-words.ts";

const mostNamed = 6;

/** Why points lie outside common practice, each reason once with the regimens it concerns. */
export function outsideSection(
	result: SweepResult,
	document: Document,
): HTMLElement | null {
	const reasons = new Map<string, string[]>();
	for (const point of result.points)
		for (const reason of point.outside)
			reasons.set(reason, [
				...(reasons.get(reason) ?? []),
				pointWords(result.axes, point),
			]);
	if (reasons.size === 0) return null;
	const items = [...reasons].map(([reason, points]) => {
		const more =
			points.length > mostNamed
				? `; and ${numberWord(points.length - mostNamed)} more`
				: "";
		return htmlElement(
			document,
			"li",
			{},
			`${reason} (${countedPoints(result, points.length)}: ${points.slice(0, mostNamed).join("; ")}${more})`,
		);
	});
	return chapter(
		document,
		"outside",
		"Outside common practice",
		paragraph(
			document,
			"These were run all the same, so that the map has no holes. That they are drawn is no advice to use them: check the prescription, the maker's instructions and local policy.",
		),
		htmlElement(document, "ul", { class: "plain" }, ...items),
	);
}
