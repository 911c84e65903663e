import type { EventId } from "../../engine/index.ts";
import type { CanisterReason } from "../../vocabulary/index.ts";
import { never } from "../base/clock.ts";
import { eventPriority } from "../base/event-priority.ts";
import { same } from "../liquid/liquid-state.ts";
import type { Whole } from "./whole.ts";

/** The canister of one dressing, empty at the start or not: noted when nearly full, stops the pump at capacity, changed by call, round or script. */
export class Canister {
	/** Since the last reset. */
	changes = 0;
	/** Of the one that hangs, mL. */
	size: number;
	readonly #whole: Whole;
	#state: "in use" | "nearly full" | "at capacity" = "in use";
	#reason: CanisterReason = "round";
	/** Since when a change is due; `never` where none is. */
	#due = never;
	readonly #eReaches: EventId;
	readonly #eChanged: EventId;

	constructor(whole: Whole, sizeMl: number) {
		this.#whole = whole;
		this.size = sizeMl;
		this.#eReaches = whole.event("canister reaches a mark", eventPriority.boundary, () => this.#reaches());
		this.#eChanged = whole.event("canister changed at a round", eventPriority.repair, () => {
			const reason = this.#reason;
			whole.need("canister", reason, (sizeMl) => this.change(reason, sizeMl));
		});
	}

	/** A canister of `sizeMl`, with what the liquid says that it holds. */
	reset(sizeMl: number): void {
		this.size = sizeMl;
		this.changes = 0;
		this.#state = "in use";
		this.#due = never;
		if (this.#whole.liquid.canister > this.#next + same) this.#state = "nearly full";
	}

	/** Notes a canister that is nearly full when the day begins. */
	look(): void {
		const { observer, index, sim } = this.#whole;
		if (this.#state === "nearly full") observer.notice(index, "canister-nearly-full", sim.now);
	}

	/** Asks when the next mark is reached, within `limitMin` minutes. */
	plan(limitMin: number): void {
		if (this.#state === "at capacity") return;
		const { sim, liquid, air } = this.#whole;
		const minutes = liquid.timeToCanister(this.#next, air, limitMin);
		this.#whole.at(this.#eReaches, sim.now + minutes);
	}

	/** Content of the next mark, mL. */
	get #next(): number {
		const noted = Math.min(this.#whole.constants["notice.canister"], 1);
		return this.#state === "in use" ? noted * this.size : this.size;
	}

	#reaches(): void {
		const whole = this.#whole;
		whole.settle();
		whole.liquid.reachCanister(this.#next);
		if (this.#state === "in use") {
			this.#state = "nearly full";
			whole.observer.notice(whole.index, "canister-nearly-full", whole.sim.now);
		} else {
			this.#state = "at capacity";
			if (this.#due < 0) this.#due = whole.sim.now;
			whole.pause("canister");
			whole.alarms.raise("canister-at-capacity");
		}
		whole.replan();
	}

	change(reason: CanisterReason, sizeMl: number): void {
		const whole = this.#whole;
		whole.settle();
		this.size = sizeMl;
		whole.liquid.canister = 0;
		this.#state = "in use";
		this.changes++;
		const now = whole.sim.now;
		const due = this.#due < 0 ? now : this.#due;
		this.#due = never;
		whole.observer.canisterChange(whole.index, reason, now, due);
		whole.sim.cancel(this.#eChanged);
		whole.alarms.end("canister-at-capacity", reason === "at-capacity" ? "call" : reason);
		whole.resume("round");
		whole.resume("canister");
		whole.replan();
	}

	/** As at a round: in suction or drain the pump stops for a minute and the canister is empty at its end, else at once. */
	changeAsAtRound(reason: CanisterReason): void {
		const whole = this.#whole;
		if (whole.sim.isPending(this.#eChanged) || !whole.has("canister")) return;
		whole.alarms.nurseMin += whole.constants["hands.canister"];
		if (this.#due < 0) this.#due = whole.sim.now;
		if (whole.phase !== "suction" && whole.phase !== "drain") {
			whole.need("canister", reason, (sizeMl) => this.change(reason, sizeMl));
			return;
		}
		whole.settle();
		this.#reason = reason;
		whole.pause("round");
		whole.at(this.#eChanged, whole.sim.now + whole.constants["hands.round"]);
		whole.replan();
	}
}
