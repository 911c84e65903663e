import { htmlElement } from "../report/html-element.ts";

/** A button with words on it. */
export function pressed(
	document: Document,
	words: string,
	press: () => void,
	attributes: { readonly [name: string]: string } = {},
): HTMLButtonElement {
	const button = htmlElement(
		document,
		"button",
		{ type: "button", ...attributes },
		words,
	);
	button.addEventListener("click", press);
	return button;
}
