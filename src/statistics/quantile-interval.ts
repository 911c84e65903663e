import binomialQuantile from "@stdlib/stats-base-dists-binomial-quantile";
import type { Histogram } from "./histogram.ts";

/** Bounds of a quantile; null where the values do not reach far enough for one. */
export interface QuantileInterval {
	readonly low: number | null;
	readonly high: number | null;
}

/**
 * Ranks (from 1) of the order statistics between which the p-quantile of the distribution lies with at least 95 %: the
 * number of values below it is binomial (David and Nagaraja, Order Statistics, section 7.1). null: beyond the values.
 */
export function quantileRanks(count: number, p: number): { readonly low: number | null; readonly high: number | null } {
	const low = binomialQuantile(0.025, count, p);
	const high = binomialQuantile(0.975, count, p) + 1;
	return { low: low < 1 ? null : low, high: high > count ? null : high };
}

/** 95 % intervals of the quantiles at `ps`, rising, from order statistics; no shape of the distribution is assumed. */
export function quantileIntervals(histogram: Histogram, ps: readonly number[]): QuantileInterval[] {
	const ranks = ps.map((p) => quantileRanks(histogram.count, p));
	const wanted = [...new Set(ranks.flatMap(({ low, high }) => [low, high]))].filter((rank) => rank !== null);
	wanted.sort((a, b) => a - b);
	const values = histogram.orderStatistics(wanted);
	const at = (rank: number | null) => (rank === null ? null : (values[wanted.indexOf(rank)] ?? null));
	return ranks.map(({ low, high }) => ({ low: at(low), high: at(high) }));
}
