import { exp, ln } from "../elementary/index.ts";
import type { DressingProcess } from "../therapy/index.ts";

/** Steps in a curved span, and the time constants after which a curve is as good as straight. */
const steps = 8;
const bentFor = 6;

/**
 * Times at which a span of a dressing is sampled, so that straight lines between them are within a hair of the curve:
 * its ends, and where depth runs in a curve at equal steps of depth. Between them a depth that has come to rest is straight.
 */
export function spanTimes(
	process: DressingProcess,
	start: number,
	end: number,
): number[] {
	const { tau } = process.air;
	const times = [start];
	if (tau !== Number.POSITIVE_INFINITY) {
		const bent = Math.min(end - start, bentFor * tau);
		const way = 1 - exp(-bent / tau);
		for (let i = 1; i < steps; i++)
			times.push(start - tau * ln(1 - (i / steps) * way));
		if (start + bent < end) times.push(start + bent);
	}
	times.push(end);
	return times;
}
