import { type EventId, exponential, type Substream } from "../../engine/index.ts";
import { eventPriority } from "../base/event-priority.ts";
import { leastMl } from "../liquid/exudate.ts";
import type { Endangered, Hazard } from "./hazard.ts";

/**
 * A fistula in the wound: bursts at Poisson times, each exponential. With nothing left to chance they are equal and
 * evenly spaced, the first after half a spacing.
 */
export class Outflow implements Hazard {
	/** Mean minutes between bursts; Infinity where there are none. */
	readonly spacingMin: number;
	readonly #meanMl: number;
	readonly #dressing: Endangered;
	readonly #times: Substream;
	readonly #volumes: Substream;
	readonly #eBurst: EventId;

	constructor(dressing: Endangered) {
		this.#dressing = dressing;
		const { totalMlPerDay, burstsPerDay } = dressing.spec.outflow ?? { totalMlPerDay: 0, burstsPerDay: 0 };
		this.spacingMin = 1440 / burstsPerDay;
		this.#meanMl = burstsPerDay === 0 ? 0 : totalMlPerDay / burstsPerDay;
		this.#times = dressing.substream("outflow.times");
		this.#volumes = dressing.substream("outflow.volumes");
		this.#eBurst = dressing.event("burst of outflow", eventPriority.burst, () => {
			this.#next(false);
			dressing.wound.burst(this.burstMl());
		});
	}

	begin(): void {
		if (this.spacingMin < Number.POSITIVE_INFINITY) this.#next(true);
	}

	untilBurst(first: boolean): number {
		if (this.#dressing.stochastic) return this.spacingMin * exponential(this.#times);
		return first ? this.spacingMin / 2 : this.spacingMin;
	}

	/** 0 where it would be too small to reckon with. */
	burstMl(): number {
		const volume = this.#dressing.stochastic ? this.#meanMl * exponential(this.#volumes) : this.#meanMl;
		return volume < leastMl ? 0 : volume;
	}

	#next(first: boolean): void {
		this.#dressing.at(this.#eBurst, this.#dressing.sim.now + this.untilBurst(first));
	}
}
