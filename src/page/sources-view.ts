import type { DayResult } from "../analysis/index.ts";
import {
	cautionsSection,
	dayFacts,
	sourcesSection,
} from "../report/common-sections.ts";
import { htmlElement } from "../report/html-element.ts";
import { emptyNote } from "./empty-note.ts";

/** Where the numbers of the page come from, and what they are not for. */
export class SourcesView {
	readonly element: HTMLElement;
	readonly #document: Document;

	constructor(document: Document) {
		this.#document = document;
		this.element = htmlElement(document, "div", { class: "sources-view" });
	}

	/** Forgets what was shown. */
	blank(): void {
		const note = emptyNote(this.#document);
		note.hidden = false;
		this.element.replaceChildren(note);
	}

	show(result: DayResult): void {
		this.element.replaceChildren(
			htmlElement(this.#document, "h2", {}, "What this rests on"),
			cautionsSection(result, this.#document),
			sourcesSection(dayFacts(result), result.assumptions, this.#document),
		);
	}
}
