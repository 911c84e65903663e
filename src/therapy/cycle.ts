import type { EventId } from "../engine/index.ts";
import type { Phase } from "../vocabulary/index.ts";
import { eventPriority } from "./base/event-priority.ts";
import type { Hazards } from "./hazards/hazards.ts";
import type { OffSuction } from "./parts/off-suction.ts";
import type { Pump } from "./parts/pump.ts";
import type { Source } from "./parts/source.ts";
import type { Whole } from "./parts/whole.ts";
import type { Regimens } from "./regimens.ts";
import type { Watch } from "./watch.ts";

/** What the phases move. */
interface Cycled extends Whole {
	phase: Phase;
	readonly pump: Pump;
	readonly source: Source;
	readonly off: OffSuction;
	readonly hazards: Hazards;
	readonly watch: Watch;
	readonly regimens: Regimens;
}

/** The phases of one dressing, suction → fill → dwell → drain → suction, and what ends each. */
export class Cycle {
	/** Since the therapy began: fills that were started, drains that were finished, minutes in fill and dwell. */
	fills = 0;
	washes = 0;
	wetMin = 0;
	readonly #whole: Cycled;
	#since = 0;
	#dwellDoneMin = 0;
	#dwellSince = 0;
	#offs = 0;
	readonly #eFillEnd: EventId;
	readonly #eDwellEnd: EventId;
	readonly #eFillStart: EventId;

	constructor(whole: Cycled) {
		this.#whole = whole;
		this.#eFillEnd = whole.event("fill ends", eventPriority.boundary, () => this.#fillEnds());
		this.#eDwellEnd = whole.event("dwell ends", eventPriority.boundary, () => this.#dwellEnds());
		this.#eFillStart = whole.event("fill starts", eventPriority.fillStart, () => this.#fillStarts());
	}

	reset(): void {
		this.fills = 0;
		this.washes = 0;
		this.wetMin = 0;
		this.#offs = 0;
		this.#whole.phase = "suction";
		this.#since = this.#whole.sim.now;
	}

	/** A therapy or a new dressing begins. One that begins in fill is for no time in suction with the period over: its first fill starts, or is withheld, like any other. */
	begin(): void {
		const { pump, hazards, regimen } = this.#whole;
		hazards.enter("suction", null);
		this.#show("suction");
		pump.periodDoneMin = regimen.begin === "fill" && regimen.fillMl > 0 ? regimen.suctionMin : 0;
		pump.run(true);
		this.#whole.replan();
	}

	/** The dressing comes off. */
	interrupt(): void {
		this.#leave("change");
		this.#whole.pump.stop();
		this.#whole.off.end();
		this.#show("change");
		this.#whole.watch.expectNothing();
		for (const event of [this.#eFillEnd, this.#eDwellEnd, this.#eFillStart]) this.#whole.sim.cancel(event);
	}

	/** Books the phase that has not ended, at the horizon. */
	close(): void {
		const { observer, index, sim } = this.#whole;
		this.#bookWet();
		observer.phase(index, this.#whole.phase, this.#since, sim.now);
	}

	/** When the fill that runs will have its volume; Infinity where none does. */
	get fillEndsAt(): number {
		return this.#whole.sim.timeOf(this.#eFillEnd);
	}

	/** Asks for the end of the fill: the set volume is in, unless the source is out before. */
	planFill(): void {
		const { liquid, source, regimen, sim } = this.#whole;
		if (liquid.fillRate === 0) {
			sim.cancel(this.#eFillEnd);
			source.rest();
			return;
		}
		const lackingMl = regimen.fillMl - liquid.filled;
		if (source.plan(lackingMl)) sim.cancel(this.#eFillEnd);
		else this.#whole.at(this.#eFillEnd, sim.now + lackingMl / liquid.fillRate);
	}

	/** The next fill starts when the suction period is over, no alarm withholds it, the pump runs and the drain is finished. */
	reviewFill(): void {
		const { pump, alarms, regimen, sim } = this.#whole;
		const ready = this.#whole.phase === "suction" && regimen.fillMl > 0 && pump.isOn && alarms.withholding === 0;
		if (!ready) {
			if (sim.isPending(this.#eFillStart)) sim.cancel(this.#eFillStart);
			return;
		}
		const due = Math.max(sim.now, pump.periodEndsAt);
		if (sim.timeOf(this.#eFillStart) !== due) this.#whole.at(this.#eFillStart, due);
	}

	/** The level has reached what suction leaves. */
	drained(): void {
		if (this.#whole.phase !== "drain") return;
		this.washes++;
		this.#leave("suction");
		this.#show("suction");
	}

	/** Therapy is switched off, or on again: the clock of a dwell stands, and the pump. */
	switchOff(off: boolean): void {
		const { pump, sim, regimen } = this.#whole;
		this.#offs += off ? 1 : -1;
		if (off && this.#offs === 1) {
			if (this.#whole.phase === "dwell") {
				this.#dwellDoneMin += sim.now - this.#dwellSince;
				sim.cancel(this.#eDwellEnd);
			}
			pump.pause("off");
		} else if (!off && this.#offs === 0) {
			if (this.#whole.phase === "dwell") {
				this.#dwellSince = sim.now;
				this.#whole.at(this.#eDwellEnd, sim.now + (regimen.dwellMin - this.#dwellDoneMin));
			}
			pump.resume("off");
		}
	}

	#fillStarts(): void {
		const { pump, off, air, liquid, source, watch, regimen, constants } = this.#whole;
		this.#whole.settle();
		this.#leave("fill");
		pump.stop();
		off.end();
		this.#show("fill");
		this.fills++;
		air.depth = 0;
		air.compare();
		liquid.filled = 0;
		watch.expect(regimen.fillMl / constants["fill.flow"]);
		if (source.isEmpty) source.runOut();
		this.#whole.replan();
	}

	#fillEnds(): void {
		const { off, liquid, source, watch, regimen, sim } = this.#whole;
		this.#whole.settle();
		liquid.completeFill(regimen.fillMl);
		this.#leave("dwell");
		this.#show("dwell");
		off.end();
		this.#dwellDoneMin = 0;
		this.#dwellSince = sim.now;
		source.rest();
		watch.expect(regimen.dwellMin);
		if (this.#offs === 0) this.#whole.at(this.#eDwellEnd, sim.now + regimen.dwellMin);
		source.fillOver();
		this.#whole.replan();
	}

	#dwellEnds(): void {
		const { pump, off, liquid, watch, regimens } = this.#whole;
		this.#whole.settle();
		watch.expectNothing();
		const next = liquid.isWet ? "drain" : "suction";
		// What the dwell has loosened goes by the regimen that it belongs to.
		this.#leave(next);
		regimens.takeOver();
		off.end();
		this.#show(next);
		pump.periodDoneMin = 0;
		pump.run(true);
		this.#whole.replan();
	}

	/** The present phase is over: its minutes are booked, and the hazards go on to the next. */
	#leave(next: Phase): void {
		this.#bookWet();
		this.#whole.hazards.enter(next, this.#whole.phase);
	}

	#bookWet(): void {
		if (this.#whole.phase === "fill" || this.#whole.phase === "dwell") this.wetMin += this.#whole.sim.now - this.#since;
	}

	#show(phase: Phase): void {
		const { observer, index, sim } = this.#whole;
		if (sim.now > this.#since && phase !== this.#whole.phase)
			observer.phase(index, this.#whole.phase, this.#since, sim.now);
		if (phase !== this.#whole.phase || sim.now === this.#since) this.#since = sim.now;
		this.#whole.phase = phase;
	}
}
