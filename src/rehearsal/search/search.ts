import type { SearchStep } from "../../results/index.ts";
import { type Place, places } from "../../vocabulary/index.ts";
import { Belief } from "../belief/belief.ts";
import type { Course } from "../belief/course.ts";
import { lookMinutes } from "../places/takings.ts";
import type { Finding } from "../shift/findings.ts";
import type { Shown } from "../shift/shown.ts";

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
	/** Places to look at: one is taken out when it has been looked at. */
	readonly left = new Set<Place>(places);

	constructor(courses: readonly Course[], shown: Shown) {
		this.belief = new Belief(courses);
		this.belief.see(shown);
	}

	/** The look to take at `nowMin`; null where no place is left that is worth it. */
	choose(nowMin: number): Place | null {
		let best: Place | null = null;
		let most = -1;
		for (const place of places) {
			if (!this.left.has(place)) continue;
			const minutes = lookMinutes(place);
			const chance = this.belief.chance(place, nowMin + minutes);
			if (chance < leastChance && !this.thorough) continue;
			const rate = chance / minutes;
			if (rate > most + 1e-12) [best, most] = [place, rate];
		}
		return best;
	}

	/** Takes note of what the look found. */
	found(finding: Finding, startMin: number, shown: Shown): void {
		const { belief } = this;
		const { place, code } = finding;
		const minutes = lookMinutes(place);
		const chance = belief.chance(place, startMin + minutes);
		const before = belief.at(startMin);
		belief.see(shown);
		belief.find(finding, shown.atMin);
		this.steps.push({ place, startMin, minutes, chance, code, before, after: belief.at(shown.atMin) });
	}
}
