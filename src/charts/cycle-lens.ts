import type { DressingDay } from "../analysis/day-result.ts";
import { timeSpan } from "./clock.ts";
import type { CycleSpan } from "./cycle-span.ts";
import { durationWords } from "./duration.ts";
import { stackedRows } from "./stack-labels.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { type TimePlot, timeAxis, timeGround, timePlot } from "./time-plot.ts";
import { phaseWords } from "./vocabulary.ts";
import { type WaterBandRange, waterBand } from "./water-band.ts";

/** From one row of names to the next. */
const namePx = 19;

/** A part of the day, enlarged, with its phases named above; drawn from `topPx` down, with the time axis of the day beside it. */
export function cycleLens(
	dayPlot: TimePlot,
	day: DressingDay,
	span: CycleSpan,
	range: WaterBandRange,
	topPx: number,
) {
	const { document, clock, leftPx, rightPx } = dayPlot;
	const plot = timePlot(document, dayPlot.idPrefix, clock, span, {
		leftPx,
		rightPx,
	});
	const names = phaseNames(plot, day, topPx + 12);
	const bandTop = topPx + 14 + names.heightPx;
	const size = { topPx: bandTop, abovePx: 44, belowPx: 48 };
	const bottom = bandTop + size.abovePx + size.belowPx + 6;
	const axis = timeAxis(plot, bottom);
	const heading = `${span.heading}: ${timeSpan(span.fromMin, span.toMin, clock)}`;
	const group = svgElement(
		document,
		"g",
		{ class: "lens" },
		svgElement(
			document,
			"text",
			{ class: "heading", x: leftPx, y: topPx },
			heading,
		),
		timeGround(plot, bandTop, bottom, false),
		waterBand(plot, day.curve, range, size),
		names.group,
		phaseLines(plot, day, bandTop, bottom),
		axis.group,
	);
	return { group, heightPx: bottom + axis.heightPx - topPx };
}

const phasesIn = (plot: TimePlot, day: DressingDay) =>
	day.phases.filter(
		(phase) => phase.startMin < plot.toMin && phase.endMin > plot.fromMin,
	);

function phaseLines(
	plot: TimePlot,
	day: DressingDay,
	topPx: number,
	bottomPx: number,
): SVGGElement {
	const group = svgElement(plot.document, "g", {});
	for (const phase of phasesIn(plot, day)) {
		if (phase.startMin <= plot.fromMin) continue;
		const x = plot.x(phase.startMin);
		group.append(
			svgElement(plot.document, "line", {
				class: "boundary",
				x1: x,
				x2: x,
				y1: topPx,
				y2: bottomPx,
			}),
		);
	}
	return group;
}

/** Names over their phases; those that are too short for their name go a row higher with a line down to them. */
function phaseNames(plot: TimePlot, day: DressingDay, topPx: number) {
	const { document } = plot;
	const group = svgElement(document, "g", {});
	const names = phasesIn(plot, day)
		.slice(0, 12)
		.map((phase) => {
			const from = plot.x(Math.max(phase.startMin, plot.fromMin));
			const to = plot.x(Math.min(phase.endMin, plot.toMin));
			const isWhole =
				phase.startMin >= plot.fromMin && phase.endMin <= plot.toMin;
			const length = isWhole
				? ` ${durationWords(phase.endMin - phase.startMin)}`
				: "";
			const text = `${phaseWords[phase.phase]}${length}`;
			const half = textWidth(text, 13) / 2;
			const middle = Math.min(
				Math.max((from + to) / 2, plot.leftPx + half),
				plot.rightPx - half,
			);
			return {
				text,
				from,
				to,
				middle,
				left: middle - half,
				right: middle + half,
			};
		});
	const rows = stackedRows(names, 10);
	const rowCount = names.length === 0 ? 0 : Math.max(...rows) + 1;
	names.forEach((name, index) => {
		const y = topPx + (rowCount - 1 - (rows[index] ?? 0)) * namePx + 13;
		const bottom = topPx + rowCount * namePx + 2;
		if (y + 4 < bottom - 4)
			group.append(
				svgElement(document, "line", {
					class: "boundary",
					x1: (name.from + name.to) / 2,
					x2: (name.from + name.to) / 2,
					y1: y + 4,
					y2: bottom,
				}),
			);
		group.append(
			svgElement(
				document,
				"text",
				{ x: name.middle, y, "text-anchor": "middle" },
				name.text,
			),
		);
	});
	return { group, heightPx: rowCount * namePx + 4 };
}
