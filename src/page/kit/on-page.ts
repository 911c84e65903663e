import type { ChartOptions } from "../../charts/index.ts";

/** Narrower than this a chart of a day is not read any more: it scrolls in its region, px of its grid. */
const leastChartPx = 600;

/** Width of a chart's grid in a place, so that its letters are as large as those around it. */
export function chartWidth(place: HTMLElement, leastPx = leastChartPx): number {
	const root = place.ownerDocument.documentElement;
	const letterPx = Number.parseFloat(getComputedStyle(root).fontSize);
	const scale = Number.isFinite(letterPx) ? letterPx / 16 : 1;
	return Math.max(leastPx, Math.round(place.clientWidth / scale));
}

/** How a chart is drawn in a place: in the page's style, and named by the words around it. */
export const onPage = (place: HTMLElement, idPrefix: string, leastPx?: number): ChartOptions => ({
	idPrefix,
	styled: false,
	titled: false,
	widthPx: chartWidth(place, leastPx),
});
