import type { EventId } from "../../engine/index.ts";
import { eventPriority } from "../base/event-priority.ts";
import { Exudate } from "../liquid/exudate.ts";
import { OutputWindow } from "../liquid/output-window.ts";
import type { Whole } from "./whole.ts";

/** What the wound gives off, as it comes and in bursts, and the alarm of a large output. */
export class WoundOutput {
	readonly #whole: Whole;
	readonly #exudate: Exudate;
	readonly #window: OutputWindow;
	readonly #mayBurst: boolean;
	readonly #eBlock: EventId;
	readonly #eMark: EventId;

	/** `mayBleed`: the scenario lists a bleeding. */
	constructor(whole: Whole, mayBleed: boolean) {
		this.#whole = whole;
		const k = whole.constants;
		this.#exudate = new Exudate(whole.spec.exudateMlPerDay, k, whole.stochastic, {
			patient: whole.substream("exudate.patient"),
			blocks: whole.substream("exudate.blocks"),
		});
		this.#window = new OutputWindow(k["output.limit"], k["output.window"]);
		this.#mayBurst = whole.spec.outflow !== null || mayBleed;
		this.#eBlock = whole.event("exudate block", eventPriority.exudateBlock, () => this.#nextBlock());
		this.#eMark = whole.event("hourly output passes a mark", eventPriority.boundary, () => {
			this.#window.pass(whole.sim.now);
			this.#review();
		});
	}

	begin(): void {
		const { liquid, stochastic } = this.#whole;
		this.#exudate.reset();
		liquid.exudateRate = this.#exudate.rate;
		this.dressingOn();
		if (stochastic) this.#planBlock();
	}

	/** What comes while no dressing is on is not reckoned with. */
	dressingOff(): void {
		this.#whole.sim.cancel(this.#eMark);
		this.#window.reset(this.#whole.sim.now, 0, false);
	}

	dressingOn(): void {
		const { sim, liquid } = this.#whole;
		this.#window.reset(sim.now, liquid.exudateRate, this.#mayBurst);
		this.#whole.at(this.#eMark, this.#window.next());
	}

	/** Adds (or, negative, takes away) a constant bleeding, mL/min. */
	bleed(rate: number): void {
		this.#whole.settle();
		this.#exudate.bleed(rate);
		this.#rateChanges();
	}

	/** So much exudate comes at once. */
	burst(volumeMl: number): void {
		const { sim, liquid, phase } = this.#whole;
		this.#whole.settle();
		liquid.burst(volumeMl);
		if (phase !== "change") {
			this.#window.burst(sim.now, volumeMl);
			this.#window.compare();
			this.#review();
		}
		this.#whole.replan();
	}

	#nextBlock(): void {
		this.#whole.settle();
		this.#exudate.nextBlock();
		this.#planBlock();
		this.#rateChanges();
	}

	#planBlock(): void {
		const { sim, constants } = this.#whole;
		this.#whole.at(this.#eBlock, sim.now + constants["exudate.block"] * 60);
	}

	#rateChanges(): void {
		const { sim, liquid, phase } = this.#whole;
		liquid.exudateRate = this.#exudate.rate;
		if (phase !== "change") {
			this.#window.setRate(sim.now, liquid.exudateRate);
			this.#review();
		}
		this.#whole.replan();
	}

	#review(): void {
		const { alarms, sim } = this.#whole;
		if (this.#window.above) alarms.raise("large-output");
		else if (alarms.stands("large-output")) alarms.end("large-output", "by-itself");
		this.#whole.at(this.#eMark, Math.max(sim.now, this.#window.next()));
	}
}
