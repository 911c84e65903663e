import { scaleLinear } from "d3-scale";
import type { ChangeTime, DayCurve, LevelBand } from "../../results/index.ts";
import { percentWords, timeRange, volumeWords } from "../../words/index.ts";
import { textWidth } from "../kit/fitted-text.ts";
import { rowCount, stackedRows } from "../kit/label-places.ts";
import { barPath } from "../kit/marks.ts";
import { circle, group, path, type Shape, text, tooltip } from "../kit/shape.ts";
import type { Scale } from "../kit/value-axis.ts";
import { smallPx } from "../theme/letters.ts";
import { areaFromZero, lineThrough, pointsOn } from "./curve.ts";
import { plotLine, rowLabel, type TimePlot } from "./time-plot.ts";

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
export const leastProbability = 0.05;

/** ' (if at all: 60 %)' where a change is not as good as certain. */
export const ifAtAll = (probability: number): string =>
	probability < 0.95 ? ` (if at all: ${percentWords(probability)})` : "";

const rowPx = 19;

/** The canister's climb with the band that 8 days in 10 keep to, the level of rounds, and when each change falls. */
export function canisterPanel(plot: TimePlot, data: CanisterData, topPx: number, panelPx: number) {
	const { canisterMl, band, curve } = data;
	const y = scaleLinear([0, canisterMl], [topPx + panelPx, topPx]);
	const levelPx = y(data.roundShare * canisterMl);
	const windows = changeWindows(plot, data.changes, topPx + panelPx + 6);
	const panel = group(
		plotLine(plot, "rule", y(0)),
		plotLine(plot, "rule", y(canisterMl)),
		...(band === undefined ? [] : bandShapes(plot, band, y)),
		...(curve === undefined ? [] : tracedShapes(plot, curve, y, band === undefined)),
		plotLine(plot, "level", levelPx),
		rowLabel(plot, y(canisterMl) - 3, volumeWords(canisterMl)),
		rowLabel(plot, levelPx + 5, `${percentWords(data.roundShare)}: round`),
		rowLabel(plot, y(0) - 4, "canister"),
		windows.group,
	);
	return { group: panel, heightPx: panelPx + (windows.heightPx === 0 ? 0 : windows.heightPx + 6) };
}

function bandShapes(plot: TimePlot, band: LevelBand, y: Scale): Shape[] {
	const at = band.p50Ml.map((_, index) => index * band.stepMin);
	const points = (values: readonly number[]) => pointsOn(plot, at, values, 2);
	const line = lineThrough(plot.x, y);
	const low = points(band.p10Ml);
	const upper = line(points(band.p90Ml)) ?? "";
	const lower = line(low.toReversed()) ?? "";
	const whole = path("canister-band", upper === "" ? "" : `${upper}L${lower.slice(1)}Z`);
	const edges = [path("band-edge", upper), path("band-edge", line(low))];
	return [whole, ...edges, path("pale", line(points(band.p50Ml)))];
}

function tracedShapes(plot: TimePlot, curve: DayCurve, y: Scale, filled: boolean): (Shape | null)[] {
	const points = pointsOn(plot, curve.atMin, curve.canisterMl);
	const area = areaFromZero(plot.x, y);
	return [filled ? path("canister", area(points)) : null, path("canister-edge", area.lineY1()(points))];
}

/** One bar a change, from P10 to P90 with a tick at P50, its label beside it, stacked; counted instead where there are many. */
function changeWindows(plot: TimePlot, changes: readonly ChangeTime[], topPx: number) {
	const windows = group();
	const likely = changes.filter((change) => change.probabilityWithinHorizon >= leastProbability);
	if (likely.length === 0) return { group: windows, heightPx: 0 };
	const crowded = likely.length > 4;
	const places = likely.map((change) => {
		const from = plot.x(Math.max(change.p10Min, plot.fromMin));
		const to = Math.max(plot.x(Math.min(change.p90Min, plot.toMin)), from + 3);
		const label = crowded ? "" : windowLabel(change, plot);
		const wide = label === "" ? 0 : textWidth(label, smallPx) + 8;
		const onLeft = to + wide > plot.rightPx + 12 && from - wide > plot.leftPx;
		// A label with room on neither side of its bar has a row of its own.
		const isApart = !onLeft && label !== "" && to + wide > plot.rightPx + 12;
		const bar = { left: from, right: to };
		const whole = onLeft ? { ...bar, left: from - wide } : { ...bar, right: to + wide };
		return { change, label, onLeft, isApart, bar, extent: isApart ? bar : whole };
	});
	const endPx = plot.rightPx + 8;
	const apart = places.filter(({ isApart }) => isApart);
	const apartExtents = apart.map(({ label }) => ({ left: endPx - textWidth(label, smallPx), right: endPx }));
	const rows = stackedRows([...places.map(({ extent }) => extent), ...apartExtents], 8).map((row) => Math.min(row, 5));
	const middleOf = (index: number): number => topPx + (rows[index] ?? 0) * rowPx + 9;
	apart.forEach(({ label }, index) => {
		const y = middleOf(places.length + index) + 4;
		windows.append(text({ class: "small canister-text", x: endPx, y, "text-anchor": "end" }, label));
	});
	places.forEach(({ change, label, onLeft, isApart, bar: { left, right } }, index) => {
		const middle = middleOf(index);
		const { p50Min } = change;
		const isShown = p50Min >= plot.fromMin && p50Min <= plot.toMin;
		const range = path("canister-edge", barPath(left, right, middle, 4));
		const dot = isShown ? circle("canister-mark", plot.x(p50Min), middle, 3.5) : null;
		windows.append(group(tooltip(windowLabel(change, plot)), range, dot));
		if (label === "" || isApart) return;
		const at = onLeft ? { x: left - 6, "text-anchor": "end" } : { x: right + 6, "text-anchor": "start" };
		windows.append(text({ class: "small canister-text", ...at, y: middle + 4 }, label));
	});
	windows.append(rowLabel(plot, topPx + 9, crowded ? "changes" : "likely change"));
	return { group: windows, heightPx: rowCount(rows) * rowPx };
}

function windowLabel(change: ChangeTime, plot: TimePlot): string {
	const when = timeRange(change.p10Min, change.p90Min, plot.clock);
	return `change ${change.ordinal}: ${when}${ifAtAll(change.probabilityWithinHorizon)}`;
}
