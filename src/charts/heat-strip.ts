import type { AlarmProjection } from "../analysis/day-result.ts";
import {
	type ChartOptions,
	chartRoot,
	chartTitle,
	setSize,
} from "./chart-root.ts";
import { type Clock, timeRange } from "./clock.ts";
import { cellMinutes, mergedBins } from "./heat-bins.ts";
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

const rowPx = 26;
const cellPx = 22;

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
	const widthPx = options.widthPx ?? 960;
	const cellMin = cellMinutes(data.clock.horizonMin);
	const root = chartRoot(
		document,
		options,
		{ widthPx, heightPx: 0 },
		words(data, cellMin),
	);
	const span = { fromMin: 0, toMin: data.clock.horizonMin };
	const plot = timePlot(document, options.idPrefix, data.clock, span, {
		leftPx: 186,
		rightPx: widthPx - 34,
	});
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
			rowLabel(plot, y + cellPx / 2, conditionWords[alarm.condition]),
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
	root.append(axis.group, key);
	setSize(root, widthPx, bottom + axis.heightPx + 38);
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
	const size =
		[12, 11, 10, 9, 8].find(
			(candidate) => textWidth(number, candidate) <= right - left - 1,
		) ?? 7.5;
	const text = svgElement(
		document,
		"text",
		{
			class: `heat${step}-text`,
			x: (left + right) / 2,
			y: y + cellPx / 2 + size * 0.36,
			"text-anchor": "middle",
			style: `font-size:${size}px`,
		},
		number,
	);
	return [rect, text];
}

/** What each darkness means, in words of its own row. */
function heatKey(plot: TimePlot, y: number, cellMin: number): SVGGElement {
	const { document } = plot;
	const group = svgElement(document, "g", {});
	const per = cellMin === 30 ? "half-hour" : cellMin === 60 ? "hour" : "day";
	const lead = `chance that one starts in a ${per}, in %:`;
	const leadText = lead.replace("a hour", "an hour");
	const labels = heatEdges.map((edge, step) =>
		step === heatEdges.length - 1
			? `${edge * 100} and more`
			: `from ${edge * 100}`,
	);
	const longPx = labels.reduce(
		(sum, label) => sum + 32 + textWidth(label, 11.5),
		textWidth(leadText, 11.5) + 4,
	);
	// Where it is too long to begin under the strip it begins further left.
	let x = Math.max(4, Math.min(plot.leftPx, plot.rightPx + 34 - longPx));
	group.append(
		svgElement(
			document,
			"text",
			{ class: "small muted", x, y: y + 12 },
			leadText,
		),
	);
	x += textWidth(leadText, 11.5) + 4;
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
	return group;
}

function words(data: HeatStripData, cellMin: number) {
	const windows = shownConditions(data.alarms).flatMap((alarm) =>
		alarm.windows.map(
			(window) =>
				`${conditionWords[alarm.condition]} ${timeRange(window.startMin, window.endMin, data.clock)}, up to ${percentWords(window.peakProbability)} in a half-hour`,
		),
	);
	const per = cellMin === 30 ? "half-hour" : cellMin === 60 ? "hour" : "day";
	const found =
		windows.length === 0
			? `No half-hour passes ${percentWords(data.level)}.`
			: `${windows.slice(0, 12).join("; ")}.`;
	return {
		title: data.title,
		description: `Chance by ${per} and condition that an alarm starts. ${found}`,
	};
}
