import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import type {
	ChangeTime,
	DayCurve,
	LevelBand,
} from "../analysis/day-result.ts";
import { timeRange } from "./clock.ts";
import { percentWords } from "./probability.ts";
import { volumeWords } from "./quantity.ts";
import { stackedRows } from "./stack-labels.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { type Point, thinnedCurve } from "./thin-curve.ts";
import { rowLabel, type TimePlot } from "./time-plot.ts";

export interface CanisterData {
	readonly canisterMl: number;
	/** Share of its size at which a round changes it. */
	readonly roundShare: number;
	/** The traced day; absent where only the projection is drawn. */
	readonly curve?: DayCurve;
	/** Absent, or of one replication, where nothing varies. */
	readonly band?: LevelBand;
	readonly changes: readonly ChangeTime[];
}

/** A change that occurs in fewer of the replications than this is not drawn. */
const leastProbability = 0.05;
const rowPx = 19;

/** The canister's climb with the band that 8 days in 10 keep to, the level of rounds, and when each change falls. */
export function canisterPanel(
	plot: TimePlot,
	data: CanisterData,
	topPx: number,
	panelPx: number,
) {
	const { document } = plot;
	const y = scaleLinear([0, data.canisterMl], [topPx + panelPx, topPx]);
	const group = svgElement(document, "g", {});
	const level = data.roundShare * data.canisterMl;
	for (const value of [0, data.canisterMl])
		group.append(
			svgElement(document, "line", {
				class: "rule",
				x1: plot.leftPx,
				x2: plot.rightPx,
				y1: y(value),
				y2: y(value),
			}),
		);
	if (data.band !== undefined) group.append(...bandShapes(plot, data.band, y));
	if (data.curve !== undefined)
		group.append(...tracedShapes(plot, data.curve, y, data.band === undefined));
	group.append(
		svgElement(document, "line", {
			class: "level",
			x1: plot.leftPx,
			x2: plot.rightPx,
			y1: y(level),
			y2: y(level),
		}),
		rowLabel(plot, y(data.canisterMl) - 3, volumeWords(data.canisterMl)),
		rowLabel(plot, y(level) + 5, `${percentWords(data.roundShare)}: round`),
		rowLabel(plot, y(0) - 4, "canister"),
	);
	const windows = changeWindows(plot, data.changes, topPx + panelPx + 6);
	group.append(windows.group);
	return {
		group,
		heightPx: panelPx + (windows.heightPx === 0 ? 0 : windows.heightPx + 6),
	};
}

function bandShapes(
	plot: TimePlot,
	band: LevelBand,
	y: (value: number) => number,
): SVGPathElement[] {
	const at = band.p50Ml.map((_, index) => index * band.stepMin);
	const buckets = Math.ceil((plot.rightPx - plot.leftPx) / 2);
	const low = thinnedCurve(at, band.p10Ml, plot.fromMin, plot.toMin, buckets);
	const high = thinnedCurve(at, band.p90Ml, plot.fromMin, plot.toMin, buckets);
	const middle = thinnedCurve(
		at,
		band.p50Ml,
		plot.fromMin,
		plot.toMin,
		buckets,
	);
	const path = line<Point>()
		.x((point) => plot.x(point[0]))
		.y((point) => y(point[1]))
		.digits(2);
	const upper = path(high) ?? "";
	const lower = path(low.toReversed()) ?? "";
	const shape = (className: string, d: string): SVGPathElement =>
		svgElement(plot.document, "path", { class: className, d });
	const outline = upper === "" ? "" : `${upper}L${lower.slice(1)}Z`;
	return [
		shape("canister-band", outline),
		shape("band-edge", upper),
		shape("band-edge", path(low) ?? ""),
		shape("pale", path(middle) ?? ""),
	];
}

function tracedShapes(
	plot: TimePlot,
	curve: DayCurve,
	y: (value: number) => number,
	filled: boolean,
): SVGPathElement[] {
	const points = thinnedCurve(
		curve.atMin,
		curve.canisterMl,
		plot.fromMin,
		plot.toMin,
		Math.ceil(plot.rightPx - plot.leftPx),
	);
	const ground = area<Point>()
		.x((point) => plot.x(point[0]))
		.y0(y(0))
		.y1((point) => y(point[1]))
		.digits(2);
	const edge = ground.lineY1();
	const shapes = [
		svgElement(plot.document, "path", {
			class: "canister-edge",
			d: edge(points) ?? "",
		}),
	];
	return filled
		? [
				svgElement(plot.document, "path", {
					class: "canister",
					d: ground(points) ?? "",
				}),
				...shapes,
			]
		: shapes;
}

/** One bar a change, from P10 to P90 with a tick at P50, its label beside it, stacked; counted instead where there are many. */
function changeWindows(
	plot: TimePlot,
	changes: readonly ChangeTime[],
	topPx: number,
) {
	const { document } = plot;
	const group = svgElement(document, "g", {});
	const likely = changes.filter(
		(change) => change.probabilityWithinHorizon >= leastProbability,
	);
	if (likely.length === 0) return { group, heightPx: 0 };
	const crowded = likely.length > 4;
	const places = likely.map((change) => {
		const from = plot.x(Math.max(change.p10Min, plot.fromMin));
		const to = Math.max(plot.x(Math.min(change.p90Min, plot.toMin)), from + 3);
		const label = crowded ? "" : windowLabel(change, plot);
		const wide = label === "" ? 0 : textWidth(label, 11.5) + 8;
		const onLeft = to + wide > plot.rightPx + 12 && from - wide > plot.leftPx;
		return {
			change,
			from,
			to,
			label,
			onLeft,
			left: onLeft ? from - wide : from,
			right: onLeft ? to : to + wide,
		};
	});
	// A label with room on neither side of its bar has a row of its own.
	const apart = places.flatMap(({ onLeft, right, label }, index) => {
		const wide = textWidth(label, 11.5);
		return onLeft || label === "" || right <= plot.rightPx + 12
			? []
			: [{ index, left: plot.rightPx + 8 - wide, right: plot.rightPx + 8 }];
	});
	const isApart = (index: number) => apart.some((one) => one.index === index);
	const bars = places.map((place, index) =>
		isApart(index) ? { left: place.from, right: place.to } : place,
	);
	const rows = stackedRows([...bars, ...apart], 8).map((row) =>
		Math.min(row, 5),
	);
	apart.forEach(({ index, right }, at) => {
		const middle = topPx + (rows[places.length + at] ?? 0) * rowPx + 9;
		group.append(
			svgElement(
				document,
				"text",
				{
					class: "small canister-text",
					x: right,
					y: middle + 4,
					"text-anchor": "end",
				},
				places[index]?.label ?? "",
			),
		);
	});
	places.forEach((place, index) => {
		const middle = topPx + (rows[index] ?? 0) * rowPx + 9;
		const bar = svgElement(
			document,
			"g",
			{},
			svgElement(document, "title", {}, windowLabel(place.change, plot)),
		);
		const { p50Min } = place.change;
		bar.append(
			svgElement(document, "path", {
				class: "canister-edge",
				d: `M${place.from.toFixed(2)},${middle - 4}v8m0,-4H${place.to.toFixed(2)}m0,-4v8`,
			}),
		);
		if (p50Min >= plot.fromMin && p50Min <= plot.toMin)
			bar.append(
				svgElement(document, "circle", {
					class: "canister-mark",
					cx: plot.x(p50Min),
					cy: middle,
					r: 3.5,
				}),
			);
		group.append(bar);
		if (place.label === "" || isApart(index)) return;
		const at = place.onLeft
			? { x: place.from - 6, "text-anchor": "end" }
			: { x: place.to + 6, "text-anchor": "start" };
		group.append(
			svgElement(
				document,
				"text",
				{ class: "small canister-text", ...at, y: middle + 4 },
				place.label,
			),
		);
	});
	const [first, second] = crowded ? ["changes", ""] : ["likely change", ""];
	group.append(rowLabel(plot, topPx + 9, first ?? "", second));
	const isTwoLines = second !== "";
	return {
		group,
		heightPx: Math.max((Math.max(...rows) + 1) * rowPx, isTwoLines ? 26 : 0),
	};
}

function windowLabel(change: ChangeTime, plot: TimePlot): string {
	const when = timeRange(change.p10Min, change.p90Min, plot.clock);
	const chance =
		change.probabilityWithinHorizon < 0.95
			? ` (if at all: ${percentWords(change.probabilityWithinHorizon)})`
			: "";
	return `change ${change.ordinal}: ${when}${chance}`;
}
