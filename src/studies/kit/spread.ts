import type { CountSpread, Spread } from "../../results/index.ts";
import type { FrequencyTable, Histogram, Moments } from "../../statistics/index.ts";
import { halfWidth, quantileIntervals } from "../../statistics/index.ts";

export const percentiles = [0.1, 0.5, 0.9];

/** Mean with its half-width, and P10, P50, P90 with their intervals. */
export function spread(histogram: Histogram, moments: Moments): Spread {
	const [p10, p50, p90] = histogram.quantiles(percentiles);
	return {
		mean: moments.mean,
		halfWidth95: halfWidth(moments),
		p10,
		p50,
		p90,
		quantiles95: quantileIntervals(histogram, percentiles),
	};
}

/** Mean, and P10, P50, P90, of whole numbers. */
export function countSpread(counts: FrequencyTable): CountSpread {
	const [p10, p50, p90] = counts.quantiles(percentiles);
	return { mean: counts.mean, p10, p50, p90 };
}
