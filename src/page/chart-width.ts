/** Narrower than this a chart of a day is not read any more: it scrolls in its region, px of its grid. */
const leastChartPx = 600;

/** Width of a chart's grid in a place, so that its letters are as large as those around it. */
export function chartWidth(place: HTMLElement, leastPx = leastChartPx): number {
	const root = place.ownerDocument.documentElement;
	const letterPx = Number.parseFloat(getComputedStyle(root).fontSize);
	const scale = Number.isFinite(letterPx) ? letterPx / 16 : 1;
	return Math.max(leastPx, Math.round(place.clientWidth / scale));
}
