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
import { dayBetween } from "./day-between.ts";
import { dayRoot } from "./day-root.ts";
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
	/** What the lens enlarges; by default the first undisturbed cycle. Null: there is no lens and the panels are lower, for a page that has little room. */
	readonly lens?: CycleSpan | null;
	/** What is drawn begins here; at the start by default. */
	readonly fromMin?: number;
	/** How long what is drawn lasts; until the end of the day by default. */
	readonly spanMin?: number;
	/** The day as it was before the last change, left as a pale line. */
	readonly before?: Pick<DressingDay, "curve">;
	/** False where there is no room for the care that was given. */
	readonly withCare?: boolean;
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
	const { fromMin, toMin, isPart } = drawnSpan(data);
	const within = (whole: DressingDay): DressingDay =>
		isPart ? dayBetween(whole, fromMin, toMin) : whole;
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
		fromMin,
		toMin,
		title: data.title,
		legend: waterLineLegend(data),
		words: waterLineWords(data),
	});
	const topPx = headPx + 18;
	const high = data.lens === null ? lowPanels : panels;
	const band = { topPx: topPx + 10, ...high.band };
	root.append(waterBand(plot, day.curve, range, band, before));
	const lens =
		data.lens === undefined ? cycleSpan(day, toMin, fromMin) : data.lens;
	if (lens !== null)
		root.append(
			lensMark(
				plot.document,
				plot.x(lens.fromMin),
				plot.x(lens.toMin),
				band.topPx + band.abovePx + band.belowPx + 3,
			),
		);

	let y = band.topPx + band.abovePx + band.belowPx + 19;
	const alarms = eventRows(plot, y, "alarms", alarmEvents(day));
	root.append(alarms.group);
	y += alarms.heightPx + 4;
	const care = data.withCare === false ? [] : careEvents(day);
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
				(change) => change.p90Min >= fromMin && change.p10Min <= toMin,
			),
			...(varies ? { band: data.projection?.canisterLevel } : {}),
		},
		y + 12,
		high.canisterPx,
	);
	root.append(canister.group);
	y += 12 + canister.heightPx + 12;
	if (dressing.regimens.some((regimen) => regimen.fillMl > 0)) {
		root.append(
			sourcePanel(plot, day.curve, dressing.sourceMl, y, high.sourcePx),
		);
		y += high.sourcePx;
	}
	ground.append(timeGround(plot, topPx, y + 4));
	const axis = timeAxis(plot, y + 4);
	root.append(axis.group);
	y += 4 + axis.heightPx;
	if (lens === null) {
		setSize(root, widthPx, y + 2);
		return root;
	}
	y += 24;
	const enlarged = cycleLens(plot, day, lens, range, y);
	root.append(enlarged.group);
	setSize(root, widthPx, y + enlarged.heightPx + 4);
	return root;
}

const panels = {
	band: { abovePx: 60, belowPx: 72 },
	canisterPx: 58,
	sourcePx: 34,
};
const lowPanels = {
	band: { abovePx: 46, belowPx: 52 },
	canisterPx: 50,
	sourcePx: 30,
};

/** The minutes that are drawn, and whether they are less than the day. */
export function drawnSpan({
	fromMin = 0,
	spanMin,
	clock: { horizonMin },
}: Pick<WaterLineData, "clock" | "fromMin" | "spanMin">) {
	const toMin = Math.min(fromMin + (spanMin ?? horizonMin), horizonMin);
	return { fromMin, toMin, isPart: fromMin > 0 || toMin < horizonMin };
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
