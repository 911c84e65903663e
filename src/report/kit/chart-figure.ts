import { type ChartOptions, svgElement } from "../../charts/index.ts";
import { legalText } from "../../words/index.ts";
import type { HtmlMaker } from "./html-element.ts";

/** A chart that scrolls in a region of its own, named for who cannot see it, where the page is narrower; and a caption, if any. */
export function chartFigure(html: HtmlMaker, chart: SVGSVGElement, label: string, caption?: string): HTMLElement {
	const region = html("div", { class: "scroll", role: "region", tabindex: "0", "aria-label": label }, chart);
	return html("figure", {}, region, caption === undefined ? null : html("figcaption", {}, caption));
}

/** How a chart is drawn into a page, which styles and names it. */
export const onPage = (idPrefix: string): ChartOptions => ({ idPrefix, styled: false, titled: false });

/** A chart of the house. */
type Draw<Data> = (data: Data, document: Document, options: ChartOptions) => SVGSVGElement;

/** On a page of 320 px its letters are 10 px high. */
const narrowPx = 328;

/** A chart that is drawn twice, for a wide page and a narrow one, which shows the one or the other; and a caption, if any. */
export function twoWidthFigure<Data>(html: HtmlMaker, id: string, draw: Draw<Data>, data: Data, caption = "") {
	const drawn = (options: ChartOptions) => draw(data, html.document, options);
	return html(
		"figure",
		{ class: "two-widths" },
		html("div", { class: "wide" }, drawn(onPage(`${id}-wide`))),
		html("div", { class: "narrow" }, drawn({ ...onPage(`${id}-narrow`), widthPx: narrowPx })),
		caption === "" ? null : html("figcaption", {}, caption),
	);
}

const svgNamespace = "http://www.w3.org/2000/svg";

/** A chart as a file that opens by itself. */
export function svgFile(root: SVGSVGElement, document: Document): string {
	// It has no page behind it: paper in the colour of the theme.
	const paper = svgElement(document, "rect", { class: "paper", width: "100%", height: "100%" });
	const behind = [...root.children].find((child) => !["title", "desc", "style"].includes(child.localName));
	root.insertBefore(paper, behind ?? null);
	// An XML document writes its elements as XML, namespaces and empty tags included.
	const file = document.implementation.createDocument(svgNamespace, "svg");
	file.documentElement.replaceWith(file.adoptNode(root));
	return `<?xml version="1.0" encoding="UTF-8"?>\n${legalText(file.documentElement.outerHTML)}\n`;
}
