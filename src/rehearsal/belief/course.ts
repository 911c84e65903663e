import { depthAfter } from "../../physics/index.ts";
import type { Deed } from "../../results/index.ts";
import type { Placed } from "../causes/cause.ts";
import type { Bedside } from "../shift/bedside.ts";
import { stepsOf } from "../shift/deed.ts";
import { codesOf } from "../shift/findings.ts";
import { type DepthShown, depthShown } from "../shift/shown.ts";

/** What there is from an event on, until the next. */
export interface CourseRow {
	readonly fromMin: number;
	/** `signBits` of the bedside. */
	readonly signs: number;
	/** The codes of all places, as `codesOf` puts them together. */
	readonly findings: number;
	/** One bit a kind of cause that is wrong. */
	readonly wrong: number;
	/** Depth at the event, where it runs to, with which time constant, and the set depth. */
	readonly depthMmHg: number;
	readonly towards: number;
	readonly tau: number;
	readonly setMmHg: number;
}

/**
 * One possible course of a shift tabled from event to event: what shows, what each look would find,
 * what is wrong. Depth runs in a curve between events and is worked out when asked for.
 */
export class Course {
	/** Share of all courses that this one stands for. */
	readonly weight: number;
	readonly #rows: CourseRow[] = [];

	/** Runs the shift once, with the deeds done at their times. */
	constructor(
		bedside: Bedside,
		placed: readonly Placed[],
		horizonMin: number,
		weight: number,
		deeds: readonly Deed[] = [],
	) {
		this.weight = weight;
		bedside.begin(placed);
		const steps = deeds.flatMap((deed) => stepsOf(deed, bedside));
		let taken = 0;
		for (let at = 0; at < horizonMin; ) {
			bedside.advance(at);
			while (taken < steps.length && steps[taken].atMin <= at) steps[taken++].take();
			this.#rows.push(rowAt(at, bedside));
			at = Math.min(bedside.nextTime, steps[taken]?.atMin ?? Number.POSITIVE_INFINITY);
		}
	}

	/** The row in force at `atMin`. */
	row(atMin: number): CourseRow {
		let [low, high] = [0, this.#rows.length - 1];
		while (low < high) {
			const middle = (low + high + 1) >> 1;
			if (this.#rows[middle].fromMin <= atMin) low = middle;
			else high = middle - 1;
		}
		return this.#rows[low];
	}
}

const rowAt = (fromMin: number, bedside: Bedside): CourseRow => ({
	fromMin,
	signs: bedside.signBits,
	findings: codesOf(bedside),
	wrong: bedside.wrongBits,
	depthMmHg: bedside.process.depthAt(fromMin),
	towards: bedside.process.air.towards,
	tau: bedside.process.air.tau,
	setMmHg: bedside.process.regimen.depthMmHg,
});

/** How depth shows at a time of the row. */
export function depthIn({ fromMin, depthMmHg, towards, tau, setMmHg }: CourseRow, atMin: number): DepthShown {
	const depth = tau === Number.POSITIVE_INFINITY ? depthMmHg : depthAfter(atMin - fromMin, depthMmHg, towards, tau);
	return depthShown(depth, setMmHg);
}
