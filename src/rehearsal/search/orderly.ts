import type { Deed, SearchStage, SearchStep } from "../../results/index.ts";
import { nextClock } from "../../therapy/index.ts";
import { type Act, type Place, places } from "../../vocabulary/index.ts";
import { Belief } from "../belief/belief.ts";
import type { Course } from "../belief/course-bank.ts";
import type { Placed } from "../causes/cause.ts";
import { placeFacts } from "../places/places.ts";
import { actMinutes } from "../places/takings.ts";
import { Bedside } from "../shift/bedside.ts";
import { type Finding, findingAt, remedyFor } from "../shift/findings.ts";
import { type Case, helpComesMin, shiftOf } from "../shift/shift.ts";
import { type Shown, shownAt } from "../shift/view.ts";

/** How somebody who searches would have fared in the same shift. */
export interface Played extends SearchStage {
	readonly looks: readonly Place[];
}

/** Most searches of one shift that are played: as many as causes can be hidden. */
const mostSearches = 4;

/**
 * Plays the shift to its end, searching in order whenever an alarm comes, and at a round where none tells of what is
 * wrong. `bankOf` gives the courses in which what has been done so far is done.
 */
export function playOrderly(
	of: Case,
	placed: readonly Placed[],
	bankOf: (deeds: readonly Deed[]) => readonly Course[],
	most = mostSearches,
): Played[] {
	const player = new Player(of, placed);
	const searches: Played[] = [];
	while (searches.length < most && player.seek(searches.length === 0)) {
		searches.push(player.play(new OrderlySearch(bankOf(player.deeds), player.shown())));
	}
	return searches;
}

/** A look with less chance than this of showing anything is put off; assumed. */
const leastChance = 0.002;

/**
 * A search in order: the next look is the one of the greatest chance a minute, after everything seen so far. (Where
 * looks find what is there and nothing else, this order finds it soonest on average: sorted by p/t, by an exchange of
 * neighbours.) Equal ones go in the order of `places`.
 */
export class OrderlySearch {
	readonly #belief: Belief;
	readonly steps: SearchStep[] = [];
	/** Looks of the least chance are worth their minutes too. */
	thorough = false;
	/** Places to look at: one is taken out when it has been looked at. */
	readonly left = new Set<Place>(places);

	constructor(courses: readonly Course[], shown: Shown) {
		this.#belief = new Belief(courses);
		this.#belief.see(shown);
	}

	/** The look to take at `nowMin`; null where no place is left that is worth it. */
	choose(nowMin: number): Place | null {
		let best: Place | null = null;
		let most = -1;
		for (const place of places) {
			if (!this.left.has(place)) continue;
			const { minutes } = placeFacts[place];
			const chance = this.#belief.chance(place, nowMin + minutes);
			if (chance < leastChance && !this.thorough) continue;
			const rate = chance / minutes;
			if (rate > most + 1e-12) [best, most] = [place, rate];
		}
		return best;
	}

	/** Takes note of what the look found. */
	found(finding: Finding, startMin: number, shown: Shown): void {
		const belief = this.#belief;
		const { place, code } = finding;
		const { minutes } = placeFacts[place];
		const chance = belief.chance(place, startMin + minutes);
		const before = belief.at(startMin);
		belief.see(shown);
		belief.find(finding, shown.atMin);
		this.steps.push({ place, startMin, minutes, chance, code, before, after: belief.at(shown.atMin) });
	}
}

/** A shift that is played with searches in it. */
export class Player {
	/** What has been done so far in the shift. */
	readonly deeds: Deed[] = [];
	readonly #of: Case;
	readonly #placed: readonly Placed[];
	#bedside: Bedside;
	#sign = false;
	#handedOver = false;

	constructor(of: Case, placed: readonly Placed[]) {
		this.#of = of;
		this.#placed = placed;
		this.#bedside = this.#replayed(0);
	}

	/**
	 * Lets the shift run to the next alarm. Where none comes: to the first round at which something is wrong, or, if
	 * `anyway`, to the first round of all. False where there is no more to search.
	 */
	seek(anyway: boolean): boolean {
		const { horizonMin, startClockMin, care } = this.#of;
		const bedside = this.#bedside;
		if (this.#handedOver || bedside.now >= horizonMin) return false;
		const sinceMin = bedside.now;
		const stood = new Set(bedside.alarms.map(({ condition }) => condition));
		const fresh = () => bedside.alarms.some(({ condition }) => !stood.has(condition));
		while (!fresh() && bedside.nextTime < horizonMin) bedside.advance(bedside.nextTime);
		this.#sign = fresh();
		if (this.#sign) return true;
		const open = bedside.troubles.filter((trouble) => trouble.endMin === null || bedside.isOpen(trouble));
		const wrongFrom = Math.min(horizonMin, ...open.map(({ onsetMin }) => onsetMin ?? horizonMin));
		if (wrongFrom === horizonMin && !anyway) return false;
		const from = Math.max(sinceMin, wrongFrom === horizonMin ? 1 : wrongFrom);
		const round = nextClock(from, startClockMin, care.roundsClockMin);
		if (round >= horizonMin && !anyway) return false;
		this.#bedside = this.#replayed(Math.min(round, horizonMin - 1));
		return true;
	}

	/** The bedside as it is at `atMin`, with what has been done. */
	#replayed(atMin: number): Bedside {
		const bedside = new Bedside(shiftOf(this.#of));
		bedside.begin(this.#placed);
		for (const deed of this.deeds) bedside.do(deed);
		bedside.advance(atMin);
		return bedside;
	}

	shown(): Shown {
		return shownAt(this.#bedside);
	}

	play(search: OrderlySearch): Played {
		const bedside = this.#bedside;
		const { horizonMin } = this.#of;
		const looks: Place[] = [];
		const before = this.deeds.length;
		const beginMin = bedside.now;
		let settled = false;
		let cleared = false;
		while (!settled && bedside.now < horizonMin) {
			const startMin = bedside.now;
			const place = search.choose(startMin);
			if (place === null) {
				// Nothing was found: the alarm is cleared; if it stands on, the rest is looked at, and at last somebody is called.
				if (!this.#calls) break;
				if (!cleared) settled = this.#do("resume");
				else if (search.thorough) settled = this.#do("call-help");
				else search.thorough = true;
				cleared = true;
				if (!this.#calls) settled = true;
				continue;
			}
			bedside.advance(startMin + placeFacts[place].minutes);
			if (bedside.now >= horizonMin) break;
			const finding = findingAt(place, bedside);
			looks.push(place);
			// After a deed of this search the courses, in which it is not done, say nothing of what shows.
			if (this.deeds.length === before) search.found(finding, startMin, this.shown());
			search.left.delete(place);
			if (finding.shows.length === 0) continue;
			for (const act of remedyFor(finding)) settled = this.#do(act);
			settled ||= !this.#calls;
		}
		const deeds = this.deeds.slice(before);
		const mendedMin = settled || !this.#calls ? bedside.now : null;
		return { startMin: beginMin, sign: this.#sign, steps: search.steps, looks, deeds, mendedMin };
	}

	/** An alarm stands that does not end by itself. */
	get #calls(): boolean {
		return this.#bedside.alarms.some(({ condition }) => condition !== "suction-absent" && condition !== "large-output");
	}

	/** Whether a clinician has taken over. */
	#do(act: Act): boolean {
		const bedside = this.#bedside;
		const startMin = bedside.now;
		const deed = { act, startMin, endMin: startMin + actMinutes(act, this.#of.constants) };
		if (deed.endMin >= this.#of.horizonMin) {
			bedside.advance(this.#of.horizonMin);
			return false;
		}
		bedside.do(deed);
		this.deeds.push(deed);
		if (act !== "call-help") return false;
		bedside.advance(helpComesMin(this.#of, bedside.now));
		bedside.handOver();
		this.#handedOver = true;
		return true;
	}
}
