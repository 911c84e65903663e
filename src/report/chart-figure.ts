import type { ChartOptions } from "../charts/index.ts";
import { htmlElement } from "./html-element.ts";

interface Figure {
	readonly id: string;
	readonly draw: (options: ChartOptions) => SVGSVGElement;
}

/** A chart that scrolls in a region of its own, named for who cannot see it, where the page is narrower. */
export const scrollingFigure = (
	document: Document,
	{ id, draw, label }: Figure & { readonly label: string },
): HTMLElement =>
	htmlElement(
		document,
		"figure",
		{},
		htmlElement(
			document,
			"div",
			{ class: "scroll", role: "region", tabindex: "0", "aria-label": label },
			draw({ idPrefix: `${id}-chart`, styled: false, titled: false }),
		),
	);

/** On a page of 320 px its letters are 10 px high. */
const narrowPx = 328;

/** A chart that is drawn twice, for a wide page and a narrow one, which shows the one or the other; and a caption, if any. */
export function twoWidthFigure(
	document: Document,
	{ id, draw, caption = "" }: Figure & { readonly caption?: string },
): HTMLElement {
	const drawn = (width: "wide" | "narrow"): HTMLElement =>
		htmlElement(
			document,
			"div",
			{ class: width },
			draw({
				idPrefix: `${id}-${width}`,
				styled: false,
				titled: false,
				...(width === "narrow" ? { widthPx: narrowPx } : {}),
			}),
		);
	return htmlElement(
		document,
		"figure",
		{ class: "two-widths" },
		drawn("wide"),
		drawn("narrow"),
		caption === "" ? null : htmlElement(document, "figcaption", {}, caption),
	);
}
