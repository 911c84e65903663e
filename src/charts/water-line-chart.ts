import type {
	DressingDay,
	DressingProjection,
	DressingSummary,
} from "../analysis/day-result.ts";
import { canisterPanel } from "./canister-panel.ts";
import { alarmEvents, careEvents } from "./chart-events.ts";
import { type ChartOptions, setSize } from "./chart-root.ts";
import type { Clock } from "./clock.ts";
import { cycleLens } from "./cycle-lens.ts";
import { type CycleSpan, cycleSpan } from "./cycle-span.ts";
import { dayRoot } from "./day-root.ts";
import { dayWithin } from "./day-within.ts";
import { eventRows } from "./event-rows.ts";
import { sourcePanel } from "./source-panel.ts";
import { svgElement } from "./svg-element.ts";
import { timeAxis, timeGround } from "./time-plot.ts";
import { waterBand, waterBandRange } from "./water-band.ts";
import { waterLineLegend, waterLineWords } from "./water-line-words.ts";

export interface WaterLineData {
	readonly title: string;
	readonly clock: Clock;
	readonly dressing: DressingSummary;
	readonly day: DressingDay;
	/** Band and change windows are drawn where it holds more than one replication. */
	readonly projection?: DressingProjection;
	readonly replications: number;
	/** Share of the canister at which a round changes it. */
	readonly roundShare: number;
	/** What the lens enlarges; by default the first undisturbed cycle. */
	readonly lens?: CycleSpan;
	/** Only the first minutes of the day are drawn; all of it by default. */
	readonly spanMin?: number;
	/** The day as it was before the last change, left as a pale line. */
	readonly before?: Pick<DressingDay, "curve">;
	/** Days that are drawn above or below it, so that all stand on the same heights. */
	readonly beside?: readonly Pick<WaterLineData, "day" | "dressing">[];
}

/**
 * The water-line chart of one dressing's day. The line is 'vented': liquid stands above it, suction hangs below. Under it
 * alarms, care, the canister's climb and the source's fall on one time axis, then a lens on one cycle.
 */
export function waterLineChart(
	data: WaterLineData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const { dressing, clock } = data;
	const spanMin = Math.min(data.spanMin ?? clock.horizonMin, clock.horizonMin);
	const within = (whole: DressingDay): DressingDay =>
		spanMin < clock.horizonMin ? dayWithin(whole, spanMin) : whole;
	const day = within(data.day);
	const beside = data.beside ?? [];
	const before = data.before?.curve;
	const range = waterBandRange(
		[
			day.curve,
			...(before === undefined ? [] : [before]),
			...beside.map((other) => within(other.day).curve),
		],
		[dressing, ...beside.map((other) => other.dressing)].flatMap(
			(one) => one.regimens,
		),
	);
	const { root, widthPx, plot, ground, headPx } = dayRoot(document, options, {
		clock,
		toMin: spanMin,
		title: data.title,
		legend: waterLineLegend(data),
		words: waterLineWords(data),
	});
	const topPx = headPx + 18;
	const band = { topPx: topPx + 10, abovePx: 60, belowPx: 72 };
	root.append(waterBand(plot, day.curve, range, band, before));
	const lens = data.lens ?? cycleSpan(day, spanMin);
	root.append(
		lensMark(
			plot.document,
			plot.x(lens.fromMin),
			plot.x(lens.toMin),
			band.topPx + band.abovePx + band.belowPx + 3,
		),
	);

	let y = band.topPx + band.abovePx + band.belowPx + 16;
	const alarms = eventRows(plot, y, "alarms", alarmEvents(day));
	root.append(alarms.group);
	y += alarms.heightPx + 4;
	const care = careEvents(day);
	if (care.length > 0) {
		const rows = eventRows(plot, y, "care", care);
		root.append(rows.group);
		y += rows.heightPx + 4;
	}
	const varies = data.replications > 1 && data.projection !== undefined;
	const canister = canisterPanel(
		plot,
		{
			canisterMl: dressing.canisterMl,
			roundShare: data.roundShare,
			curve: day.curve,
			changes: (varies ? (data.projection?.canisterNeeds ?? []) : []).filter(
				(change) => spanMin === clock.horizonMin || change.p90Min <= spanMin,
			),
			...(varies ? { band: data.projection?.canisterLevel } : {}),
		},
		y + 12,
		58,
	);
	root.append(canister.group);
	y += 12 + canister.heightPx + 12;
	if (dressing.regimens.some((regimen) => regimen.fillMl > 0)) {
		root.append(sourcePanel(plot, day.curve, dressing.sourceMl, y, 34));
		y += 34;
	}
	ground.append(timeGround(plot, topPx, y + 4));
	const axis = timeAxis(plot, y + 4);
	root.append(axis.group);
	y += 4 + axis.heightPx + 24;
	const enlarged = cycleLens(plot, day, lens, range, y);
	root.append(enlarged.group);
	setSize(root, widthPx, y + enlarged.heightPx + 4);
	return root;
}

/** A small bracket under the band that shows where the lens looks. */
function lensMark(
	document: Document,
	left: number,
	right: number,
	y: number,
): SVGGElement {
	const [from, to] = [left - 1, Math.max(right + 1, left + 4)];
	return svgElement(
		document,
		"g",
		{},
		svgElement(document, "title", {}, "the part that is enlarged below"),
		svgElement(document, "path", {
			class: "care-edge",
			d: `M${from.toFixed(2)},${y}v4H${to.toFixed(2)}v-4`,
		}),
	);
}
