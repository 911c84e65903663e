import { depthAfter } from "../physics/index.ts";
import type { Bedside, Placed } from "./bedside.ts";
import { type Deed, stepsOf } from "./deed.ts";
import { type DepthShown, depthShown } from "./dressing-words.ts";

/**
 * One possible course of a shift tabled from event to event: what shows, what each look would find,
 * what is wrong. Depth runs in a curve between events and is worked out when asked for.
 */
export class Course {
	/** Share of all courses that this one stands for. */
	readonly weight: number;
	readonly #from: number[] = [];
	readonly #signs: number[] = [];
	readonly #findings: number[] = [];
	readonly #wrong: number[] = [];
	/** Depth at the event, where it runs to, with which time constant, and the set depth. */
	readonly #depth: number[] = [];

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
			while (taken < steps.length && steps[taken].atMin <= at)
				steps[taken++].take();
			this.#note(bedside, at);
			at = Math.min(
				bedside.nextTime,
				steps[taken]?.atMin ?? Number.POSITIVE_INFINITY,
			);
		}
	}

	#note(bedside: Bedside, at: number): void {
		const { process } = bedside;
		this.#from.push(at);
		this.#signs.push(bedside.signBits);
		this.#findings.push(bedside.findingBits);
		this.#wrong.push(bedside.wrongBits);
		const { towards, tau } = process.air;
		this.#depth.push(
			process.depthAt(at),
			towards,
			tau,
			process.regimen.depthMmHg,
		);
	}

	/** The row in force at `atMin`. */
	row(atMin: number): number {
		let [low, high] = [0, this.#from.length - 1];
		while (low < high) {
			const middle = (low + high + 1) >> 1;
			if (this.#from[middle] <= atMin) low = middle;
			else high = middle - 1;
		}
		return low;
	}

	signs(row: number): number {
		return this.#signs[row];
	}

	/** Two bits a place. */
	findings(row: number): number {
		return this.#findings[row];
	}

	/** One bit a kind of cause that is wrong. */
	wrong(row: number): number {
		return this.#wrong[row];
	}

	depth(row: number, atMin: number): DepthShown {
		const at = 4 * row;
		const from = this.#depth[at];
		const towards = this.#depth[at + 1];
		const tau = this.#depth[at + 2];
		const set = this.#depth[at + 3];
		const depth =
			tau === Number.POSITIVE_INFINITY
				? from
				: depthAfter(atMin - this.#from[row], from, towards, tau);
		return depthShown(depth, set);
	}
}
