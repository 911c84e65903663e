import { htmlElement } from "./html-element.ts";

/** A part of the first page of a study, right under its title. */
export function sheetPart(
	document: Document,
	kind: string,
	heading: string,
	...children: readonly (Node | null)[]
): HTMLElement {
	const headingId = `${kind}-heading`;
	return htmlElement(
		document,
		"section",
		{ class: kind, "aria-labelledby": headingId },
		htmlElement(document, "h2", { id: headingId }, heading),
		...children,
	);
}
