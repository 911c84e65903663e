import type { DressingDay } from "../../results/index.ts";
import { durationWords, phaseWords, timeSpan } from "../../words/index.ts";
import { textWidth } from "../kit/fitted-text.ts";
import { centred, rowCount, stackedRows } from "../kit/label-places.ts";
import { group, shape, text, uprightLine } from "../kit/shape.ts";
import { textPx } from "../theme/letters.ts";
import { type TimePlot, timeAxis, timeGround, timePlot } from "../time/time-plot.ts";
import { type WaterBandRange, waterBand } from "../time/water-band.ts";
import type { CycleSpan } from "./data.ts";

/** From one row of names to the next. */
const namePx = 19;

/** A part of the day, enlarged, with its phases named above; drawn from `topPx` down, with the time axis of the day beside it. */
export function cycleLens(dayPlot: TimePlot, day: DressingDay, span: CycleSpan, range: WaterBandRange, topPx: number) {
	const plot = timePlot(dayPlot, span);
	const phases = day.phases.filter((phase) => phase.startMin < plot.toMin && phase.endMin > plot.fromMin);
	const names = phaseNames(plot, phases, topPx + 12);
	const bandPx = topPx + 14 + names.heightPx;
	const size = { topPx: bandPx, abovePx: 44, belowPx: 48 };
	const bottomPx = bandPx + size.abovePx + size.belowPx + 6;
	const axis = timeAxis(plot, bottomPx);
	const heading = `${span.heading}: ${timeSpan(span.fromMin, span.toMin, plot.clock)}`;
	const begun = phases.filter(({ startMin }) => startMin > plot.fromMin);
	const lens = shape(
		"g",
		{ class: "lens" },
		text({ class: "heading", x: plot.leftPx, y: topPx }, heading),
		timeGround(plot, bandPx, bottomPx, false),
		waterBand(plot, day.curve, range, size),
		names.group,
		group(...begun.map(({ startMin }) => uprightLine("boundary", plot.x(startMin), bandPx, bottomPx))),
		axis.group,
	);
	return { group: lens, heightPx: bottomPx + axis.heightPx - topPx };
}

/** Names over their phases; those that are too short for their name go a row higher with a line down to them. */
function phaseNames(plot: TimePlot, phases: DressingDay["phases"], topPx: number) {
	const names = phases.slice(0, 12).map(({ phase, startMin, endMin }) => {
		const middlePx = (plot.x(Math.max(startMin, plot.fromMin)) + plot.x(Math.min(endMin, plot.toMin))) / 2;
		const isWhole = startMin >= plot.fromMin && endMin <= plot.toMin;
		const words = `${phaseWords[phase]}${isWhole ? ` ${durationWords(endMin - startMin)}` : ""}`;
		const room = { left: plot.leftPx, right: plot.rightPx };
		return { words, middlePx, ...centred(middlePx, textWidth(words, textPx), room) };
	});
	const rows = stackedRows(names, 10);
	const rowsPx = rowCount(rows) * namePx;
	const bottomPx = topPx + rowsPx + 2;
	const shapes = names.flatMap(({ words, middlePx, middle }, index) => {
		const y = topPx + (rowCount(rows) - 1 - (rows[index] ?? 0)) * namePx + 13;
		return [
			y + 4 < bottomPx - 4 ? uprightLine("boundary", middlePx, y + 4, bottomPx) : null,
			text({ x: middle, y, "text-anchor": "middle" }, words),
		];
	});
	return { group: group(...shapes), heightPx: rowsPx + 4 };
}
