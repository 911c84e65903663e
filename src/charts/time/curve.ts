import { type Area, area, type Line, line } from "d3-shape";
import type { TimePlot } from "./time-plot.ts";

/** A point of a curve: minutes and a value. */
export type Point = readonly [atMin: number, value: number];

/**
 * The points of a curve between two times, its ends interpolated, thinned to at most `4 · buckets` where there are more:
 * each bucket of time keeps its first, least, greatest and last point, so that no spike is lost.
 */
export function thinnedCurve(
	atMin: readonly number[],
	values: readonly number[],
	fromMin: number,
	toMin: number,
	buckets: number,
): Point[] {
	const points = clipped(atMin, values, fromMin, toMin);
	if (points.length <= 4 * buckets) return points;
	const thinned: Point[] = [];
	const width = (toMin - fromMin) / buckets;
	let next = 0;
	for (let bucket = 0; bucket < buckets; bucket++) {
		const end = bucket === buckets - 1 ? Number.POSITIVE_INFINITY : fromMin + (bucket + 1) * width;
		const first = next;
		while (next < points.length && points[next][0] < end) next++;
		thinned.push(...extremes(points.slice(first, next)));
	}
	return thinned;
}

/** The points of a curve on a time axis, as many as its width can show; fewer where a bucket is wider than a px. */
export const pointsOn = (
	{ fromMin, toMin, leftPx, rightPx }: TimePlot,
	atMin: readonly number[],
	values: readonly number[],
	bucketPx = 1,
): Point[] => thinnedCurve(atMin, values, fromMin, toMin, Math.ceil((rightPx - leftPx) / bucketPx));

type ToPx = (value: number) => number;

export const lineThrough = (x: ToPx, y: ToPx): Line<Point> =>
	line<Point>()
		.x((point) => x(point[0]))
		.y((point) => y(point[1]))
		.digits(2);

/** What lies between zero and them. */
export const areaFromZero = (x: ToPx, y: ToPx, digits = 2): Area<Point> =>
	area<Point>()
		.x((point) => x(point[0]))
		.y0(y(0))
		.y1((point) => y(point[1]))
		.digits(digits);

/** First, least, greatest and last, in order of time, none twice. */
function extremes(points: readonly Point[]): Point[] {
	if (points.length <= 4) return [...points];
	let [least, greatest] = [0, 0];
	points.forEach(([, value], index) => {
		if (value < points[least][1]) least = index;
		if (value > points[greatest][1]) greatest = index;
	});
	const kept = new Set([0, least, greatest, points.length - 1]);
	return points.filter((_, index) => kept.has(index));
}

function clipped(atMin: readonly number[], values: readonly number[], fromMin: number, toMin: number): Point[] {
	const points: Point[] = [];
	let before: Point | null = null;
	for (let index = 0; index < atMin.length; index++) {
		const point: Point = [atMin[index], values[index]];
		if (point[0] < fromMin) {
			before = point;
			continue;
		}
		if (points.length === 0 && before !== null && point[0] > fromMin)
			points.push([fromMin, between(before, point, fromMin)]);
		const last: Point | null = points.at(-1) ?? before;
		if (point[0] > toMin) {
			if (last !== null) points.push([toMin, between(last, point, toMin)]);
			break;
		}
		points.push(point);
	}
	return points;
}

/** Value at a time on the straight line between two points. */
const between = (a: Point, b: Point, atMin: number): number =>
	b[0] === a[0] ? b[1] : a[1] + ((b[1] - a[1]) * (atMin - a[0])) / (b[0] - a[0]);
