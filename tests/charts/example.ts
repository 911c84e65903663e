import type { ChartOptions } from "../../src/charts/index.ts";

/** A tiny example of a chart: its SVG is a snapshot, and it stands in the gallery. */
export interface Example {
	readonly name: string;
	readonly draw: (document: Document, options: ChartOptions) => SVGSVGElement;
	/** Width at which it is drawn for a narrow page, where it has a layout for that. */
	readonly narrowPx?: number;
}

/** Words that would be markup if they were not text. */
export const hostile = `<script>alert(1)</script> & "quotes" ]]>`;

/** Names of two regimens. */
export const names = { a: "short", b: "long" };

/** Washes a day of a regimen, when nothing goes wrong. */
export const washes = (dwellMin: number, periodMin: number): number =>
	1440 / (dwellMin + periodMin + 1);

export const dwellMin = [1, 5, 10, 15, 20];
export const periodMin = [60, 120, 210, 360];
