import { figureWords, threeFigures } from "./figures.ts";
import type {
	ResponseCurveData,
	ResponseCurvePanel,
} from "./response-curve.ts";

/** A value of the variable, as the axis writes it. */
export const valueWords = (data: ResponseCurveData, value: number): string =>
	data.x.words === undefined
		? figureWords(value, threeFigures([value]), data.x.unit)
		: data.x.words(value);

/** Title, how to read, and what a reader would see in the curves. */
export function responseWords(data: ResponseCurveData): {
	readonly title: string;
	readonly legend: string;
	readonly description: string;
} {
	const hollow = data.curves.some((curve) =>
		curve.points.some((point) => point.low === null || point.high === null),
	)
		? " A hollow dot has no interval that would hold."
		: "";
	return {
		title: data.title,
		legend: `Dots: means, with bars and a band of 95 %. Everything else stays as it is.${hollow}`,
		description:
			data.curves.length === 0
				? "No measure differs between the regimens that were run."
				: data.curves.map((curve) => curveWords(data, curve)).join(" "),
	};
}

function curveWords(
	data: ResponseCurveData,
	curve: ResponseCurvePanel,
): string {
	const points = [...curve.points].sort((a, b) => a.x - b.x);
	const [first, last] = [points[0], points.at(-1)];
	if (first === undefined || last === undefined)
		return `${curve.label}: no values.`;
	const decimals = threeFigures(points.map((point) => point.mean));
	const number = (value: number): string =>
		figureWords(value, decimals, curve.unit);
	const current = points.find((point) => point.x === data.x.current);
	const now =
		current === undefined ? "" : `; ${number(current.mean)} at the current one`;
	const run =
		points.length === 1
			? `${number(first.mean)} at ${valueWords(data, first.x)}`
			: `${number(first.mean)} at ${valueWords(data, first.x)}, ${number(last.mean)} at ${valueWords(data, last.x)}`;
	return `${curve.label} by ${data.x.label}: ${run}${now}.`;
}
