import { never } from "../base/clock.ts";
import type { Whole } from "./whole.ts";

/** Spells off suction of one dressing, and the alarm of one that lasts. */
export class OffSuction {
	/** Minutes off suction since the last reset, and those of them in fill or dwell. */
	minutes = 0;
	wetMinutes = 0;
	readonly #whole: Whole;
	#since = never;
	#wet = false;

	constructor(whole: Whole) {
		this.#whole = whole;
	}

	reset(): void {
		this.minutes = 0;
		this.wetMinutes = 0;
		this.#since = never;
	}

	/** Begins or ends a spell. A dressing change is one that raises no alarm. */
	set(off: boolean): void {
		const isOff = this.#since !== never;
		if (off === isOff) return;
		if (off) this.#begin();
		else this.end();
	}

	#begin(): void {
		const { sim, phase, alarms, constants } = this.#whole;
		this.#since = sim.now;
		this.#wet = phase === "fill" || phase === "dwell";
		if (phase !== "change") alarms.absent.watch(true, constants["absent.limit"]);
	}

	/** Books the spell, if there is one; its alarm ends with it. */
	end(): void {
		if (this.#since === never) return;
		this.close();
		this.#whole.alarms.end("suction-absent", "by-itself");
	}

	/** Books the spell and leaves its alarm standing, as at the horizon. */
	close(): void {
		if (this.#since === never) return;
		const { sim, observer, index } = this.#whole;
		const minutes = sim.now - this.#since;
		this.minutes += minutes;
		if (this.#wet) this.wetMinutes += minutes;
		if (minutes > 0) observer.offSuction(index, this.#since, sim.now);
		this.#since = never;
	}
}
