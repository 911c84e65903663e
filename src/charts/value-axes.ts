import { type ScaleLinear, scaleLinear } from "d3-scale";
import { figureWords } from "./figures.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";

/** A scale of round ends that holds all of some values; where they are all equal (to a millionth), that value stands in its middle. */
export function valueScale(
	values: readonly number[],
	ticks: number,
	options: { readonly fromZero?: boolean } = {},
): ScaleLinear<number, number> {
	const finite = values.filter(Number.isFinite);
	let least = Math.min(...finite);
	let most = Math.max(...finite);
	if (finite.length === 0) [least, most] = [0, 1];
	// Numbers that come near zero are shown from zero, so that a small change looks small.
	if (options.fromZero !== false && least > 0 && least < most * 0.6) least = 0;
	// What differs by rounding alone would need more digits than a tick has.
	if (most - least <= 1e-6 * Math.max(Math.abs(least), Math.abs(most))) {
		const margin = Math.abs(least) * 0.5;
		[least, most] = least === 0 ? [0, 1] : [least - margin, least + margin];
	}
	return scaleLinear([least, most], [0, 1]).nice(ticks);
}

/** Digits after the point that tell the ticks of a scale apart. */
function tickDecimals(ticks: readonly number[]): number {
	const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0));
	if (!(step > 0)) return 2;
	return Math.min(8, Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));
}

/** Ticks of a scale with their labels. */
export function labelledTicks(
	scale: ScaleLinear<number, number>,
	count: number,
	words?: (value: number) => string,
): { readonly value: number; readonly label: string }[] {
	const ticks = scale.ticks(count);
	const decimals = tickDecimals(ticks);
	return ticks.map((value) => ({
		value,
		label:
			words === undefined ? figureWords(value, decimals, "") : words(value),
	}));
}

const minuteSteps = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440];

/** Ticks of a scale of minutes, on whole minutes, quarters, hours or days; at most about `count` of them. */
export function minuteTicks(
	scale: ScaleLinear<number, number>,
	count: number,
	words: (value: number) => string = String,
): { readonly value: number; readonly label: string }[] {
	const [from = 0, to = 0] = scale.domain();
	const step =
		minuteSteps.find((one) => (to - from) / one <= count) ?? 7 * 1440;
	const first = Math.ceil(from / step - 1e-9);
	const last = Math.floor(to / step + 1e-9);
	return Array.from({ length: last - first + 1 }, (_, i) => ({
		value: (first + i) * step,
		label: words((first + i) * step),
	}));
}

/** Lines across with their numbers at the left. */
export const levelAxis = (
	document: Document,
	y: ScaleLinear<number, number>,
	ticks: readonly { readonly value: number; readonly label: string }[],
	leftPx: number,
	rightPx: number,
): SVGElement[] =>
	ticks.flatMap((tick) => [
		svgElement(document, "line", {
			class: "rule",
			x1: leftPx,
			x2: rightPx,
			y1: y(tick.value),
			y2: y(tick.value),
		}),
		svgElement(
			document,
			"text",
			{
				class: "small",
				x: leftPx - 6,
				y: y(tick.value) + 4,
				"text-anchor": "end",
			},
			tick.label,
		),
	]);

/** Lines down with their numbers below; every second or third number where they would touch. */
export function acrossAxis(
	document: Document,
	x: ScaleLinear<number, number>,
	ticks: readonly { readonly value: number; readonly label: string }[],
	topPx: number,
	bottomPx: number,
): { readonly lines: SVGElement[]; readonly labels: SVGElement[] } {
	const lines = ticks.map((tick) =>
		svgElement(document, "line", {
			class: "rule",
			x1: x(tick.value),
			x2: x(tick.value),
			y1: topPx,
			y2: bottomPx,
		}),
	);
	const nth = stride(ticks, x);
	// Counted from zero where it is among them, so that it keeps its number.
	const zero = Math.max(
		0,
		ticks.findIndex((tick) => tick.value === 0),
	);
	const labels = ticks
		.filter((_, index) => (index - zero) % nth === 0)
		.map((tick) =>
			svgElement(
				document,
				"text",
				{
					class: "small",
					x: x(tick.value),
					y: bottomPx + 15,
					"text-anchor": "middle",
				},
				tick.label,
			),
		);
	return { lines, labels };
}

/** Every how many ticks carry their number, so that none touches the next. */
function stride(
	ticks: readonly { readonly value: number; readonly label: string }[],
	x: ScaleLinear<number, number>,
): number {
	const [first, second] = ticks;
	if (first === undefined || second === undefined) return 1;
	const stepPx = Math.abs(x(second.value) - x(first.value));
	const widestPx = Math.max(
		...ticks.map((tick) => textWidth(tick.label, 11.5)),
	);
	return Math.max(1, Math.ceil((widestPx + 6) / stepPx));
}
