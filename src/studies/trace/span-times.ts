import { ln } from "../../elementary/index.ts";
import type { DressingProcess } from "../../therapy/index.ts";

/** What is left of the way of a curve at each time at which it is sampled: equal steps at first, then halves. */
const left = [
	...[7, 6, 5, 4, 3, 2, 1.5, 1].map((eighths) => eighths / 8),
	...[16, 32, 64, 128, 256].map((part) => 1 / part),
];
/** The same in time constants. */
const after = left.map((share) => -ln(share));

/**
 * Times at which a span of a dressing is sampled: its ends, and where depth runs in a curve enough between them that
 * straight lines stray from it by less than a hundredth of its way.
 */
export function spanTimes(process: DressingProcess, start: number, end: number): number[] {
	const { tau } = process.air;
	const between =
		tau === Number.POSITIVE_INFINITY
			? []
			: after.map((constants) => start + tau * constants).filter((at) => at > start && at < end);
	return [start, ...between, end];
}
