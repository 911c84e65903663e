import type { EventId, Simulation } from "../../engine/index.ts";

/** Runs while a condition holds; at its end the alarm is raised. Does nothing while that alarm stands. */
export class AlarmTimer {
	readonly #sim: Simulation;
	readonly #horizon: number;
	readonly #runsOut: EventId;
	readonly #alarm: { readonly since: number };

	/** `runsOut` raises the alarm, which stands where its `since` is not negative. */
	constructor(sim: Simulation, horizon: number, runsOut: EventId, alarm: { readonly since: number }) {
		this.#sim = sim;
		this.#horizon = horizon;
		this.#runsOut = runsOut;
		this.#alarm = alarm;
	}

	/** Started at the first call with `holds`, for `delay` minutes; back to 0 at one without. */
	watch(holds: boolean, delay: number): void {
		const pending = this.#sim.isPending(this.#runsOut);
		if (holds === pending) return;
		if (!holds) {
			this.#sim.cancel(this.#runsOut);
			return;
		}
		if (this.#alarm.since >= 0) return;
		const due = this.#sim.now + delay;
		if (due < this.#horizon) this.#sim.schedule(this.#runsOut, due);
	}

	/** Sets the timer back to 0. */
	rewind(): void {
		this.#sim.cancel(this.#runsOut);
	}
}
