import { exp, ln } from "../elementary/index.ts";

/**
 * Air under the drape, with `p` the suction depth (mmHg below ambient):
 *
 *     dp/dt = (Patm/Vair)·(S − S·p/pmax − C·p)
 *
 * for a pump of free flow S that falls to nothing at pmax, and a leak C·p. First-order, so depth runs from p0
 * towards p∞ with the time constant τ: p(t) = p∞ + (p0 − p∞)·e^(−t/τ). With C = 0 and pmax = Patm this is the
 * pump-down t = (V/S)·ln(P0/P1) of vacuum practice.
 */

/** p∞ = S/(S/pmax + C), mmHg. `flow` L/min at no suction, `maxDepth` mmHg, `leak` L/min/mmHg. */
export function equilibriumDepth(flow: number, maxDepth: number, leak: number): number {
	return flow / (flow / maxDepth + leak);
}

/** τ = Vair/(Patm·(S/pmax + C)), min. `air` L, `ambient` mmHg. With a stopped pump S = 0 and depth decays towards 0. */
export function timeConstant(air: number, ambient: number, flow: number, maxDepth: number, leak: number): number {
	return air / (ambient * (flow / maxDepth + leak));
}

/** Depth after `minutes` of an approach from `from`, mmHg. */
export function depthAfter(minutes: number, from: number, towards: number, tau: number): number {
	return towards + (from - towards) * exp(-minutes / tau);
}

/** t(p) = τ·ln((p∞ − p0)/(p∞ − p)), min; Infinity where `to` is not reached. `to` lies ahead, between `from` and `towards`. */
export function timeToDepth(from: number, to: number, towards: number, tau: number): number {
	if (to === from) return 0;
	const ratio = (towards - from) / (towards - to);
	return ratio >= 1 ? tau * ln(ratio) : Number.POSITIVE_INFINITY;
}

/** ∫p dt over `minutes` of an approach: p∞·t + (p0 − p∞)·τ·(1 − e^(−t/τ)), mmHg·min. */
export function depthIntegral(minutes: number, from: number, towards: number, tau: number): number {
	if (tau === Number.POSITIVE_INFINITY) return from * minutes;
	return towards * minutes + (from - towards) * tau * (1 - exp(-minutes / tau));
}

/** Flow of air through a leak at a depth, L/min: C·p. */
export function leakFlow(leak: number, depth: number): number {
	return leak * depth;
}

/** Flow that the pump moves at a depth, L/min: S·(1 − p/pmax). */
export function pumpFlow(flow: number, maxDepth: number, depth: number): number {
	return flow * (1 - depth / maxDepth);
}

/** Whether a pump at full flow holds `depth` against the leak: Q(p) ≥ C·p. */
export function canHold(flow: number, maxDepth: number, leak: number, depth: number): boolean {
	return pumpFlow(flow, maxDepth, depth) >= leakFlow(leak, depth);
}
