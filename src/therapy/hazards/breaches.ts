import type { EventId, Substream } from "../../engine/index.ts";
import type { Ending, Phase } from "../../vocabulary/index.ts";
import { eventPriority } from "../base/event-priority.ts";
import { same } from "../liquid/liquid-state.ts";
import type { Endangered, Hazard, Move } from "./hazard.ts";
import { Seal } from "./seal.ts";

/** What a move draws, and the chance that it breaches a dressing by what that is doing. */
interface OfMove {
	readonly outcome: Substream;
	readonly size: Substream;
	readonly chance: { readonly held: number; readonly wet: number; readonly between: number };
}

/** Breaches of the seal: by itself, dry or wet, after the law of `Seal`; by a move, with a chance that goes by what the dressing is doing. */
export class Breaches implements Hazard {
	/** Since the therapy began. */
	count = 0;
	readonly remedies = { "seal-leak": () => this.patch("call"), "depth-not-held": () => this.patch("call") };
	readonly #dressing: Endangered;
	/** From the start of a fill to the end of its drain. */
	#isWet = false;
	readonly #seal: Seal;
	readonly #moves: { readonly [M in Move]: OfMove };
	readonly #eDry: EventId;
	readonly #eWet: EventId;
	readonly #eCapacity: EventId;

	constructor(dressing: Endangered) {
		this.#dressing = dressing;
		const k = dressing.constants;
		this.#seal = new Seal(k, k[`difficulty.${dressing.spec.difficulty}`], {
			dry: dressing.substream("breach.dry"),
			drySize: dressing.substream("breach.dry.size"),
			wet: dressing.substream("breach.wet"),
			wetSize: dressing.substream("breach.wet.size"),
		});
		const ofMove = (kind: Move): OfMove => ({
			outcome: dressing.substream(`${kind}.outcome`),
			size: dressing.substream(`${kind}.size`),
			chance: { held: k[`${kind}.held`], wet: k[`${kind}.wet`], between: k[`${kind}.between`] },
		});
		this.#moves = { turn: ofMove("turn"), transfer: ofMove("transfer") };
		this.#eDry = dressing.event("seal breaks while dry", eventPriority.seal, () => this.#breaksDry());
		this.#eWet = dressing.event("seal breaks while wet", eventPriority.seal, () => {
			dressing.settle();
			this.breach(this.#seal.breakWet(dressing.sim.now));
		});
		this.#eCapacity = dressing.event("level passes capacity", eventPriority.boundary, () => {
			dressing.settle();
			dressing.replan();
		});
	}

	begin(ageMin: number): void {
		this.count = 0;
		this.#isWet = false;
		if (this.#dressing.stochastic) this.#seal.reset(this.#dressing.sim.now - ageMin);
	}

	dressingOff(): void {
		this.#close();
	}

	dressingOn(): void {
		this.#seal.ageZero = this.#dressing.sim.now;
	}

	enter(phase: Phase, left: Phase | null): void {
		const { sim } = this.#dressing;
		if (left === "suction") {
			this.#seal.endDry(sim.now);
			sim.cancel(this.#eDry);
		}
		if (phase === "fill") {
			this.#isWet = true;
			this.#seal.beginWet(sim.now);
		} else if (this.#isWet && (phase === "suction" || phase === "change")) {
			this.#isWet = false;
			this.#seal.endWet(sim.now, this.#dressing);
			sim.cancel(this.#eWet);
			sim.cancel(this.#eCapacity);
		}
		if (phase === "suction") this.#planDry();
	}

	settle(): void {
		if (this.#isWet) this.#seal.passWet(this.#dressing.sim.now, this.#dressing);
	}

	plan(spanMin: number): void {
		if (this.#isWet) this.#planWet(spanMin);
	}

	/** Asks when the wet seal will break. The span looked at ends where the level passes capacity, and in any case after half an hour above it. */
	#planWet(spanMin: number): void {
		const dressing = this.#dressing;
		const { liquid, sim } = dressing;
		const { now } = sim;
		const rise = liquid.exudateRate + liquid.fillRate;
		const over = liquid.level >= liquid.capacity - same;
		let ends = Math.min(dressing.horizonMin, now + spanMin);
		if (liquid.outflow !== "draining" && !over && rise > 0)
			ends = Math.min(ends, now + (liquid.capacity - liquid.level) / rise);
		else if (over) ends = Math.min(ends, now + 30);
		const highest =
			over || liquid.outflow === "draining"
				? liquid.level + rise * (Math.min(ends, dressing.fillEndsAt) - now)
				: liquid.level;
		dressing.at(this.#eWet, this.#seal.planWet(now, ends, highest, dressing));
		if (over || ends < now + spanMin) dressing.at(this.#eCapacity, ends);
		else if (sim.isPending(this.#eCapacity)) sim.cancel(this.#eCapacity);
	}

	/** A breach by what the dressing is doing. */
	move(kind: Move): void {
		const { phase, isHeld } = this.#dressing;
		const { outcome, size, chance } = this.#moves[kind];
		const u = outcome.uniform();
		if (phase === "change") return;
		const state = isHeld ? "held" : phase === "fill" || phase === "dwell" ? "wet" : "between";
		if (u < chance[state]) this.breach(this.#seal.size(size));
	}

	/** Adds a leak to the seal, L/min/mmHg; nothing happens while the dressing is being changed. */
	breach(leak: number): void {
		const dressing = this.#dressing;
		if (dressing.phase === "change") return;
		dressing.settle();
		this.count++;
		dressing.air.leak += leak;
		dressing.air.compare();
		dressing.observer.breach(dressing.index, leak, dressing.sim.now);
		dressing.replan();
	}

	/** Closes every breach; ends both alarms that a leak explains. */
	patch(ending: Ending): void {
		const { alarms } = this.#dressing;
		this.#dressing.settle();
		this.#close();
		alarms.end("seal-leak", ending);
		alarms.end("depth-not-held", ending);
		this.#dressing.replan();
	}

	#close(): void {
		const { air, constants } = this.#dressing;
		air.leak = constants["leak.sound"];
		air.compare();
	}

	#planDry(): void {
		this.#dressing.at(this.#eDry, this.#seal.beginDry(this.#dressing.sim.now));
	}

	#breaksDry(): void {
		this.#seal.endDry(this.#dressing.sim.now);
		this.breach(this.#seal.breakDry());
		this.#planDry();
	}
}
