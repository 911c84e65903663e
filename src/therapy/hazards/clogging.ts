import { exp } from "../../elementary/index.ts";
import { type EventId, exponential, gamma2, type Substream } from "../../engine/index.ts";
import type { Phase } from "../../vocabulary/index.ts";
import { eventPriority } from "../base/event-priority.ts";
import type { Endangered, Hazard } from "./hazard.ts";

/**
 * Debris in the suction port. A dwell loosens a Gamma(2) share of mean `perDrain·slough·(1 − e^(−dwell/8 min))` and now
 * and then a clump; suction alone adds a little per day, at every dwell's end and whenever 4 h have passed.
 */
export class Clogging implements Hazard {
	/** Share of the port that debris closes; 1 or more: closed. */
	debris = 0;
	/** New ports since the therapy began. */
	replaced = 0;
	readonly #dressing: Endangered;
	readonly #slough: number;
	readonly #drains: Substream;
	readonly #clumps: Substream;
	#since = 0;
	/** The dwell for which `#loosened` was worked out. */
	#dwell = 0;
	#loosened = 0;
	readonly #eAlone: EventId;

	constructor(dressing: Endangered) {
		this.#dressing = dressing;
		this.#slough = dressing.constants[`slough.${dressing.spec.slough}`];
		this.#drains = dressing.substream("debris.drain");
		this.#clumps = dressing.substream("debris.clump");
		this.#eAlone = dressing.event("debris of suction alone", eventPriority.debris, () =>
			this.add(this.#ofSuctionAlone()),
		);
	}

	begin(): void {
		this.replaced = 0;
		this.dressingOn();
	}

	dressingOff(): void {
		this.debris = 0;
	}

	/** A clear port; debris of suction alone counts from here, if anything is left to chance. */
	dressingOn(): void {
		this.debris = 0;
		this.#since = this.#dressing.sim.now;
		if (this.#dressing.stochastic) this.#next();
	}

	enter(phase: Phase, left: Phase | null): void {
		if (left === "dwell" && phase !== "change") this.loosen(this.#dressing.regimen.dwellMin);
	}

	/** A clear port in place of the one that debris closes. The caller plans anew. */
	replace(): void {
		this.debris = 0;
		this.replaced++;
	}

	/** Adds debris; nothing happens while the dressing is being changed. */
	add(share: number): void {
		if (this.#dressing.phase === "change" || share <= 0) return;
		this.#dressing.settle();
		this.debris += share;
		this.#dressing.replan();
	}

	/** What a dwell has loosened, before its drain. The caller plans anew. */
	loosen(dwellMin: number): void {
		const k = this.#dressing.constants;
		if (dwellMin !== this.#dwell) {
			this.#dwell = dwellMin;
			this.#loosened = 1 - exp(-dwellMin / k["debris.dwellScale"]);
		}
		const mean = k["debris.perDrain"] * this.#slough * this.#loosened;
		let share = gamma2(this.#drains, mean);
		const chance = Math.min(1, k["clump.chance"] * this.#slough);
		if (this.#clumps.uniform() < chance) share += k["clump.mean"] * exponential(this.#clumps);
		this.debris += share + this.#ofSuctionAlone();
	}

	/** Debris of suction alone since it was last added. */
	#ofSuctionAlone(): number {
		const { now } = this.#dressing.sim;
		const perDay = this.#dressing.constants["debris.perDay"] * this.#slough;
		const share = (perDay * (now - this.#since)) / 1440;
		this.#since = now;
		this.#next();
		return share;
	}

	#next(): void {
		const every = this.#dressing.constants["debris.every"] * 60;
		this.#dressing.at(this.#eAlone, this.#since + every);
	}
}
