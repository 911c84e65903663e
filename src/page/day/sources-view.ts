import { cautionsSection, dayFacts, sourcesSection } from "../../report/kit/closing-chapter.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { DayResult } from "../../results/index.ts";
import { emptyNote } from "../kit/controls.ts";

/** Where the numbers of the page come from, and what they are not for. */
export function sourcesView(html: HtmlMaker) {
	const element = html("div", { class: "sources-view" });
	return {
		element,
		/** Forgets what was shown. */
		blank(): void {
			const note = emptyNote(html);
			note.hidden = false;
			element.replaceChildren(note);
		},
		show(result: DayResult): void {
			element.replaceChildren(
				html("h2", {}, "What this rests on"),
				cautionsSection(html, result),
				sourcesSection(html, dayFacts(result), result.assumptions),
			);
		},
	};
}
