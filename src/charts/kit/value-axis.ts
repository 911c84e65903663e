import { type ScaleLinear, scaleLinear } from "d3-scale";
import { figureWords } from "../../words/index.ts";
import { smallPx } from "../theme/letters.ts";
import { widestText } from "./fitted-text.ts";
import { levelLine, type Shape, text, uprightLine } from "./shape.ts";

export type Scale = ScaleLinear<number, number>;

/** A scale of round ends that holds all of some values; where they are all equal (to a millionth), that value stands in its middle. */
export function valueScale(values: readonly number[], ticks: number, { fromZero = true } = {}): Scale {
	const finite = values.filter(Number.isFinite);
	let least = Math.min(...finite);
	let most = Math.max(...finite);
	if (finite.length === 0) [least, most] = [0, 1];
	// Numbers that come near zero are shown from zero, so that a small change looks small.
	if (fromZero && least > 0 && least < most * 0.6) least = 0;
	// What differs by rounding alone would need more digits than a tick has.
	if (most - least <= 1e-6 * Math.max(Math.abs(least), Math.abs(most))) {
		const margin = Math.abs(least) * 0.5;
		[least, most] = least === 0 ? [0, 1] : [least - margin, least + margin];
	}
	return scaleLinear([least, most], [0, 1]).nice(ticks);
}

/** A scale with zero in the middle that holds all of some values. */
export function centredScale(values: readonly number[], leftPx: number, rightPx: number) {
	const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
	// What differs by rounding alone is no difference.
	const most = niceAbove(largest < 1e-9 ? 0 : largest);
	return { x: scaleLinear([-most, most], [leftPx, rightPx]), most };
}

const leads = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/** The least of 1, 1.5, 2, 3, 4, 5, 6, 8 times a power of ten that is no less than a value; 1 for nought. */
export function niceAbove(value: number): number {
	if (!(value > 0)) return 1;
	const power = 10 ** Math.floor(Math.log10(value));
	const lead = leads.find((one) => one * power >= value * (1 - 1e-9)) ?? 10;
	// Through its decimal text, so that 3 times 0.1 is 0.3.
	return Number((lead * power).toPrecision(3));
}

interface Tick {
	readonly value: number;
	readonly label: string;
}

/** Ticks of a scale with their labels; where no `words` are given, numbers with the digits that tell them apart. */
export function labelledTicks(scale: Scale, count: number, words?: (value: number) => string): Tick[] {
	const ticks = scale.ticks(count);
	const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0));
	const decimals = step > 0 ? Math.min(8, Math.max(0, -Math.floor(Math.log10(step) + 1e-9))) : 2;
	const labelOf = words ?? ((value: number) => figureWords(value, decimals, ""));
	return ticks.map((value) => ({ value, label: labelOf(value) }));
}

const minuteSteps = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440];

/** Ticks of a scale of minutes, on whole minutes, quarters, hours or days; at most about `count` of them. */
export function minuteTicks(scale: Scale, count: number, words: (value: number) => string = String): Tick[] {
	const [from = 0, to = 0] = scale.domain();
	const step = minuteSteps.find((one) => (to - from) / one <= count) ?? 7 * 1440;
	const first = Math.ceil(from / step - 1e-9);
	const last = Math.floor(to / step + 1e-9);
	const values = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
	return values.map((value) => ({ value, label: words(value) }));
}

/** Lines across with their numbers at the left. */
export const levelAxis = (y: Scale, ticks: readonly Tick[], leftPx: number, rightPx: number): Shape[] =>
	ticks.flatMap(({ value, label }) => [
		levelLine("rule", leftPx, rightPx, y(value)),
		text({ class: "small", x: leftPx - 6, y: y(value) + 4, "text-anchor": "end" }, label),
	]);

/** Lines down from the ticks of an axis across. */
export const tickLines = (x: Scale, ticks: readonly Tick[], topPx: number, bottomPx: number): Shape[] =>
	ticks.map(({ value }) => uprightLine("rule", x(value), topPx, bottomPx));

/** The numbers of an axis across, under its bottom; every second or third where they would touch. */
export function tickNumbers(x: Scale, ticks: readonly Tick[], bottomPx: number): Shape[] {
	const values = ticks.map(({ value }) => value);
	const [first = 0, second = Number.POSITIVE_INFINITY] = values.map(x);
	const labels = ticks.map(({ label }) => label);
	const nth = everyNth(widestText(labels, smallPx) + 6, Math.abs(second - first));
	// Counted from zero where it is among them, so that it keeps its number.
	const zero = Math.max(0, values.indexOf(0));
	return ticks
		.filter((_, index) => (index - zero) % nth === 0)
		.map(({ value, label }) => text({ class: "small", x: x(value), y: bottomPx + 15, "text-anchor": "middle" }, label));
}

/** Every how many names are written, so that none touches the next. */
export const everyNth = (widestPx: number, stepPx: number): number => Math.max(1, Math.ceil(widestPx / stepPx));
