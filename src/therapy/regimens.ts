import type { EventId } from "../engine/index.ts";
import type { Regimen } from "../scenario/index.ts";
import { eventPriority } from "./base/event-priority.ts";
import type { Pump } from "./parts/pump.ts";
import type { Source } from "./parts/source.ts";
import type { Whole } from "./parts/whole.ts";

/** Where the regimen in force is written down. */
interface Treated extends Whole {
	regimen: Regimen;
}

/** The regimens of one dressing, which take over from each other at stated times from the start of the therapy. */
export class Regimens {
	readonly #whole: Treated;
	readonly #pump: Pump;
	readonly #source: Source;
	readonly #list: readonly Regimen[];
	readonly #eDue: EventId;
	#index = 0;
	#began = 0;

	constructor(whole: Treated, pump: Pump, source: Source) {
		this.#whole = whole;
		this.#pump = pump;
		this.#source = source;
		this.#list = whole.spec.regimens;
		this.#eDue = whole.event("next regimen's time", eventPriority.boundary, () => this.#due());
	}

	begin(): void {
		this.#began = this.#whole.sim.now;
		this.#plan(this.#list.at(1));
		this.#set(0);
	}

	/** The latest regimen whose time has passed takes over, if it is not in force yet. */
	takeOver(): boolean {
		const { now } = this.#whole.sim;
		let index = this.#index;
		while (index + 1 < this.#list.length && this.#began + this.#list[index + 1].fromMin <= now) index++;
		if (index === this.#index) return false;
		this.#set(index);
		this.#source.takeOver();
		return true;
	}

	#set(index: number): void {
		this.#index = index;
		const regimen = this.#list[index];
		const { air } = this.#whole;
		this.#whole.regimen = regimen;
		air.setDepth = regimen.depthMmHg;
		air.drawdownShare = regimen.drawdown;
	}

	#plan(next: Regimen | undefined): void {
		if (next !== undefined) this.#whole.at(this.#eDue, this.#began + next.fromMin);
	}

	#due(): void {
		const { air, phase, regimen, sim } = this.#whole;
		this.#plan(this.#list.find(({ fromMin }) => this.#began + fromMin > sim.now));
		// A regimen with fill ends at its next start of a suction period; a dressing change asks by itself.
		if (regimen.fillMl > 0 || phase === "change") return;
		this.#whole.settle();
		if (!this.takeOver()) return;
		this.#pump.stop();
		this.#pump.periodDoneMin = 0;
		this.#pump.run();
		if (air.depth > air.setDepth) air.depth = air.setDepth;
		this.#whole.replan();
	}
}
