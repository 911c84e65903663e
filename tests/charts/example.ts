import { JSDOM } from "jsdom";
import type { ChartOptions } from "../../src/charts/index.ts";

/** A tiny example of a chart: its SVG is a snapshot, and it stands in the gallery. */
export interface Example {
	readonly name: string;
	readonly draw: (document: Document, options: ChartOptions) => SVGSVGElement;
	/** Width at which it is drawn for a narrow page, where it has a layout for that. */
	readonly narrowPx?: number;
}

/** Examples of one chart, each with its name. */
export const examplesOf = <D>(
	chart: (data: D, document: Document, options: ChartOptions) => SVGSVGElement,
	data: { readonly [name: string]: D },
	more: Pick<Example, "narrowPx"> = {},
): Example[] =>
	Object.entries(data).map(([name, one]) => ({
		name,
		draw: (document, options) => chart(one, document, options),
		...more,
	}));

/** All charts of a comparison have a layout for narrow pages. */
export const onNarrowPages = { narrowPx: 360 };

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

/** Words that would be markup if they were not text. */
export const hostile = `<script>alert(1)</script> & "quotes" ]]>`;

/** Names of two regimens. */
export const names = { a: "short", b: "long" };

/** Washes a day of a regimen, when nothing goes wrong. */
export const washes = (dwellMin: number, periodMin: number): number => 1440 / (dwellMin + periodMin + 1);

export const dwellMin = [1, 5, 10, 15, 20];
export const periodMin = [60, 120, 210, 360];
