import type { Spread } from "./day-result.ts";
import type { Histogram } from "./histogram.ts";
import { halfWidth } from "./interval.ts";
import type { Moments } from "./moments.ts";
import { quantileIntervals } from "./quantile-interval.ts";

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
