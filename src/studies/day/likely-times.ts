import type { LikelyTime } from "../../results/index.ts";
import type { Histogram } from "../../statistics/index.ts";

/** Times are gathered in stretches of this many minutes. */
const stretchMin = 10;
/** A stretch belongs to a window where it holds at least this part of what the fullest stretch holds … */
const partOfFullest = 0.25;
/** … and a window is named where it holds at least this share of all days. */
const leastShare = 0.1;
const mostWindows = 3;

/**
 * The likeliest windows of a time that varies, in order of time: neighbouring ten-minute stretches that hold at least a
 * quarter of what the fullest one holds, told where a tenth of the days or more fall into them, the three likeliest at
 * most. A window runs from the earliest to the latest time that fell into it. `days` is the number of replications.
 */
export function likelyTimes(times: Histogram, days: number): LikelyTime[] {
	const stretches = times.gathered(stretchMin);
	const fullest = Math.max(0, ...stretches.map(({ count }) => count));
	const windows: { start: number; end: number; last: number; count: number }[] = [];
	for (const { bin, count, least, greatest } of stretches) {
		if (count < partOfFullest * fullest) continue;
		const window = windows.at(-1);
		if (window !== undefined && window.last === bin - 1) {
			window.end = greatest;
			window.last = bin;
			window.count += count;
		} else windows.push({ start: least, end: greatest, last: bin, count });
	}
	return windows
		.filter(({ count }) => count >= leastShare * days)
		.sort((a, b) => b.count - a.count || a.start - b.start)
		.slice(0, mostWindows)
		.sort((a, b) => a.start - b.start)
		.map(({ start, end, count }) => ({ startMin: start, endMin: end, probability: count / days }));
}
