import { cautionSentences } from "./caution.ts";
import { htmlElement } from "./html-element.ts";

const policy = "default-src 'none'; style-src 'unsafe-inline'";

/** A report as one file: no script, no outside request; the document only lends its elements. The cautions stand at its foot. */
export function htmlPage(
	document: Document,
	page: {
		/** What a browser's tab says. */
		readonly title: string;
		readonly style: string;
		readonly bodyClass: string;
		/** What a reader with a keyboard skips to. */
		readonly skipTo: string;
		readonly header: HTMLElement;
		readonly main: readonly (HTMLElement | null)[];
	},
): string {
	const element = htmlElement.bind(null, document);
	const meta = (attributes: { readonly [name: string]: string }) =>
		htmlElement(document, "meta", attributes);
	const root = htmlElement(
		document,
		"html",
		{ lang: "en" },
		element(
			"head",
			{},
			meta({ charset: "utf-8" }),
			meta({ "http-equiv": "Content-Security-Policy", content: policy }),
			meta({
				name: "viewport",
				content: "width=device-width, initial-scale=1",
			}),
			meta({ name: "color-scheme", content: "light dark" }),
			element("title", {}, page.title),
			element("style", {}, page.style),
		),
		element(
			"body",
			{ class: page.bodyClass },
			element(
				"a",
				{ class: "skip", href: "#main" },
				`Skip to the ${page.skipTo}`,
			),
			page.header,
			element("main", { id: "main" }, ...page.main),
			element(
				"footer",
				{},
				...cautionSentences.map((sentence) => element("p", {}, sentence)),
			),
		),
	);
	return `<!DOCTYPE html>\n${root.outerHTML}\n`;
}
