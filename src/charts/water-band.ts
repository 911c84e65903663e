import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import type { DayCurve } from "../analysis/day-result.ts";
import { depthWords, volumeWords } from "./quantity.ts";
import { svgElement } from "./svg-element.ts";
import { type Point, thinnedCurve } from "./thin-curve.ts";
import { rowLabel, type TimePlot } from "./time-plot.ts";

export interface WaterBandSize {
	readonly topPx: number;
	/** Room for liquid above the line, and for suction below it. */
	readonly abovePx: number;
	readonly belowPx: number;
}

/** Scales of the band over a whole day, so that a lens of it keeps the same heights. */
export interface WaterBandRange {
	readonly mostLiquidMl: number;
	readonly mostDepthMmHg: number;
	/** Volumes and depths that are named at the left. */
	readonly liquidTicksMl: readonly number[];
	readonly depthTicksMmHg: readonly number[];
}

/** What a band draws of a day's curve. */
export type WaterCurve = Pick<DayCurve, "atMin" | "depthMmHg" | "liquidMl">;

/** Liquid stands above the line 'vented', suction hangs below it as a hatched band; the day as it was `before` is a pale line. */
export function waterBand(
	plot: TimePlot,
	curve: WaterCurve,
	range: WaterBandRange,
	size: WaterBandSize,
	before?: WaterCurve,
): SVGGElement {
	const { document } = plot;
	const line0 = size.topPx + size.abovePx;
	const liquidY = scaleLinear([0, range.mostLiquidMl], [line0, size.topPx]);
	const depthY = scaleLinear(
		[0, range.mostDepthMmHg],
		[line0, line0 + size.belowPx],
	);
	const buckets = Math.ceil(plot.rightPx - plot.leftPx);
	const points = (values: readonly number[], of = curve): Point[] =>
		thinnedCurve(of.atMin, values, plot.fromMin, plot.toMin, buckets);
	const depth = points(curve.depthMmHg);
	const liquid = points(curve.liquidMl);
	const shape = (y: (value: number) => number) =>
		area<Point>()
			.x((point) => plot.x(point[0]))
			.y0(line0)
			.y1((point) => y(point[1]))
			.digits(2);
	const edge = line<Point>()
		.x((point) => plot.x(point[0]))
		.y((point) => depthY(point[1]))
		.digits(2);
	const trace = (values: readonly number[], y: (value: number) => number) =>
		line<Point>()
			.x((point) => plot.x(point[0]))
			.y((point) => y(point[1]))
			.digits(2)(points(values, before)) ?? "";
	// Over weeks a fill is thinner than a line: an edge keeps it in sight.
	const slender = plot.x(5) - plot.x(0) < 1;
	const group = svgElement(document, "g", {});
	for (const volume of apart(range.liquidTicksMl, liquidY))
		group.append(
			mark(plot, liquidY(volume)),
			rowLabel(plot, liquidY(volume), volumeWords(volume)),
		);
	for (const value of apart(range.depthTicksMmHg, depthY))
		group.append(
			mark(plot, depthY(value)),
			rowLabel(plot, depthY(value), depthWords(value)),
		);
	group.append(
		svgElement(document, "path", {
			fill: `url(#${plot.idPrefix}-hatch)`,
			d: shape(depthY)(depth) ?? "",
		}),
		svgElement(document, "path", {
			class: "suction-edge",
			d: edge(depth) ?? "",
			"stroke-width": slender ? 0 : 1,
		}),
		svgElement(document, "path", {
			class: slender ? "water water-slender" : "water",
			d: shape(liquidY)(liquid) ?? "",
		}),
		...(before === undefined
			? []
			: [trace(before.depthMmHg, depthY), trace(before.liquidMl, liquidY)].map(
					(d) => svgElement(document, "path", { class: "pale", d }),
				)),
		svgElement(document, "line", {
			class: "line",
			x1: plot.leftPx,
			x2: plot.rightPx,
			y1: line0,
			y2: line0,
		}),
		rowLabel(plot, line0, "vented"),
	);
	return group;
}

/** A line of text, px. */
const labelPx = 18;

/** Values whose labels touch neither each other nor 'vented', which stands at 0; the greatest first. */
function apart(
	values: readonly number[],
	y: (value: number) => number,
): number[] {
	const taken = [y(0)];
	return values.filter((value) => {
		const at = y(value);
		if (taken.some((other) => Math.abs(other - at) < labelPx)) return false;
		taken.push(at);
		return true;
	});
}

const mark = (plot: TimePlot, y: number): SVGLineElement =>
	svgElement(plot.document, "line", {
		class: "rule",
		x1: plot.leftPx,
		x2: plot.rightPx,
		y1: y,
		y2: y,
	});

/** Heights and labels that suit curves and their regimens; labels closer than a line of text are left out. */
export function waterBandRange(
	curves: readonly WaterCurve[],
	regimens: readonly { readonly depthMmHg: number; readonly fillMl: number }[],
): WaterBandRange {
	const greatest = (key: "liquidMl" | "depthMmHg"): number =>
		curves.reduce(
			(most, curve) =>
				curve[key].reduce((so, value) => Math.max(so, value), most),
			0,
		);
	const fills = distinct(
		regimens.map((regimen) => regimen.fillMl).filter((fillMl) => fillMl > 0),
	);
	const depths = distinct(regimens.map((regimen) => regimen.depthMmHg));
	const mostLiquidMl = Math.max(greatest("liquidMl"), ...fills, 40) * 1.06;
	const mostDepthMmHg = Math.max(greatest("depthMmHg"), ...depths, 25);
	const liquidTicksMl = spaced(
		[
			...fills,
			...(mostLiquidMl > 1.8 * Math.max(0, ...fills)
				? [niceBelow(mostLiquidMl)]
				: []),
		],
		mostLiquidMl,
	);
	return {
		mostLiquidMl,
		mostDepthMmHg,
		liquidTicksMl,
		depthTicksMmHg: spaced(depths, mostDepthMmHg),
	};
}

const distinct = (values: readonly number[]): number[] =>
	[...new Set(values)].sort((a, b) => b - a);

/** The largest of 1, 2, 5 times a power of ten that is no more than a value. */
function niceBelow(value: number): number {
	const power = 10 ** Math.floor(Math.log10(value));
	const lead = [5, 2, 1].find((candidate) => candidate * power <= value) ?? 1;
	return lead * power;
}

/** Values, greatest first, that lie far enough from each other and from 0 to be labelled. */
function spaced(values: readonly number[], most: number): number[] {
	const kept: number[] = [];
	for (const value of distinct(values))
		if (
			value > most * 0.2 &&
			kept.every((other) => Math.abs(other - value) > most * 0.2)
		)
			kept.push(value);
	return kept;
}
