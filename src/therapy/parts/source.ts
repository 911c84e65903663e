import type { EventId } from "../../engine/index.ts";
import type { Ending, SourceReason } from "../../vocabulary/index.ts";
import { eventPriority } from "../base/event-priority.ts";
import { same } from "../liquid/liquid-state.ts";
import type { Whole } from "./whole.ts";

const endings: { readonly [R in SourceReason]: Ending } = {
	empty: "call",
	round: "round",
	expired: "round",
	scripted: "scripted",
};

/** The source of solution of one dressing: runs low, runs out, hangs for so long, is renewed. What it still held is waste. */
export class Source {
	/** Since the last reset. */
	changes = 0;
	/** Solution discarded with its source, mL. */
	wasted = 0;
	readonly #whole: Whole;
	#size: number;
	#noted = false;
	#hungSince = 0;
	#renewAfterFill = false;
	readonly #eOut: EventId;
	readonly #eLow: EventId;
	readonly #eExpiry: EventId;

	constructor(whole: Whole, sizeMl: number) {
		this.#whole = whole;
		this.#size = sizeMl;
		this.#eOut = whole.event("source runs out", eventPriority.boundary, () => this.runOut());
		this.#eLow = whole.event("source below one fill", eventPriority.observer, () => this.#note());
		this.#eExpiry = whole.event("source has hung long enough", eventPriority.expiry, () => this.#expires());
	}

	/** A source of `sizeMl`, with what the liquid says that is left in it; it hangs from now on, however long it has hung. */
	reset(sizeMl: number): void {
		this.#size = sizeMl;
		this.changes = 0;
		this.wasted = 0;
		this.#noted = false;
		this.#renewAfterFill = false;
		this.#hang();
	}

	get isEmpty(): boolean {
		return this.#whole.liquid.source <= same;
	}

	/** When a flowing fill empties the source before the set volume is in; Infinity where it does not. */
	get emptyAt(): number {
		return this.#whole.sim.timeOf(this.#eOut);
	}

	/** A fill flows: whether the source will run out before `lackingMl` more are in. */
	plan(lackingMl: number): boolean {
		const whole = this.#whole;
		const { sim, liquid } = whole;
		const runsOut = liquid.source < lackingMl - same;
		if (runsOut) whole.at(this.#eOut, sim.now + liquid.source / liquid.fillRate);
		else sim.cancel(this.#eOut);
		const above = liquid.source - whole.regimen.fillMl;
		if (!this.#noted && above < lackingMl - same) whole.at(this.#eLow, sim.now + Math.max(0, above) / liquid.fillRate);
		return runsOut;
	}

	/** No solution flows: nothing runs out. */
	rest(): void {
		this.#whole.sim.cancel(this.#eOut);
		this.#whole.sim.cancel(this.#eLow);
	}

	runOut(): void {
		const whole = this.#whole;
		whole.settle();
		whole.liquid.source = 0;
		whole.alarms.raise("source-empty");
		whole.replan();
	}

	/** Notes a source that holds less than one fill of the regimen in force. */
	look(): void {
		const { liquid, regimen } = this.#whole;
		if (liquid.source < regimen.fillMl - same) this.#note();
	}

	/** Under suction alone an old source is left; a regimen with fill that takes over renews it. */
	takeOver(): void {
		const { regimen, sim, constants } = this.#whole;
		const old = sim.now - this.#hungSince >= constants["source.hang"] * 60;
		if (regimen.fillMl > 0 && old) this.renew("expired");
		this.look();
	}

	/** The fill is over (or was cut short): an expiry that waited for it is due. */
	fillOver(): void {
		if (this.#renewAfterFill) this.renew("expired");
	}

	renew(reason: SourceReason): void {
		this.#whole.need("solution", reason, (sizeMl) => this.#renewed(reason, sizeMl));
	}

	#renewed(reason: SourceReason, sizeMl: number): void {
		const whole = this.#whole;
		whole.settle();
		this.#size = sizeMl;
		const wasted = whole.liquid.source;
		this.wasted += wasted;
		whole.liquid.source = this.#size;
		this.changes++;
		this.#noted = false;
		this.#renewAfterFill = false;
		whole.sim.cancel(this.#eLow);
		this.#hang();
		whole.observer.sourceChange(whole.index, reason, whole.sim.now, wasted);
		this.look();
		whole.alarms.end("source-empty", endings[reason]);
		whole.replan();
	}

	renewAsAtRound(reason: SourceReason): void {
		if (!this.#whole.has("solution")) return;
		this.#whole.alarms.nurseMin += this.#whole.constants["hands.source"];
		this.renew(reason);
	}

	#hang(): void {
		const { sim, constants } = this.#whole;
		this.#hungSince = sim.now;
		this.#whole.at(this.#eExpiry, sim.now + constants["source.hang"] * 60);
	}

	#note(): void {
		if (this.#noted) return;
		this.#noted = true;
		const { observer, index, sim } = this.#whole;
		observer.notice(index, "source-low", sim.now);
	}

	#expires(): void {
		if (this.#whole.regimen.fillMl === 0) return;
		if (this.#whole.phase === "fill") this.#renewAfterFill = true;
		else this.renew("expired");
	}
}
