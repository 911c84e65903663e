import { cautionInALine, cautionSentences } from "../../vocabulary/index.ts";
import type { HtmlMaker } from "./html-element.ts";

const policy = "default-src 'none'; style-src 'unsafe-inline'";

/** A report as one file: no script, no outside request; the document only lends its elements. The cautions stand at its foot. */
export function htmlPage(
	html: HtmlMaker,
	page: {
		/** What a browser's tab says. */
		readonly title: string;
		readonly style: string;
		readonly bodyClass: string;
		/** What a reader with a keyboard skips to. */
		readonly skipTo: string;
		/** What the report begins with: its title, how it was made, and a caution. */
		readonly heading: string;
		readonly facts: readonly string[];
		readonly caution?: string;
		readonly main: readonly (HTMLElement | null)[];
	},
): string {
	const head = [
		html("meta", { charset: "utf-8" }),
		html("meta", { "http-equiv": "Content-Security-Policy", content: policy }),
		html("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
		html("meta", { name: "color-scheme", content: "light dark" }),
		html("title", {}, page.title),
		html("style", {}, page.style),
	];
	const facts = page.facts.map((fact) => html("p", { class: "facts" }, fact));
	const caution = html("p", { class: "caution" }, page.caution ?? cautionInALine);
	const body = [
		html("a", { class: "skip", href: "#main" }, `Skip to the ${page.skipTo}`),
		html("header", {}, html("h1", {}, page.heading), ...facts, caution),
		html("main", { id: "main" }, ...page.main),
		html("footer", {}, ...cautionSentences.map((sentence) => html("p", {}, sentence))),
	];
	const root = html(
		"html",
		{ lang: "en" },
		html("head", {}, ...head),
		html("body", { class: page.bodyClass }, ...body),
	);
	return `<!DOCTYPE html>\n${root.outerHTML}\n`;
}
