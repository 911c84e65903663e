import { type ScaleLinear, scaleLinear } from "d3-scale";

const leads = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/** The least of 1, 1.5, 2, 3, 4, 5, 6, 8 times a power of ten that is no less than a value; 1 for nought. */
export function niceAbove(value: number): number {
	if (!(value > 0)) return 1;
	const power = 10 ** Math.floor(Math.log10(value));
	const lead = leads.find((one) => one * power >= value * (1 - 1e-9)) ?? 10;
	// Through its decimal text, so that 3 times 0.1 is 0.3.
	return Number((lead * power).toPrecision(3));
}

/** A scale with zero in the middle that holds all of some values. */
export function centredScale(
	values: readonly number[],
	leftPx: number,
	rightPx: number,
): { readonly x: ScaleLinear<number, number>; readonly most: number } {
	const largest = values.reduce(
		(most, value) => Math.max(most, Math.abs(value)),
		0,
	);
	// What differs by rounding alone is no difference.
	const most = niceAbove(largest < 1e-9 ? 0 : largest);
	return { x: scaleLinear([-most, most], [leftPx, rightPx]), most };
}
