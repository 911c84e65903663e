import { htmlElement } from "../report/html-element.ts";

/** Stands where nothing can be shown of what lies on the bench. */
export function emptyNote(document: Document): HTMLElement {
	const note = htmlElement(
		document,
		"p",
		{ class: "caution" },
		"Nothing is shown of this scenario: it has problems, which stand beside it. Mend them, or undo.",
	);
	note.hidden = true;
	return note;
}
