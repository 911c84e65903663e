import type { Stream } from "../engine/index.ts";
import { isNight, nextClock } from "../therapy/index.ts";
import type { Act } from "./acts.ts";
import { Bedside, type Placed } from "./bedside.ts";
import { type Shown, shows } from "./belief.ts";
import type { Course } from "./course.ts";
import { type Deed, doDeed } from "./deed.ts";
import { actMinutes, lookMinutes } from "./minutes.ts";
import { type Place, places } from "./places.ts";
import { remedyFor } from "./remedy.ts";
import { OrderlySearch, type SearchStep } from "./search.ts";
import { type Case, shiftOf } from "./shift.ts";
import { shownAt } from "./shown.ts";

/** How somebody who searches would have fared in the same shift. */
export interface Played {
	/** When the search began, and whether an alarm had called for it (else it was the first round after the cause). */
	readonly startMin: number;
	readonly sign: boolean;
	readonly steps: readonly SearchStep[];
	readonly looks: readonly Place[];
	readonly deeds: readonly Deed[];
	/** When no alarm stood any more, or a clinician had taken over; null: not within the shift. */
	readonly mendedMin: number | null;
}

/** Plays the shift, searching in order from the first alarm on; from the first round on where no alarm comes. */
export function playOrderly(
	of: Case,
	placed: readonly Placed[],
	courses: readonly Course[],
): Played {
	const player = new Player(of, placed);
	const search = new OrderlySearch(courses, player.shown());
	return player.play((nowMin) => search.choose(nowMin), search);
}

/** The same with the looks in an order drawn from `stream`. */
export function playAtRandom(
	of: Case,
	placed: readonly Placed[],
	stream: Stream,
): Played {
	const left = [...places];
	return new Player(of, placed).play(() => {
		const [place] = left.splice(Math.floor(stream.uniform() * left.length), 1);
		return place ?? null;
	}, null);
}

class Player {
	readonly #of: Case;
	readonly #bedside: Bedside;
	readonly #sign: boolean;
	readonly #startMin: number;
	readonly #deeds: Deed[] = [];

	/** Lets the shift run to where a search begins. */
	constructor(of: Case, placed: readonly Placed[]) {
		this.#of = of;
		const shift = shiftOf(of);
		const horizonMin = shift.horizonMin;
		let bedside = new Bedside(shift);
		bedside.begin(placed);
		while (bedside.alarms.length === 0 && bedside.nextTime < horizonMin)
			bedside.advance(bedside.nextTime);
		this.#sign = bedside.alarms.length > 0;
		if (!this.#sign) {
			const onsetMin = Math.min(
				...bedside.troubles.map(({ onsetMin }) => onsetMin ?? horizonMin),
				horizonMin,
			);
			const { startClockMin, care } = of;
			const from = onsetMin < horizonMin ? onsetMin : 1;
			const round = nextClock(from, startClockMin, care.roundsClockMin);
			bedside = new Bedside(shift);
			bedside.begin(placed);
			bedside.advance(Math.min(round, horizonMin - 1));
		}
		this.#bedside = bedside;
		this.#startMin = bedside.now;
	}

	shown(): Shown {
		return shownAt(this.#bedside);
	}

	play(
		choose: (nowMin: number) => Place | null,
		search: OrderlySearch | null,
	): Played {
		const bedside = this.#bedside;
		const { horizonMin } = this.#of;
		const looks: Place[] = [];
		let settled = false;
		let cleared = false;
		while (!settled && bedside.now < horizonMin) {
			const startMin = bedside.now;
			const place = choose(startMin);
			if (place === null) {
				// Nothing was found: the alarm is cleared; if it stands on, the rest is looked at, and at last somebody is called.
				if (!this.#calls) break;
				if (!cleared) settled = this.#do("resume");
				else if (search === null || search.thorough)
					settled = this.#do("call-help");
				else search.thorough = true;
				cleared = true;
				if (!this.#calls) settled = true;
				continue;
			}
			bedside.advance(startMin + lookMinutes(place));
			if (bedside.now >= horizonMin) break;
			const code = bedside.finding(place);
			looks.push(place);
			// After the first deed the courses, in which nobody does anything, say nothing of what shows.
			if (this.#deeds.length === 0)
				search?.found(place, code, startMin, this.shown());
			else search?.leave(place);
			if (!shows(place, code)) continue;
			for (const act of remedyFor(place, code)) settled = this.#do(act);
			settled ||= !this.#calls;
		}
		return {
			startMin: this.#startMin,
			sign: this.#sign,
			steps: search?.steps ?? [],
			looks,
			deeds: this.#deeds,
			mendedMin: settled || !this.#calls ? bedside.now : null,
		};
	}

	/** An alarm stands that does not end by itself. */
	get #calls(): boolean {
		return this.#bedside.alarms.some(
			({ condition }) =>
				condition !== "suction-absent" && condition !== "large-output",
		);
	}

	/** Whether a clinician has taken over. */
	#do(act: Act): boolean {
		const bedside = this.#bedside;
		const startMin = bedside.now;
		const deed = {
			act,
			startMin,
			endMin: startMin + actMinutes(act, this.#of.constants),
		};
		if (deed.endMin >= this.#of.horizonMin) {
			bedside.advance(this.#of.horizonMin);
			return false;
		}
		doDeed(deed, bedside);
		this.#deeds.push(deed);
		if (act !== "call-help") return false;
		const { dayMin, nightMin } = this.#of.care.response;
		const night = isNight(this.#of.startClockMin + bedside.now);
		bedside.advance(bedside.now + (night ? nightMin : dayMin));
		bedside.handOver();
		return true;
	}
}
