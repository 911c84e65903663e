import { depthAfter, depthIntegral, timeToDepth } from "./air.ts";
import { bracketedRoot } from "./root.ts";

/**
 * Liquid in a dressing while it drains: dL/dt = e − g·p(t), with conductance g = G0·a² (a the open share of port and
 * line), so L(t) = L0 + e·t − g·∫p dt. Depth p runs as in `air.ts`.
 */
export interface Draining {
	/** Liquid at the start, mL. */
	readonly level: number;
	/** Inflow e, mL/min. */
	readonly inflow: number;
	/** Conductance g, mL/min/mmHg. */
	readonly conductance: number;
	/** Depth at the start, the depth it runs towards, and its time constant. */
	readonly from: number;
	readonly towards: number;
	readonly tau: number;
}

/** Conductance of a partly open port, mL/min/mmHg: G0·a². */
export function conductance(clear: number, openShare: number): number {
	return clear * openShare * openShare;
}

/** What has left through the port after `minutes`, mL: g·∫p dt. */
export function drainedAfter(minutes: number, d: Draining): number {
	return d.conductance * depthIntegral(minutes, d.from, d.towards, d.tau);
}

/** L(t), mL. */
export function levelAfter(minutes: number, d: Draining): number {
	return d.level + d.inflow * minutes - drainedAfter(minutes, d);
}

/**
 * When the level first falls to `to`, min; Infinity where it does not within `limit` min. `level` is at or above `to`.
 * A level at `to` that is about to rise (p below e/g, depth growing) is looked for after its maximum; one that
 * falls while the depth fades can only reach `to` before its minimum at p = e/g. Solved to 1e-10 min.
 */
export function timeToLevel(to: number, d: Draining, limit: number): number {
	if (d.conductance === 0) return Number.POSITIVE_INFINITY;
	const balance = d.inflow / d.conductance;
	if (d.tau === Number.POSITIVE_INFINITY || d.from === d.towards) {
		const fall = d.conductance * (d.from - balance);
		const time = fall > 0 ? (d.level - to) / fall : Number.POSITIVE_INFINITY;
		return time <= limit ? time : Number.POSITIVE_INFINITY;
	}
	// Not even the deepest suction of the span could take enough away.
	if (d.conductance * Math.max(d.from, d.towards) * limit < d.level - to) return Number.POSITIVE_INFINITY;
	let low = 0;
	let high = limit;
	if (d.towards > d.from) {
		// The level rises, if at all, before it falls: where it ends above, it has not been there.
		if (limit < Number.POSITIVE_INFINITY && levelAfter(limit, d) > to) return Number.POSITIVE_INFINITY;
		if (d.from < balance) low = timeToDepth(d.from, balance, d.towards, d.tau);
		// A port that never beats the inflow leaves nothing to find.
		if (low >= limit) return Number.POSITIVE_INFINITY;
	} else {
		if (d.from <= balance) return Number.POSITIVE_INFINITY;
		if (d.towards < balance) high = Math.min(limit, timeToDepth(d.from, balance, d.towards, d.tau));
	}
	return fallsTo(to, d, low, high);
}

/** When a level that falls from `low` to `high` min reaches `to`; `high` Infinity: it falls for ever. */
function fallsTo(to: number, d: Draining, low: number, high: number): number {
	const excess = (t: number) => levelAfter(t, d) - to;
	const end = high === Number.POSITIVE_INFINITY ? beyond(excess, Math.max(low, d.tau)) : high;
	if (excess(end) > 0) return Number.POSITIVE_INFINITY;
	if (excess(low) <= 0) return low;
	const slope = (t: number) => d.inflow - d.conductance * depthAfter(t, d.from, d.towards, d.tau);
	return bracketedRoot(excess, slope, low, end, 1e-10);
}

/** A time at which the level has certainly fallen far enough. */
function beyond(excess: (t: number) => number, first: number): number {
	let t = first;
	for (let i = 0; i < 60 && excess(t) > 0; i++) t *= 2;
	return t;
}

/** When `volume` mL have left through the port, min; Infinity where not within `limit` min. */
export function timeToDrained(volume: number, d: Draining, limit: number): number {
	if (volume <= 0) return 0;
	if (d.conductance === 0) return Number.POSITIVE_INFINITY;
	if (d.tau === Number.POSITIVE_INFINITY || d.from === d.towards) {
		const time = volume / (d.conductance * d.from);
		return time <= limit ? time : Number.POSITIVE_INFINITY;
	}
	const lacking = (t: number) => volume - drainedAfter(t, d);
	const slope = (t: number) => -d.conductance * depthAfter(t, d.from, d.towards, d.tau);
	let high = limit;
	if (high === Number.POSITIVE_INFINITY) high = beyond(lacking, d.tau);
	if (lacking(high) > 0) return Number.POSITIVE_INFINITY;
	return bracketedRoot(lacking, slope, 0, high, 1e-10);
}

/** Liquid that a vented dressing loses at its edge, mL/min: 60·(C − C_sound) by default. */
export function weeping(perLeak: number, leak: number, soundLeak: number): number {
	return perLeak * (leak - soundLeak);
}
