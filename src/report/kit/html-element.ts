import { legalText, type Sentence } from "../../words/index.ts";

export type Child = Node | string | null;

type ElementMaker = <N extends keyof HTMLElementTagNameMap>(
	name: N,
	attributes?: { readonly [name: string]: string },
	...children: readonly Child[]
) => HTMLElementTagNameMap[N];

/** Makes the elements of one document: `html("p", { class: "facts" }, "…")`; charts draw into `html.document`. */
export interface HtmlMaker extends ElementMaker {
	readonly document: Document;
}

/** The maker of a document's elements; strings become text, never markup. */
export function htmlMaker(document: Document): HtmlMaker {
	const make: ElementMaker = (name, attributes = {}, ...children) => {
		const element = document.createElement(name);
		for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, legalText(value));
		for (const child of children) {
			if (child === null) continue;
			element.append(typeof child === "string" ? document.createTextNode(legalText(child)) : child);
		}
		return element;
	};
	return Object.assign(make, { document });
}

/** A sentence as nodes, its strong pieces in <strong>; a number and its unit stay on one line. */
export const sentenceNodes = (html: HtmlMaker, sentence: Sentence): Node[] =>
	sentence.map((piece) =>
		typeof piece === "string"
			? html.document.createTextNode(unbroken(legalText(piece)))
			: html("strong", {}, unbroken(piece.strong)),
	);

/** A paragraph of plain text; a number and its unit stay on one line. */
export const paragraph = (html: HtmlMaker, text: string): HTMLElement => html("p", {}, unbroken(text));

/** The text with no line break between a number and its unit. */
export const unbroken = (text: string): string => text.replace(/(\d) (mL|L|min|h|d|s|%|mmHg)(?![a-z])/g, "$1\u00A0$2");
