import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import studentQuantile from "@stdlib/stats-base-dists-t-quantile";
import { type Moments, variance } from "./moments.ts";

const confidence = 0.95;

/** Half-width of Student's 95 % interval of the mean: t(0.975, n − 1)·s/√n; null below two values. */
export function halfWidth(moments: Moments): number | null {
	if (moments.count < 2) return null;
	const t = studentQuantile((1 + confidence) / 2, moments.count - 1);
	return t * Math.sqrt(Math.max(0, variance(moments)) / moments.count);
}

export interface MeanInterval {
	readonly low: number;
	readonly high: number;
}

/** Student's 95 % interval of the mean; null below two values. */
export function meanInterval(moments: Moments): MeanInterval | null {
	const half = halfWidth(moments);
	return half === null ? null : { low: moments.mean - half, high: moments.mean + half };
}

const z = normalQuantile((1 + confidence) / 2, 0, 1);

/** Wilson's 95 % interval of a probability of which `hits` of `count` were seen (Wilson 1927). */
export function wilson(hits: number, count: number): { readonly low: number; readonly high: number } {
	const p = hits / count;
	const scale = 1 + (z * z) / count;
	const centre = (p + (z * z) / (2 * count)) / scale;
	const half = (z / scale) * Math.sqrt((p * (1 - p)) / count + (z * z) / (4 * count * count));
	return { low: hits === 0 ? 0 : centre - half, high: hits === count ? 1 : centre + half };
}
