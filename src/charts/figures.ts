import { plainNumber } from "./quantity.ts";

/** Digits after the point that show three figures of the largest of some numbers: 0 from 100, 1 from 10, 2 from 1 … 6 at most. */
export function threeFigures(values: readonly number[]): number {
	const most = values.reduce(
		(largest, value) =>
			Number.isFinite(value) ? Math.max(largest, Math.abs(value)) : largest,
		0,
	);
	if (most === 0) return 0;
	return Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(most))));
}

/** '11.2 mL', '11.2' where it has no unit; what is no number is 'none'. */
export function figureWords(
	value: number,
	decimals: number,
	unit: string,
): string {
	if (!Number.isFinite(value)) return "none";
	const number = plainNumber(value, decimals);
	return unit === "" ? number : `${number} ${unit}`;
}

/** 'Washes, a day': a measure with its unit, as a heading. */
export const measureHeading = (label: string, unit: string): string =>
	unit === "" ? label : `${label}, ${unit}`;
