import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { exp, ln } from "../../elementary/index.ts";
import type { SoundShift } from "./cause.ts";

/** What the model has no number for and a debrief tells. All of it assumed: placeholders until a site calibrates them. */
export const assumedNumbers = {
	/** Therapies left switched off. */
	"chance.left-off": { value: 0.004, unit: "/h" },
	"chance.bleeding": { value: 0.001, unit: "/h" },
	/** A canister or source that ought to have been changed is passed over, share of rounds. */
	"chance.passed-over": { value: 0.1, unit: "" },
	/** Share of kinks that free themselves. */
	"chance.kink-frees-itself": { value: 0.2, unit: "" },
	/** How much larger a breach is where a corner has come up. */
	"corner.times": { value: 3, unit: "" },
	/** Least share of the port that counts as clogged. */
	"clog.share": { value: 0.5, unit: "" },
	/** Share of clogs that come at any moment of suction and not with a drain. */
	"clog.in-suction": { value: 0.3, unit: "" },
} as const;

export const between = (u: number, from: number, to: number): number => from + (to - from) * u;

/** A moment in the part of the shift in which causes come: late enough to have settled in, early enough to be found. */
export const anyTime = (u: number, { horizonMin }: SoundShift): number => horizonMin * between(u, 0.03, 0.75);

/** A cause that comes at just this moment. */
export const comesAt = (onsetMin: number) => ({ atMin: onsetMin, withinMin: 0, onsetMin });

/** Share of lognormal sizes below a bound, by bisection of the quantile: 50 halvings leave 1e-15. */
export function sizeBelow(bound: number, median: number, sigma: number): number {
	if (sigma === 0) return bound <= median ? 0 : 1;
	const z = ln(bound / median) / sigma;
	let [low, high] = [0, 1];
	for (let i = 0; i < 50; i++) {
		const middle = (low + high) / 2;
		if (normalQuantile(middle, 0, 1) < z) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

/** Lognormal above a bound, by inversion. */
export function sizeAbove(bound: number, u: number, median: number, sigma: number): number {
	const below = sizeBelow(bound, median, sigma);
	if (below >= 1 || sigma === 0) return Math.max(bound, median);
	const share = Math.min(below + u * (1 - below), 1 - 2 ** -53);
	return Math.max(bound, median * exp(sigma * normalQuantile(Math.max(share, 2 ** -54), 0, 1)));
}
