import { legalText, type Sentence } from "../../words/index.ts";

export type Child = Node | string | null;

export type Attributes = { readonly [name: string]: string };

type ElementMaker = <N extends keyof HTMLElementTagNameMap>(
	name: N,
	attributes?: Attributes,
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
		for (const child of children)
			if (child !== null) element.append(typeof child === "string" ? legalText(child) : child);
		return element;
	};
	return Object.assign(make, { document });
}

/** A sentence as nodes, its strong pieces in <strong>; a number and its unit stay on one line. */
export const sentenceNodes = (html: HtmlMaker, sentence: Sentence): Node[] =>
	sentence.map((piece) => {
		if (typeof piece !== "string") return html("strong", {}, unbroken(piece.strong));
		return html.document.createTextNode(unbroken(legalText(piece)));
	});

/** A paragraph of plain text; a number and its unit stay on one line. */
const paragraph = (html: HtmlMaker, text: string): HTMLElement => html("p", {}, unbroken(text));

/** The text with no line break between a number and its unit. */
export const unbroken = (text: string): string => text.replace(/(\d) (mL|L|min|h|d|s|%|mmHg)(?![a-z])/g, "$1\u00A0$2");

/** A text among them becomes a paragraph. */
type Children = readonly Child[];

/** A part of a report with a heading of its own, under a rule. */
export const chapter = (html: HtmlMaker, id: string, heading: string, ...children: Children): HTMLElement =>
	headed(html, { class: `common ${id}`, id, "aria-labelledby": `${id}-heading` }, "h2", heading, children);

export const sheetPart = (html: HtmlMaker, kind: string, heading: string, ...children: Children): HTMLElement =>
	headed(html, { class: kind, "aria-labelledby": `${kind}-heading` }, "h2", heading, children);

/** A section named by its heading, and by the heading it stands under, so that those of two dressings differ. */
export function section(html: HtmlMaker, id: string, heading: string, under: string | null, ...children: Children) {
	const kind = id.split("-").at(-1) ?? id;
	const names = under === null ? `${id}-heading` : `${id}-heading ${under}`;
	return headed(html, { class: kind, "aria-labelledby": names }, "h3", heading, children);
}

type Headed = { readonly class: string; readonly id?: string; readonly "aria-labelledby": string };

function headed(html: HtmlMaker, attributes: Headed, level: "h2" | "h3", heading: string, children: Children) {
	const [id = ""] = attributes["aria-labelledby"].split(" ");
	const parts = children.map((child) => (typeof child === "string" ? paragraph(html, child) : child));
	return html("section", attributes, html(level, { id }, heading), ...parts);
}

export const details = (html: HtmlMaker, summary: string, ...children: readonly Child[]): HTMLElement =>
	html("details", {}, html("summary", {}, summary), ...children);

/** Texts or elements as a list whose items are not far apart. */
export const plainList = (html: HtmlMaker, items: readonly Child[]): HTMLElement =>
	html("ul", { class: "plain" }, ...items.map((item) => html("li", {}, item)));

export const sentenceList = (html: HtmlMaker, sentences: readonly Sentence[]): HTMLElement =>
	html("ul", {}, ...sentences.map((sentence) => html("li", {}, ...sentenceNodes(html, sentence))));

/** Lines to be filled in by hand; on paper only. */
export function handwritten(html: HtmlMaker, ...lines: readonly (readonly string[])[]): HTMLElement {
	const line = (places: readonly string[]) => places.map((place) => html("span", {}, place));
	return html("div", { class: "paper-only" }, ...lines.map((one) => html("div", { class: "sign" }, ...line(one))));
}
