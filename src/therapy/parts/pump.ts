import { airToThin } from "../../physics/index.ts";
import type { PauseReason } from "../../vocabulary/index.ts";
import { never } from "../base/clock.ts";
import type { Canister } from "./canister.ts";
import type { DrainClock } from "./drain-clock.ts";
import type { Whole } from "./whole.ts";

const reasons: readonly PauseReason[] = ["off", "canister", "round", "port"];

/** The pump: runs in suction and drain unless something pauses it, and keeps the time of the suction period. */
export class Pump {
	isOn = false;
	/** When it was last started. */
	startedAt = 0;
	/** Minutes of the suction period that are over, not counting the present run. */
	periodDoneMin = 0;
	readonly #whole: Whole;
	readonly #canister: Canister;
	readonly #drain: DrainClock;
	readonly #pausedSince: Record<PauseReason, number> = { off: never, canister: never, round: never, port: never };
	#pauses = 0;

	constructor(whole: Whole, canister: Canister, drain: DrainClock) {
		this.#whole = whole;
		this.#canister = canister;
		this.#drain = drain;
	}

	reset(): void {
		this.isOn = false;
		this.#pauses = 0;
		for (const reason of reasons) this.#pausedSince[reason] = never;
	}

	/** When the suction period is over, if the pump runs on. */
	get periodEndsAt(): number {
		return this.startedAt + (this.#whole.regimen.suctionMin - this.periodDoneMin);
	}

	/** Brings the pump to what phase and pauses ask for; `anew` where a pump start is due even if it ran. */
	run(anew = false): void {
		const { phase } = this.#whole;
		const should = (phase === "suction" || phase === "drain") && this.#pauses === 0;
		if (this.isOn && (!should || anew)) this.stop();
		if (should && !this.isOn) this.#start();
	}

	stop(): void {
		if (!this.isOn) return;
		const { sim, alarms } = this.#whole;
		this.isOn = false;
		this.periodDoneMin += sim.now - this.startedAt;
		alarms.leak.rewind();
		alarms.depth.rewind();
		alarms.closed.rewind();
	}

	isPausedFor(reason: PauseReason): boolean {
		return this.#pausedSince[reason] >= 0;
	}

	pause(reason: PauseReason): void {
		if (this.isPausedFor(reason)) return;
		this.#pausedSince[reason] = this.#whole.sim.now;
		this.#pauses++;
		this.run();
	}

	resume(reason: PauseReason): void {
		if (!this.isPausedFor(reason)) return;
		this.#tell(reason);
		this.#pausedSince[reason] = never;
		this.#pauses--;
		this.run();
	}

	/** Tells the observer of every pause that lasts to the end. */
	close(): void {
		for (const reason of reasons) if (this.isPausedFor(reason)) this.#tell(reason);
	}

	#tell(reason: PauseReason): void {
		const { observer, index, sim } = this.#whole;
		observer.pause(index, reason, this.#pausedSince[reason], sim.now);
	}

	#start(): void {
		const { sim, air, liquid, constants } = this.#whole;
		this.isOn = true;
		this.startedAt = sim.now;
		air.pumpStart(sim.now, airToThin(constants, liquid.capacity, this.#canister.size, liquid.canister));
		this.#drain.pumpStarts();
	}
}
