import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { exp, ln } from "../elementary/index.ts";
import type { Substream } from "./substream.ts";

/** Unit exponential, by inversion: −ln(1 − u). One number of the stream; 0 ≤ value < 37. */
export function exponential(stream: Substream): number {
	const u = stream.uniform();
	return u === 0 ? 0 : -ln(1 - u);
}

/** Standard normal, by inversion, so that one number of the stream gives one draw and the draw rises with it. */
export function normal(stream: Substream): number {
	// Off the ends by half a step of 2^-53: never 0, never 1.
	return normalQuantile(Math.min(stream.uniform() + 2 ** -54, 1 - 2 ** -53), 0, 1);
}

/** Lognormal with the given median and sigma of the logarithm: median·exp(sigma·N). */
export function lognormal(stream: Substream, median: number, sigma: number): number {
	return median * exp(sigma * normal(stream));
}

/** Gamma of shape 2 with the given mean: the sum of two exponentials. Two numbers of the stream. */
export function gamma2(stream: Substream, mean: number): number {
	return 0.5 * mean * (exponential(stream) + exponential(stream));
}
