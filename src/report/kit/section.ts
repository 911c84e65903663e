import type { Sentence } from "../../words/index.ts";
import { type Child, type HtmlMaker, paragraph, sentenceNodes } from "./html-element.ts";

/** A text among them becomes a paragraph. */
type Children = readonly Child[];

/** A part of a report with a heading of its own, under a rule. */
export const chapter = (html: HtmlMaker, id: string, heading: string, ...children: Children): HTMLElement =>
	headed(html, { class: `common ${id}`, id, "aria-labelledby": `${id}-heading` }, "h2", heading, children);

/** A part of the first page of a study, right under its title. */
export const sheetPart = (html: HtmlMaker, kind: string, heading: string, ...children: Children): HTMLElement =>
	headed(html, { class: kind, "aria-labelledby": `${kind}-heading` }, "h2", heading, children);

/** A section named by its heading, and by the heading it stands under, so that those of two dressings differ. */
export function section(
	html: HtmlMaker,
	id: string,
	heading: string,
	under: string | null,
	...children: Children
): HTMLElement {
	const kind = id.split("-").at(-1) ?? id;
	const names = under === null ? `${id}-heading` : `${id}-heading ${under}`;
	return headed(html, { class: kind, "aria-labelledby": names }, "h3", heading, children);
}

function headed(
	html: HtmlMaker,
	attributes: { readonly class: string; readonly id?: string; readonly "aria-labelledby": string },
	level: "h2" | "h3",
	heading: string,
	children: Children,
): HTMLElement {
	const [id = ""] = attributes["aria-labelledby"].split(" ");
	const parts = children.map((child) => (typeof child === "string" ? paragraph(html, child) : child));
	return html("section", attributes, html(level, { id }, heading), ...parts);
}

/** What is folded away under a line. */
export const details = (html: HtmlMaker, summary: string, ...children: readonly Child[]): HTMLElement =>
	html("details", {}, html("summary", {}, summary), ...children);

/** Texts or elements as a list whose items are not far apart. */
export const plainList = (html: HtmlMaker, items: readonly Child[]): HTMLElement =>
	html("ul", { class: "plain" }, ...items.map((item) => html("li", {}, item)));

/** The answers of a report. */
export const sentenceList = (html: HtmlMaker, sentences: readonly Sentence[]): HTMLElement =>
	html("ul", {}, ...sentences.map((sentence) => html("li", {}, ...sentenceNodes(html, sentence))));

/** Lines to be filled in by hand; on paper only. */
export const handwritten = (html: HtmlMaker, ...lines: readonly (readonly string[])[]): HTMLElement =>
	html(
		"div",
		{ class: "paper-only" },
		...lines.map((places) => html("div", { class: "sign" }, ...places.map((place) => html("span", {}, place)))),
	);
