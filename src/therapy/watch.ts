import type { EventId } from "../engine/index.ts";
import { eventPriority } from "./base/event-priority.ts";
import type { DrainClock } from "./parts/drain-clock.ts";
import type { OffSuction } from "./parts/off-suction.ts";
import type { Pump } from "./parts/pump.ts";
import type { Whole } from "./parts/whole.ts";

/** What the watch sees besides. */
interface Watched extends Whole {
	readonly kinks: { readonly fill: boolean };
}

/** Compares every condition that has a timer with how things stand: the timer runs while the condition holds. */
export class Watch {
	readonly #whole: Watched;
	readonly #pump: Pump;
	readonly #drain: DrainClock;
	readonly #off: OffSuction;
	/** A fill or dwell takes longer than it should. */
	#isOverdue = false;
	readonly #eOverdue: EventId;
	readonly #eGrace: EventId;

	constructor(whole: Watched, pump: Pump, drain: DrainClock, off: OffSuction) {
		this.#whole = whole;
		this.#pump = pump;
		this.#drain = drain;
		this.#off = off;
		this.#eOverdue = whole.event("fill or dwell is overdue", eventPriority.alarmTimer, () => {
			this.#isOverdue = true;
			this.#reviewOff();
		});
		this.#eGrace = whole.event("pump has had its time", eventPriority.alarmTimer, () => this.#reviewOff());
	}

	/** A fill or dwell begins, which should take so long. */
	expect(minutes: number): void {
		this.#isOverdue = false;
		this.#whole.at(this.#eOverdue, this.#whole.sim.now + minutes);
	}

	/** Nothing is expected, at the beginning and out of fill and dwell. */
	expectNothing(): void {
		this.#isOverdue = false;
		this.#whole.sim.cancel(this.#eOverdue);
	}

	/** `drawing`: the pump runs through an open path. */
	review(drawing: boolean): void {
		const { alarms, air, phase, constants: k } = this.#whole;
		// A pump that stops rewinds its timers, and a fill that goes on has stopped its own.
		if (this.#pump.isOn) {
			alarms.leak.watch(drawing && air.leaking, k["leak.delay"]);
			alarms.depth.watch(drawing && air.low, k["depth.delay"]);
			alarms.closed.watch(!drawing, k["path.closedLimit"]);
		} else if (phase === "fill") {
			const stalled = this.#whole.kinks.fill && !this.#pump.isPausedFor("off");
			alarms.stall.watch(stalled, k["fill.stallLimit"]);
		}
		this.#drain.count(phase === "drain" && drawing && !air.low);
		this.#reviewOff();
	}

	/** Off suction: outside fill and dwell the pump is stopped, or depth is low past the first minutes; in them, what is overdue. */
	#reviewOff(): void {
		const { sim, air, phase } = this.#whole;
		const { isOn } = this.#pump;
		let off: boolean;
		switch (phase) {
			case "fill":
			case "dwell":
				off = this.#isOverdue;
				break;
			case "change":
				off = true;
				break;
			case "suction":
			case "drain":
				off = !isOn || (air.low && sim.now >= this.#graceEnds);
		}
		const graced = isOn && air.low && !off;
		if (graced !== sim.isPending(this.#eGrace)) {
			if (graced) this.#whole.at(this.#eGrace, this.#graceEnds);
			else sim.cancel(this.#eGrace);
		}
		this.#off.set(off);
	}

	/** When the first minutes after a pump start are over, in which a low depth does not count as off suction. */
	get #graceEnds(): number {
		return this.#pump.startedAt + this.#whole.constants["pump.drawdownLimit"];
	}
}
