import { scaleLinear } from "d3-scale";
import type { DayCurve, DressingDay } from "../../results/index.ts";
import { clockTime, counted, numberWord, regimenWords, sentenceStart, volumeWords } from "../../words/index.ts";
import type { ChartOptions, ChartWords } from "../kit/chart.ts";
import { group, path, type Shape, tooltip } from "../kit/shape.ts";
import { canisterPanel } from "../time/canister-panel.ts";
import { alarmEvents, type ChartEvent, careEvents, eventList } from "../time/chart-events.ts";
import { areaFromZero, pointsOn } from "../time/curve.ts";
import { TimeChart } from "../time/time-chart.ts";
import { plotLine, rowLabel, type TimePlot, timeAxis, timeGround } from "../time/time-plot.ts";
import { waterBand, waterBandRange } from "../time/water-band.ts";
import { cycleLens } from "./cycle-lens.ts";
import type { WaterLineData } from "./data.ts";
import { cycleSpan, dayBetween, drawnStretch } from "./stretch.ts";

const panels = { band: { abovePx: 60, belowPx: 72 }, canisterPx: 58, sourcePx: 34 };
const lowPanels = { band: { abovePx: 46, belowPx: 52 }, canisterPx: 50, sourcePx: 30 };

/**
 * The water-line chart of one dressing's day. The line is 'vented': liquid stands above it, suction hangs below. Under it
 * alarms, care, the canister's climb and the source's fall on one time axis, then a lens on one cycle.
 */
export function waterLineChart(data: WaterLineData, document: Document, options: ChartOptions): SVGSVGElement {
	const { dressing, clock } = data;
	const stretch = drawnStretch(data);
	const { fromMin, toMin } = stretch;
	const within = (whole: DressingDay): DressingDay => (stretch.isPart ? dayBetween(whole, stretch) : whole);
	const day = within(data.day);
	const beside = data.beside ?? [];
	const before = data.before?.curve;
	const curves = [data.day, ...beside.map((other) => other.day)].map((whole) => within(whole).curve);
	const regimens = [dressing, ...beside.map((other) => other.dressing)].flatMap((one) => one.regimens);
	const range = waterBandRange(before === undefined ? curves : [...curves, before], regimens);
	const chart = new TimeChart(options, {
		clock,
		fromMin,
		toMin,
		heading: data.title,
		legend: waterLineLegend(data),
		words: waterLineWords(data),
		hatched: true,
	});
	const { plot } = chart;
	const topPx = chart.headPx + 18;
	const high = data.lens === null ? lowPanels : panels;
	const band = { topPx: topPx + 10, ...high.band };
	let y = band.topPx + band.abovePx + band.belowPx;
	const lens = data.lens === undefined ? cycleSpan(day, stretch) : data.lens;
	chart.append(waterBand(plot, day.curve, range, band, before));
	if (lens !== null) chart.append(lensMark(plot.x(lens.fromMin), plot.x(lens.toMin), y + 3));
	y += 19;
	y += chart.appendRows(y, "alarms", alarmEvents(day)) + 4;
	const care = data.withCare === false ? [] : careEvents(day);
	if (care.length > 0) y += chart.appendRows(y, "care", care) + 4;
	const projection = data.replications > 1 ? data.projection : undefined;
	const needs = projection?.canisterNeeds ?? [];
	const content = {
		canisterMl: dressing.canisterMl,
		roundShare: data.roundShare,
		curve: day.curve,
		changes: needs.filter((change) => change.p90Min >= fromMin && change.p10Min <= toMin),
		band: projection?.canisterLevel,
	};
	const canister = canisterPanel(plot, content, y + 12, high.canisterPx);
	chart.append(canister.group);
	y += 12 + canister.heightPx + 12;
	if (dressing.regimens.some((regimen) => regimen.fillMl > 0)) {
		chart.append(sourcePanel(plot, day.curve, dressing.sourceMl, y, high.sourcePx));
		y += high.sourcePx;
	}
	chart.ground.append(timeGround(plot, topPx, y + 4));
	if (lens === null) return chart.drawnToAxis(document, y + 4, 2);
	const axis = timeAxis(plot, y + 4);
	y += 4 + axis.heightPx + 24;
	const enlarged = cycleLens(plot, day, lens, range, y);
	chart.append(axis.group, enlarged.group);
	return chart.drawnIn(document, y + enlarged.heightPx + 4);
}

/** A small bracket under the band that shows where the lens looks. */
function lensMark(left: number, right: number, y: number): Shape {
	const [from, to] = [left - 1, Math.max(right + 1, left + 4)];
	const bracket = path("care-edge", `M${from.toFixed(2)},${y}v4H${to.toFixed(2)}v-4`);
	return group(tooltip("the part that is enlarged below"), bracket);
}

/** The solution that is left in the source, falling fill by fill. */
function sourcePanel(plot: TimePlot, curve: DayCurve, sourceMl: number, topPx: number, panelPx: number): Shape {
	const y = scaleLinear([0, sourceMl], [topPx + panelPx, topPx]);
	const points = pointsOn(plot, curve.atMin, curve.sourceMl);
	const area = areaFromZero(plot.x, y);
	return group(
		path("source", area(points)),
		path("source-edge", area.lineY1()(points)),
		plotLine(plot, "rule", y(0)),
		rowLabel(plot, y(sourceMl) + 3, volumeWords(sourceMl)),
		rowLabel(plot, y(0) - 4, "solution left"),
	);
}

const mostNamed = 8;

/** Title and text alternative of a water-line chart: what a reader would see in it. */
function waterLineWords(data: WaterLineData): ChartWords {
	const { clock } = data;
	const stretch = drawnStretch(data);
	const { fromMin, toMin, isPart } = stretch;
	const day = isPart ? dayBetween(data.day, stretch) : data.day;
	// The one in force when the stretch begins: a later one may have waited for the running cycle.
	const takeover = data.day.takeovers.findLast(({ atMin }) => atMin <= fromMin);
	const first = data.dressing.regimens[takeover?.regimen ?? 0];
	const named = (kind: string, events: readonly ChartEvent[]): string => {
		if (events.length === 0) return `No ${kind}.`;
		const more = events.length > mostNamed ? ` and ${numberWord(events.length - mostNamed)} more` : "";
		return `${sentenceStart(kind)}: ${eventList(events.slice(0, mostNamed), clock)}${more}.`;
	};
	const fills = day.phases.filter(({ phase, startMin }) => phase === "fill" && startMin >= fromMin).length;
	const { totals } = day;
	const sentences = [
		`From ${clockTime(fromMin, clock)} to ${clockTime(toMin, clock)}.`,
		...(first === undefined ? [] : [`${regimenWords(first)}.`]),
		isPart
			? `${counted(fills, "fill")} in this time.`
			: `${counted(totals.fills, "fill")}, ${volumeWords(totals.instilledMl)} of solution in, ${volumeWords(totals.toCanisterMl)} to the canister.`,
		named("alarms", alarmEvents(day)),
		named("care", careEvents(day)),
	];
	return { title: `Water line: ${data.title}`, description: sentences.join(" ") };
}

/** How to read the chart, in a line. */
export function waterLineLegend(data: Pick<WaterLineData, "replications" | "projection">): string {
	const band = data.replications > 1 && data.projection !== undefined ? " Pale band: where 8 days in 10 keep." : "";
	return `Liquid stands above the line, hatched suction hangs below it. Shaded: night shift.${band}`;
}
