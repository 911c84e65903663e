import { JSDOM } from "jsdom";

/** A document to draw in. */
export const { document } = new JSDOM("").window;

export const options = { idPrefix: "example" };

/** Every text that stands in a chart. */
export const textsOf = (chart: SVGSVGElement): string[] =>
	[...chart.querySelectorAll("text")].map((text) => text.textContent ?? "");

/** Title and description that a screen reader would read. */
export const wordsOf = (chart: SVGSVGElement): string =>
	(chart.getAttribute("aria-labelledby") ?? "")
		.split(" ")
		.map((id) => chart.querySelector(`#${id}`)?.textContent ?? "")
		.join(". ");
