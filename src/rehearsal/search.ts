import { Belief, type Likelihoods, type Shown, shows } from "./belief.ts";
import type { Course } from "./course.ts";
import { lookMinutes } from "./minutes.ts";
import { type Place, places } from "./places.ts";

/** One look of an orderly search: what was believed before it, what it cost and what came of it. */
export interface SearchStep {
	readonly place: Place;
	readonly startMin: number;
	readonly minutes: number;
	/** Probability that this look would show a cause. */
	readonly chance: number;
	readonly code: number;
	readonly before: Likelihoods;
	readonly after: Likelihoods;
}

/** A look with less chance than this of showing anything is put off; assumed. */
const leastChance = 0.002;

/**
 * A search in order: the next look is the one of the greatest chance a minute, after everything seen so far. (Where
 * looks find what is there and nothing else, this order finds it soonest on average: sorted by p/t, by an exchange of
 * neighbours.) Equal ones go in the order of `places`.
 */
export class OrderlySearch {
	readonly belief: Belief;
	readonly steps: SearchStep[] = [];
	/** Looks of the least chance are worth their minutes too. */
	thorough = false;
	readonly #left = new Set<Place>(places);

	constructor(courses: readonly Course[], shown: Shown) {
		this.belief = new Belief(courses);
		this.belief.see(shown);
	}

	/** The look to take at `nowMin`; null where no place is left that is worth it. */
	choose(nowMin: number): Place | null {
		let best: Place | null = null;
		let most = -1;
		for (const place of places) {
			if (!this.#left.has(place)) continue;
			const minutes = lookMinutes(place);
			const chance = this.belief.chance(place, nowMin + minutes);
			if (chance < leastChance && !this.thorough) continue;
			const rate = chance / minutes;
			if (rate > most + 1e-12) [best, most] = [place, rate];
		}
		return best;
	}

	/** The place has been looked at, and nothing is concluded from it. */
	leave(place: Place): void {
		this.#left.delete(place);
	}

	/** Takes note of what the look found; whether it showed a cause. */
	found(place: Place, code: number, startMin: number, shown: Shown): boolean {
		const { belief } = this;
		const minutes = lookMinutes(place);
		const chance = belief.chance(place, startMin + minutes);
		const before = belief.at(startMin);
		belief.see(shown);
		belief.find(place, code, shown.atMin);
		this.#left.delete(place);
		this.steps.push({
			place,
			startMin,
			minutes,
			chance,
			code,
			before,
			after: belief.at(shown.atMin),
		});
		return shows(place, code);
	}
}
