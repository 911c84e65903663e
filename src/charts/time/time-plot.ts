import { scaleLinear } from "d3-scale";
import { minutesADay } from "../../vocabulary/index.ts";
import type { Clock } from "../../words/index.ts";
import { dateWords, dayOffset, monthWords, shiftsBetween, shortDate, timeOfDay } from "../../words/index.ts";
import { fittedText, textWidth } from "../kit/fitted-text.ts";
import { group, levelLine, rect, type Shape, text, uprightLine } from "../kit/shape.ts";
import type { Scale } from "../kit/value-axis.ts";
import { smallPx, textPx } from "../theme/letters.ts";

export interface Span {
	readonly fromMin: number;
	readonly toMin: number;
}

export interface Edges {
	readonly leftPx: number;
	readonly rightPx: number;
}

/** Panels that stand on one time axis share this. */
export interface TimePlot extends Span, Edges {
	readonly clock: Clock;
	/** Minutes to px. */
	readonly x: Scale;
	readonly hatch: string;
}

export const timePlot = (of: Edges & Pick<TimePlot, "clock" | "hatch">, { fromMin, toMin }: Span): TimePlot => ({
	...of,
	fromMin,
	toMin,
	x: scaleLinear([fromMin, toMin], [of.leftPx, of.rightPx]),
});

const stepsMin = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 10080];
/** Steps of hours fall on 07:00, so that both shift boundaries are among them. */
const dayShiftMin = 420;

/**
 * Ticks at round clock times, at most about `most` of them; whole days are named by date. `date` is a second line: the date,
 * where a new day begins on the axis; the month, where days are ticks.
 */
export function timeTicks(fromMin: number, toMin: number, clock: Clock, most: number) {
	const step = stepsMin.find((candidate) => (toMin - fromMin) / candidate <= most) ?? 2 * 10080;
	const isDays = step >= minutesADay;
	const offset = clock.startClockMin - (isDays ? 0 : dayShiftMin);
	const ticks: { readonly atMin: number; readonly label: string; readonly date: string }[] = [];
	let named = isDays ? "" : dateWords(dayOffset(fromMin, clock), clock);
	for (let number = Math.ceil((fromMin + offset) / step - 1e-9); number * step - offset <= toMin + 1e-9; number++) {
		const atMin = number * step - offset;
		const day = dayOffset(atMin, clock);
		const second = isDays ? monthWords(day, clock) : dateWords(day, clock);
		const label = isDays ? shortDate(day, clock) : timeOfDay(atMin, clock);
		ticks.push({ atMin, label, date: second === named ? "" : second });
		named = second;
	}
	return ticks;
}

const ticksOf = (plot: TimePlot) =>
	timeTicks(plot.fromMin, plot.toMin, plot.clock, Math.floor((plot.rightPx - plot.leftPx) / 56));

/** Night, hour lines and shift boundaries behind the panels; where `named`, 'day' and 'night' are written along the top. */
export function timeGround(plot: TimePlot, topPx: number, bottomPx: number, named = true): Shape {
	const { x } = plot;
	const ground = group();
	const shifts = shiftsBetween(plot.fromMin, plot.toMin, plot.clock).map(({ shift, startMin, endMin }) => ({
		shift,
		isFirst: startMin <= plot.fromMin,
		left: x(startMin),
		widthPx: x(endMin) - x(startMin),
	}));
	for (const { shift, left, widthPx } of shifts)
		if (shift === "night")
			ground.append(rect("night", { x: left, y: topPx, width: widthPx, height: bottomPx - topPx }));
	ground.append(...ticksOf(plot).map(({ atMin }) => uprightLine("rule", x(atMin), topPx, bottomPx)));
	for (const { shift, isFirst, left, widthPx } of shifts) {
		if (widthPx > 24 && !isFirst) ground.append(uprightLine("boundary", left, named ? topPx - 14 : topPx, bottomPx));
		const words = [`${shift} shift`, shift].find((one) => widthPx > textWidth(one, smallPx) + 8);
		if (named && words !== undefined) ground.append(text({ class: "small muted", x: left + 5, y: topPx - 4 }, words));
	}
	return ground;
}

/** Labels of the time axis under `topPx`; returns the px they take downwards, too. */
export function timeAxis(plot: TimePlot, topPx: number): { readonly group: Shape; readonly heightPx: number } {
	const axis = group();
	let heightPx = 20;
	for (const tick of ticksOf(plot)) {
		const x = plot.x(tick.atMin);
		axis.append(text({ x, y: topPx + 16, "text-anchor": "middle" }, tick.label));
		if (tick.date === "") continue;
		const at = Math.min(x, plot.rightPx + 20 - textWidth(tick.date, smallPx) / 2);
		axis.append(text({ class: "small muted", x: at, y: topPx + 33, "text-anchor": "middle" }, tick.date));
		heightPx = 38;
	}
	return { group: axis, heightPx };
}

/** A line across the whole axis. */
export const plotLine = (plot: TimePlot, className: string, y: number): Shape =>
	levelLine(className, plot.leftPx, plot.rightPx, y);

/** A label in the left margin, on two lines where it says so. */
export function rowLabel(plot: TimePlot, yPx: number, first: string, second = ""): Shape {
	const line = (y: number, words: string) =>
		text({ x: plot.leftPx - 8, "text-anchor": "end", y }, fittedText(words, textPx, plot.leftPx - 14));
	return second === "" ? group(line(yPx + 4.5, first)) : group(line(yPx - 4.5, first), line(yPx + 14, second));
}
