import type { AlarmProjection } from "../../results/index.ts";
import { minutesADay } from "../../vocabulary/index.ts";
import { type Clock, conditionWords, percentWords, timeRange } from "../../words/index.ts";
import type { ChartOptions, ChartWords } from "../kit/chart.ts";
import { textWidth, twoLines } from "../kit/fitted-text.ts";
import { cellNumber } from "../kit/marks.ts";
import { type Attributes, group, rect, type Shape, text, tooltip } from "../kit/shape.ts";
import { smallPx } from "../theme/letters.ts";
import { heatEdges, heatStep } from "../theme/palette.ts";
import { dayWidthPx, TimeChart } from "../time/time-chart.ts";
import { rowLabel, type TimePlot, timeAxis, timeGround } from "../time/time-plot.ts";

interface HeatStripData {
	readonly title: string;
	readonly clock: Clock;
	readonly alarms: readonly AlarmProjection[];
	/** Above this a cell carries its number, and a window counts as likely. */
	readonly level: number;
}

const rowPx = 38;
const cellPx = 34;
/** Two figures stand in the narrowest cell; cells are made longer where more would not fit. */
const leastCellPx = 15.5;

/** Conditions that chance ever brought, the likeliest first. */
export const shownConditions = (alarms: readonly AlarmProjection[]): AlarmProjection[] =>
	alarms
		.filter(({ byChance }) => byChance.meanPerDay > 0)
		.sort((a, b) => b.byChance.meanPerDay - a.byChance.meanPerDay);

/** Chance of an alarm by time and condition, without what the scenario lists: the darker the likelier. */
export function heatStrip(data: HeatStripData, document: Document, options: ChartOptions): SVGSVGElement {
	const { clock } = data;
	const edges = { leftPx: 124, rightPx: (options.widthPx ?? dayWidthPx) - 26 };
	const cellMin = cellMinutes(clock.horizonMin, edges.rightPx - edges.leftPx);
	const said = { heading: data.title, words: words(data, cellMin) };
	const chart = new TimeChart(options, { clock, toMin: clock.horizonMin, ...said, edges });
	const { plot } = chart;
	const topPx = chart.headPx + 26;
	const shown = shownConditions(data.alarms);
	const bottomPx = topPx + Math.max(1, shown.length) * rowPx + 4;
	chart.append(timeGround(plot, topPx - 6, bottomPx));
	shown.forEach((alarm, row) => {
		const y = topPx + row * rowPx;
		chart.append(
			rowLabel(plot, y + cellPx / 2, ...twoLines(conditionWords[alarm.condition], plot.leftPx - 14)),
			...mergedBins(alarm.bins, cellMin).flatMap((cell) => heatCell(plot, cell, y, data.level)),
		);
	});
	if (shown.length === 0)
		chart.append(text({ class: "muted", x: plot.leftPx + 6, y: topPx + 15 }, "no alarm by chance in any replication"));
	const axis = timeAxis(plot, bottomPx);
	const key = heatKey(plot, bottomPx + axis.heightPx + 14, cellMin);
	chart.append(axis.group, key.group);
	return chart.drawnIn(document, bottomPx + axis.heightPx + 20 + key.heightPx);
}

type HeatCell = ReturnType<typeof mergedBins>[number];

function heatCell(plot: TimePlot, { startMin, endMin, probability }: HeatCell, y: number, level: number): Shape[] {
	const step = heatStep(probability);
	if (step === null) return [];
	const [left, right] = [plot.x(startMin), plot.x(Math.min(endMin, plot.toMin))];
	const roomPx = right - left - 1;
	const box = { x: left + 0.5, y, width: Math.max(0.5, roomPx), height: cellPx };
	const said = `${timeRange(startMin, endMin, plot.clock)}: ${percentWords(probability)}`;
	const cell = rect(`heat${step}`, box, tooltip(said));
	// The last cell may be cut short by the end of the day: its darkness says it.
	if (probability <= level || roomPx < leastCellPx - 2) return [cell];
	const number = probability < 1 ? String(Math.min(99, Math.round(probability * 100))) : "100";
	// The viewer makes letters narrower that would leave the cell.
	const squeezed: Attributes =
		textWidth(number, smallPx) > roomPx + 1
			? { textLength: Math.min(roomPx, number.length * smallPx * 0.55), lengthAdjust: "spacingAndGlyphs" }
			: {};
	return [cell, cellNumber(number, `heat${step}-text`, (left + right) / 2, y + cellPx / 2, smallPx, squeezed)];
}

/** What each darkness means, in words of its own row. */
function heatKey(plot: TimePlot, topPx: number, cellMin: number) {
	const key = group();
	const leadText = `chance that one starts in ${cellWords(cellMin)}, in %:`;
	const labels = heatEdges.map((edge) => (edge === heatEdges.at(-1) ? `${edge * 100} and more` : `from ${edge * 100}`));
	const leadPx = textWidth(leadText, smallPx) + 4;
	const longPx = labels.reduce((sum, label) => sum + 32 + textWidth(label, smallPx), leadPx);
	// Where it is too long to begin under the strip it begins further left, and then takes two lines.
	const roomPx = plot.rightPx + 26;
	const broken = longPx > roomPx - 4;
	let x = broken ? 4 : Math.max(4, Math.min(plot.leftPx, roomPx - longPx));
	let y = topPx;
	key.append(text({ class: "small muted", x, y: y + 12 }, leadText));
	if (broken) y += 21;
	else x += leadPx;
	labels.forEach((label, step) => {
		key.append(rect(`heat${step}`, { x, y, width: 18, height: 15 }));
		key.append(text({ class: "small muted", x: x + 22, y: y + 12 }, label));
		x += 22 + textWidth(label, smallPx) + 10;
	});
	return { group: key, heightPx: y - topPx + 18 };
}

function words(data: HeatStripData, cellMin: number): ChartWords {
	const all = shownConditions(data.alarms).flatMap(({ condition, windows }) =>
		windows.map(({ startMin, endMin, peakProbability }) => {
			const when = timeRange(startMin, endMin, data.clock);
			return `${conditionWords[condition]} ${when}, up to ${percentWords(peakProbability)} in a half-hour`;
		}),
	);
	const found =
		all.length === 0 ? `No half-hour passes ${percentWords(data.level)}.` : `${all.slice(0, 12).join("; ")}.`;
	const description = `Chance by condition that an alarm starts in ${cellWords(cellMin)}. ${found}`;
	return { title: data.title, description };
}

/** Width of a cell in minutes: the shortest that takes `leastCellPx` of the room there is; a day at the most. */
const cellMinutes = (horizonMin: number, roomPx: number): number =>
	[30, 60, 120, 240, 360, 720].find((step) => (step / horizonMin) * roomPx >= leastCellPx) ?? minutesADay;

/** 'a half-hour', 'an hour', '2 h', 'a day'. */
function cellWords(cellMin: number): string {
	if (cellMin === 30) return "a half-hour";
	if (cellMin === 60) return "an hour";
	return cellMin === minutesADay ? "a day" : `${cellMin / 60} h`;
}

/**
 * Neighbouring bins merged into cells. Only the chance of each half-hour is known, so a cell takes them as independent:
 * P = 1 − Π(1 − p). Where one alarm makes the next less likely this is a little low, where alarms cluster a little high.
 */
function mergedBins(bins: AlarmProjection["bins"], cellMin: number) {
	const cells: { startMin: number; endMin: number; probability: number; none: number }[] = [];
	for (const { startMin, endMin, chance } of bins) {
		const last = cells.at(-1);
		if (last !== undefined && endMin - last.startMin <= cellMin + 1e-9) {
			const none = last.none * (1 - chance);
			Object.assign(last, { endMin, probability: 1 - none, none });
		} else cells.push({ startMin, endMin, probability: chance, none: 1 - chance });
	}
	return cells;
}
