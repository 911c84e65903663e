import { htmlElement } from "./html-element.ts";

/** A part of a report with a heading of its own, under a rule. */
export function chapter(
	document: Document,
	id: string,
	heading: string,
	...children: readonly (Node | null)[]
): HTMLElement {
	const headingId = `${id}-heading`;
	return htmlElement(
		document,
		"section",
		{ class: `common ${id}`, id, "aria-labelledby": headingId },
		htmlElement(document, "h2", { id: headingId }, heading),
		...children,
	);
}
