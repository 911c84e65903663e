import type { AlarmProjection } from "../analysis/day-result.ts";
import {
	type ChartOptions,
	chartRoot,
	chartTitle,
	setSize,
} from "./chart-root.ts";
import { type Clock, timeRange } from "./clock.ts";
import { dayWidthPx } from "./day-root.ts";
import { cellMinutes, cellWords, mergedBins } from "./heat-bins.ts";
import { percentWords } from "./probability.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import {
	rowLabel,
	type TimePlot,
	timeAxis,
	timeGround,
	timePlot,
} from "./time-plot.ts";
import { twoLines } from "./two-lines.ts";
import { conditionWords } from "./vocabulary.ts";

export interface HeatStripData {
	readonly title: string;
	readonly clock: Clock;
	readonly alarms: readonly AlarmProjection[];
	/** Above this a cell carries its number, and a window counts as likely. */
	readonly level: number;
}

/** Lower edges of the steps of darkness; below the first a cell is bare. */
export const heatEdges = [0.005, 0.02, 0.05, 0.1, 0.2, 0.4] as const;

const rowPx = 38;
const cellPx = 34;
const numberPx = 11.5;
/** Two figures stand in the narrowest cell; cells are made longer where more would not fit. */
const leastCellPx = 15.5;

/** Step of darkness for a probability, or null for bare paper. */
export function heatStep(probability: number): number | null {
	const step = heatEdges.findLastIndex((edge) => probability >= edge);
	return step === -1 ? null : step;
}

/** Conditions that chance ever brought, the likeliest first. */
export const shownConditions = (
	alarms: readonly AlarmProjection[],
): AlarmProjection[] =>
	alarms
		.filter(({ byChance }) => byChance.meanPerDay > 0)
		.sort((a, b) => b.byChance.meanPerDay - a.byChance.meanPerDay);

/**
 * Chance of an alarm by time and condition, without what the scenario lists: darker where likelier, the number written
 * where it passes the level.
 */
export function heatStrip(
	data: HeatStripData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? dayWidthPx;
	const edges = { leftPx: 124, rightPx: widthPx - 26 };
	const cellMin = cellMinutes(
		data.clock.horizonMin,
		edges.rightPx - edges.leftPx,
		leastCellPx,
	);
	const root = chartRoot(
		document,
		options,
		{ widthPx, heightPx: 0 },
		words(data, cellMin),
	);
	const span = { fromMin: 0, toMin: data.clock.horizonMin };
	const plot = timePlot(document, options.idPrefix, data.clock, span, edges);
	const headPx = chartTitle(root, document, options, {
		title: data.title,
		leftPx: plot.leftPx,
		roomPx: plot.rightPx - plot.leftPx,
	});
	const topPx = headPx + 26;
	const shown = shownConditions(data.alarms);
	const bottom = topPx + Math.max(1, shown.length) * rowPx + 4;
	root.append(timeGround(plot, topPx - 6, bottom));
	shown.forEach((alarm, row) => {
		const y = topPx + row * rowPx;
		root.append(
			rowLabel(
				plot,
				y + cellPx / 2,
				...twoLines(conditionWords[alarm.condition], plot.leftPx - 14),
			),
		);
		for (const cell of mergedBins(
			alarm.bins.map(({ startMin, endMin, chance }) => ({
				startMin,
				endMin,
				probability: chance,
			})),
			cellMin,
		))
			root.append(...heatCell(plot, cell, y, data.level));
	});
	if (shown.length === 0)
		root.append(
			svgElement(
				document,
				"text",
				{ class: "muted", x: plot.leftPx + 6, y: topPx + 15 },
				"no alarm by chance in any replication",
			),
		);
	const axis = timeAxis(plot, bottom);
	const key = heatKey(plot, bottom + axis.heightPx + 14, cellMin);
	root.append(axis.group, key.group);
	setSize(root, widthPx, bottom + axis.heightPx + 20 + key.heightPx);
	return root;
}

function heatCell(
	plot: TimePlot,
	cell: { startMin: number; endMin: number; probability: number },
	y: number,
	level: number,
): SVGElement[] {
	const step = heatStep(cell.probability);
	if (step === null) return [];
	const { document } = plot;
	const [left, right] = [
		plot.x(cell.startMin),
		plot.x(Math.min(cell.endMin, plot.toMin)),
	];
	const when = timeRange(cell.startMin, cell.endMin, plot.clock);
	const rect = svgElement(
		document,
		"rect",
		{
			class: `heat${step}`,
			x: left + 0.5,
			y,
			width: Math.max(0.5, right - left - 1),
			height: cellPx,
		},
		svgElement(
			document,
			"title",
			{},
			`${when}: ${percentWords(cell.probability)}`,
		),
	);
	if (cell.probability <= level) return [rect];
	const number =
		cell.probability < 1
			? String(Math.min(99, Math.round(cell.probability * 100)))
			: "100";
	const roomPx = right - left - 1;
	// The last cell may be cut short by the end of the day: its darkness says it.
	if (roomPx < leastCellPx - 2) return [rect];
	const text = svgElement(
		document,
		"text",
		{
			class: `heat${step}-text`,
			x: (left + right) / 2,
			y: y + cellPx / 2 + numberPx * 0.36,
			"text-anchor": "middle",
			style: `font-size:${numberPx}px`,
			// The viewer makes letters narrower that would leave the cell.
			...(textWidth(number, numberPx) > roomPx + 1
				? {
						textLength: Math.min(roomPx, number.length * numberPx * 0.55),
						lengthAdjust: "spacingAndGlyphs",
					}
				: {}),
		},
		number,
	);
	return [rect, text];
}

/** What each darkness means, in words of its own row. */
function heatKey(plot: TimePlot, topPx: number, cellMin: number) {
	const { document } = plot;
	const group = svgElement(document, "g", {});
	const leadText = `chance that one starts in ${cellWords(cellMin)}, in %:`;
	const labels = heatEdges.map((edge, step) =>
		step === heatEdges.length - 1
			? `${edge * 100} and more`
			: `from ${edge * 100}`,
	);
	const longPx = labels.reduce(
		(sum, label) => sum + 32 + textWidth(label, 11.5),
		textWidth(leadText, 11.5) + 4,
	);
	// Where it is too long to begin under the strip it begins further left, and then takes two lines.
	const roomPx = plot.rightPx + 26;
	const broken = longPx > roomPx - 4;
	let x = broken ? 4 : Math.max(4, Math.min(plot.leftPx, roomPx - longPx));
	let y = topPx;
	group.append(
		svgElement(
			document,
			"text",
			{ class: "small muted", x, y: y + 12 },
			leadText,
		),
	);
	if (broken) y += 21;
	else x += textWidth(leadText, 11.5) + 4;
	labels.forEach((label, step) => {
		group.append(
			svgElement(document, "rect", {
				class: `heat${step}`,
				x,
				y,
				width: 18,
				height: 15,
			}),
			svgElement(
				document,
				"text",
				{ class: "small muted", x: x + 22, y: y + 12 },
				label,
			),
		);
		x += 22 + textWidth(label, 11.5) + 10;
	});
	return { group, heightPx: y - topPx + 18 };
}

function words(data: HeatStripData, cellMin: number) {
	const windows = shownConditions(data.alarms).flatMap((alarm) =>
		alarm.windows.map(
			(window) =>
				`${conditionWords[alarm.condition]} ${timeRange(window.startMin, window.endMin, data.clock)}, up to ${percentWords(window.peakProbability)} in a half-hour`,
		),
	);
	const found =
		windows.length === 0
			? `No half-hour passes ${percentWords(data.level)}.`
			: `${windows.slice(0, 12).join("; ")}.`;
	return {
		title: data.title,
		description: `Chance by condition that an alarm starts in ${cellWords(cellMin)}. ${found}`,
	};
}
