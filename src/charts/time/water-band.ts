import { scaleLinear } from "d3-scale";
import type { DayCurve, RegimenSummary } from "../../results/index.ts";
import { depthWords, volumeWords } from "../../words/index.ts";
import { group, path, type Shape, shape } from "../kit/shape.ts";
import type { Scale } from "../kit/value-axis.ts";
import { areaFromZero, lineThrough, type Point, pointsOn } from "./curve.ts";
import { plotLine, rowLabel, type TimePlot } from "./time-plot.ts";

interface WaterBandSize {
	readonly topPx: number;
	/** Room for liquid above the line, and for suction below it. */
	readonly abovePx: number;
	readonly belowPx: number;
}

/** Scales of the band over a whole day, and what is named at its left, so that a lens of it keeps the same heights. */
export type WaterBandRange = ReturnType<typeof waterBandRange>;

type WaterCurve = Pick<DayCurve, "atMin" | "depthMmHg" | "liquidMl">;

/** Liquid stands above the line 'vented', suction hangs below it as a hatched band; the day as it was `before` is a pale line. */
export function waterBand(
	plot: TimePlot,
	curve: WaterCurve,
	range: WaterBandRange,
	size: WaterBandSize,
	before?: WaterCurve,
): Shape {
	const linePx = size.topPx + size.abovePx;
	const liquidY = scaleLinear([0, range.mostLiquidMl], [linePx, size.topPx]);
	const depthY = scaleLinear([0, range.mostDepthMmHg], [linePx, linePx + size.belowPx]);
	const depth = lineThrough(plot.x, depthY);
	const liquid = lineThrough(plot.x, liquidY);
	const points = (of: WaterCurve, key: "depthMmHg" | "liquidMl"): Point[] => pointsOn(plot, of.atMin, of[key]);
	const [depths, liquids] = [points(curve, "depthMmHg"), points(curve, "liquidMl")];
	// Over weeks a fill is thinner than a line: an edge keeps it in sight.
	const slender = plot.x(5) - plot.x(0) < 1;
	const mark = (y: number, words: string) => [plotLine(plot, "rule", y), rowLabel(plot, y, words)];
	return group(
		...labelled(range.liquidTicksMl, liquidY).flatMap((volume) => mark(liquidY(volume), volumeWords(volume))),
		...labelled(range.depthTicksMmHg, depthY).flatMap((value) => mark(depthY(value), depthWords(value))),
		shape("path", { fill: plot.hatch, d: areaFromZero(plot.x, depthY)(depths) ?? "" }),
		path("suction-edge", depth(depths), { "stroke-width": slender ? 0 : 1 }),
		path(slender ? "water water-slender" : "water", areaFromZero(plot.x, liquidY)(liquids)),
		before ? path("pale", depth(points(before, "depthMmHg"))) : null,
		before ? path("pale", liquid(points(before, "liquidMl"))) : null,
		plotLine(plot, "line", linePx),
		rowLabel(plot, linePx, "vented"),
	);
}

const labelPx = 18;

/** Values, the greatest first, of which none comes near another that is kept, nor 0, where the band has its line. */
function apart(values: readonly number[], areNear: (a: number, b: number) => boolean): number[] {
	const taken = [0];
	for (const value of distinct(values)) if (!taken.some((other) => areNear(other, value))) taken.push(value);
	return taken.slice(1);
}

/** Those whose labels touch neither each other nor 'vented'. */
const labelled = (values: readonly number[], y: Scale): number[] =>
	apart(values, (a, b) => Math.abs(y(a) - y(b)) < labelPx);

/** Those that lie a fifth of the band from each other. */
const spaced = (values: readonly number[], most: number): number[] =>
	apart(values, (a, b) => Math.abs(a - b) <= most * 0.2);

/** How a regimen sets the unit. */
type Settings = Pick<RegimenSummary, "depthMmHg" | "fillMl">;

/** Heights and labels that suit curves and their regimens; labels closer than a line of text are left out. */
export function waterBandRange(curves: readonly WaterCurve[], regimens: readonly Settings[]) {
	const greatest = (key: "liquidMl" | "depthMmHg"): number =>
		curves.reduce((most, curve) => curve[key].reduce((so, value) => Math.max(so, value), most), 0);
	const fills = distinct(regimens.map((regimen) => regimen.fillMl).filter((fillMl) => fillMl > 0));
	const depths = distinct(regimens.map((regimen) => regimen.depthMmHg));
	const mostLiquidMl = Math.max(greatest("liquidMl"), ...fills, 40) * 1.06;
	const mostDepthMmHg = Math.max(greatest("depthMmHg"), ...depths, 25);
	const above = mostLiquidMl > 1.8 * Math.max(0, ...fills) ? [niceBelow(mostLiquidMl)] : [];
	const liquidTicksMl = spaced([...fills, ...above], mostLiquidMl);
	return { mostLiquidMl, mostDepthMmHg, liquidTicksMl, depthTicksMmHg: spaced(depths, mostDepthMmHg) };
}

const distinct = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => b - a);

/** The largest of 1, 2, 5 times a power of ten that is no more than a value. */
function niceBelow(value: number): number {
	const power = 10 ** Math.floor(Math.log10(value));
	const lead = [5, 2, 1].find((candidate) => candidate * power <= value) ?? 1;
	return lead * power;
}
