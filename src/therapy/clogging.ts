import { exp } from "../elementary/index.ts";
import {
	type EventId,
	exponential,
	gamma2,
	type Stream,
} from "../engine/index.ts";
import { order } from "./order.ts";
import type { Whole } from "./part.ts";

/**
 * Debris in the suction port. A dwell loosens a Gamma(2) share of mean `perDrain·slough·(1 − e^(−dwell/8 min))` and now
 * and then a clump; suction alone adds a little per day, at every dwell's end and whenever 4 h have passed.
 */
export class Clogging {
	/** Share of the port that debris closes; 1 or more: closed. */
	debris = 0;
	readonly #whole: Whole;
	readonly #slough: number;
	readonly #drains: Stream;
	readonly #clumps: Stream;
	#since = 0;
	/** The dwell for which `#loosened` was worked out. */
	#dwell = 0;
	#loosened = 0;
	readonly #eAlone: EventId;

	constructor(whole: Whole, slough: number, drains: Stream, clumps: Stream) {
		this.#whole = whole;
		this.#slough = slough;
		this.#drains = drains;
		this.#clumps = clumps;
		this.#eAlone = whole.event("debris of suction alone", order.debris, () =>
			this.add(this.#ofSuctionAlone()),
		);
	}

	/** A new dressing, with a clear port; debris of suction alone counts from here, if anything is left to chance. */
	begin(chance: boolean): void {
		this.debris = 0;
		this.#since = this.#whole.sim.now;
		if (chance) this.#next();
	}

	/** Adds debris; nothing happens while the dressing is being changed. */
	add(share: number): void {
		if (this.#whole.phase === "change" || share <= 0) return;
		this.#whole.settle();
		this.debris += share;
		this.#whole.replan();
	}

	/** What a dwell has loosened, before its drain. The caller plans anew. */
	loosen(dwellMin: number): void {
		const k = this.#whole.constants;
		if (dwellMin !== this.#dwell) {
			this.#dwell = dwellMin;
			this.#loosened = 1 - exp(-dwellMin / k["debris.dwellScale"]);
		}
		const mean = k["debris.perDrain"] * this.#slough * this.#loosened;
		let share = gamma2(this.#drains, mean);
		const chance = Math.min(1, k["clump.chance"] * this.#slough);
		if (this.#clumps.uniform() < chance)
			share += k["clump.mean"] * exponential(this.#clumps);
		this.debris += share + this.#ofSuctionAlone();
	}

	/** Debris of suction alone since it was last added. */
	#ofSuctionAlone(): number {
		const { now } = this.#whole.sim;
		const perDay = this.#whole.constants["debris.perDay"] * this.#slough;
		const share = (perDay * (now - this.#since)) / 1440;
		this.#since = now;
		this.#next();
		return share;
	}

	#next(): void {
		const every = this.#whole.constants["debris.every"] * 60;
		this.#whole.at(this.#eAlone, this.#since + every);
	}
}
