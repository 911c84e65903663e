import { type EventId, exponential, type Substream } from "../../engine/index.ts";
import { eventPriority } from "../base/event-priority.ts";
import type { Endangered, Hazard } from "./hazard.ts";

export type Line = "suction" | "fill";

/** Kinks of the two lines: a Poisson process of `kink.rate` per hour, standing or not, most of them in the suction line. */
export class Kinks implements Hazard {
	/** Which lines are kinked. */
	suction = false;
	fill = false;
	readonly remedies = { "fill-path-obstructed": () => this.#freeFillLine() };
	readonly #dressing: Endangered;
	readonly #times: Substream;
	readonly #lines: Substream;
	readonly #eKink: EventId;

	constructor(dressing: Endangered) {
		this.#dressing = dressing;
		this.#times = dressing.substream("kink.times");
		this.#lines = dressing.substream("kink.line");
		this.#eKink = dressing.event("kink", eventPriority.kink, () => {
			this.#next();
			this.kink(this.#lines.uniform() < dressing.constants["kink.suctionShare"] ? "suction" : "fill");
		});
	}

	begin(): void {
		this.dressingOff();
		if (this.#dressing.stochastic) this.#next();
	}

	dressingOff(): void {
		this.suction = false;
		this.fill = false;
	}

	/** Kinks a line; nothing happens while the dressing is being changed. */
	kink(line: Line): void {
		if (this.#dressing.phase === "change") return;
		this.#set(line, true);
	}

	free(line: Line): void {
		this.#set(line, false);
	}

	#set(line: Line, isKinked: boolean): void {
		this.#dressing.settle();
		this[line] = isKinked;
		this.#dressing.replan();
	}

	#freeFillLine(): void {
		this.#dressing.settle();
		this.fill = false;
		this.#dressing.alarms.end("fill-path-obstructed", "call");
		this.#dressing.replan();
	}

	#next(): void {
		const { sim, constants } = this.#dressing;
		this.#dressing.at(this.#eKink, sim.now + (60 / constants["kink.rate"]) * exponential(this.#times));
	}
}
