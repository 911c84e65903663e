import { htmlElement } from "./html-element.ts";

/** A section named by its heading, and by the heading it stands under, so that those of two dressings differ. */
export function section(
	document: Document,
	id: string,
	heading: string,
	under: string | null,
	...children: readonly (Node | null)[]
): HTMLElement {
	const headingId = `${id}-heading`;
	const kind = id.split("-").at(-1) ?? id;
	return htmlElement(
		document,
		"section",
		{
			class: kind,
			"aria-labelledby": under === null ? headingId : `${headingId} ${under}`,
		},
		htmlElement(document, "h3", { id: headingId }, heading),
		...children,
	);
}
