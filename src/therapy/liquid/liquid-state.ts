import type { Constants, Draining } from "../../physics/index.ts";
import { conductance, drainedAfter, mixDraining, mixLinear, timeToDrained, timeToLevel } from "../../physics/index.ts";
import type { Air } from "../air/air-state.ts";

/** Volumes that should be equal are equal within this, mL. */
export const same = 1e-9;

/**
 * How liquid leaves: `still` not at all; `held` the port takes what comes, at the level that suction leaves;
 * `draining` through the port, above that level; `weeping` at the edge; `seeping` at the edge, as it comes;
 * `discarded` there is no dressing.
 */
export type Outflow = "still" | "held" | "draining" | "weeping" | "seeping" | "discarded";

/**
 * The way out that is open to liquid: the `port`, where the pump draws through an open path; the `edge`, where a vented
 * seal may weep; `none`; all of it where there is no `dressing`. `port, let go`: the depth has just fallen through
 * the balance, so that a level that the port held is free.
 */
export type WayOut = "port" | "port, let go" | "edge" | "none" | "no dressing";

/**
 * A depth so little below the balance counts as at it, mmHg: a pump passes it in less than the last digit of the
 * clock, and time would stand still at it.
 */
const hair = 1e-6;

/** Liquid of one dressing, its canister and its source, with everything that was ever moved (mL). */
export class Liquid {
	level = 0;
	/** Share of exudate in the level; 1 when empty. */
	share = 1;
	outflow: Outflow = "still";
	exudateRate = 0;
	fillRate = 0;
	weepRate = 0;
	/** Open share of port and line. */
	open = 1;
	canister = 0;
	source = 0;
	/** Solution run in since the fill began. */
	filled = 0;
	instilled = 0;
	exudate = 0;
	toCanister = 0;
	/** Solution in `toCanister`. */
	returned = 0;
	wept = 0;
	discarded = 0;
	/** ∫ share dt, min. */
	shareIntegral = 0;
	/** Level that suction leaves in the foam. */
	readonly retained: number;
	readonly capacity: number;
	readonly #clear: number;
	readonly #drain: { -readonly [K in keyof Draining]: Draining[K] } = {
		level: 0,
		inflow: 0,
		conductance: 0,
		from: 0,
		towards: 0,
		tau: 0,
	};

	constructor(constants: Constants, foamVolumeMl: number) {
		this.capacity = constants["foam.capacity"] * foamVolumeMl;
		this.retained = constants["foam.retained"] * this.capacity;
		this.#clear = constants["drain.conductance"];
	}

	/** Nothing has moved yet; so much is left in the source, and in the canister. */
	reset(sourceMl: number, canisterMl = 0): void {
		this.level = 0;
		this.share = 1;
		this.outflow = "still";
		this.fillRate = 0;
		this.weepRate = 0;
		this.open = 1;
		this.canister = canisterMl;
		this.source = sourceMl;
		this.filled = 0;
		this.instilled = 0;
		this.exudate = 0;
		this.toCanister = 0;
		this.returned = 0;
		this.wept = 0;
		this.discarded = 0;
		this.shareIntegral = 0;
	}

	/** Conductance of the port as it is, mL/min/mmHg. */
	get conductance(): number {
		return conductance(this.#clear, this.open);
	}

	/** The depth at which the port takes just what flows in, mmHg. */
	get balance(): number {
		return this.exudateRate / this.conductance;
	}

	/** Above what suction leaves in the foam. */
	get isWet(): boolean {
		return this.level > this.retained + same;
	}

	/** Decides how liquid leaves from here on. */
	route(air: Air, way: WayOut): void {
		this.outflow = this.#outflowBy(way, air, this.level - this.retained);
	}

	#outflowBy(way: WayOut, air: Air, above: number): Outflow {
		if (way === "no dressing") return "discarded";
		if (above < -same || way === "none") return "still";
		if (way === "edge") {
			if (this.weepRate === 0) return "still";
			return above <= same && this.weepRate >= this.exudateRate + this.fillRate ? "seeping" : "weeping";
		}
		const held = way === "port" && above <= same && air.depth >= this.balance - hair;
		if (held && above !== 0) this.#settleOn(this.retained);
		return held ? "held" : "draining";
	}

	/** What leaves per minute while the level runs in a straight line. */
	get #steadyOut(): number {
		switch (this.outflow) {
			case "held":
				return this.exudateRate;
			case "weeping":
				return this.weepRate;
			case "seeping":
				return this.exudateRate + this.fillRate;
			default:
				return 0;
		}
	}

	#draining(air: Air): Draining {
		const d = this.#drain;
		d.level = this.level;
		d.inflow = this.exudateRate;
		d.conductance = this.conductance;
		d.from = air.depth;
		d.towards = air.towards;
		d.tau = air.tau;
		return d;
	}

	/** What leaves the dressing within `minutes` from the anchor. */
	outAfter(minutes: number, air: Air): number {
		return this.outflow === "draining" ? drainedAfter(minutes, this.#draining(air)) : this.#steadyOut * minutes;
	}

	levelAfter(minutes: number, air: Air): number {
		if (this.outflow === "discarded") return 0;
		return this.level + (this.exudateRate + this.fillRate) * minutes - this.outAfter(minutes, air);
	}

	canisterAfter(minutes: number, air: Air): number {
		const taken = this.outflow === "held" || this.outflow === "draining" ? this.outAfter(minutes, air) : 0;
		return this.canister + taken;
	}

	sourceAfter(minutes: number): number {
		return this.source - this.fillRate * minutes;
	}

	/** Books everything that moved in `minutes`. To be called before the air moves on. */
	advance(minutes: number, air: Air): void {
		const comes = this.exudateRate * minutes;
		this.exudate += comes;
		if (this.outflow === "discarded") {
			this.discarded += comes;
			this.shareIntegral += minutes;
			return;
		}
		const runsIn = this.fillRate * minutes;
		const out = this.outAfter(minutes, air);
		const before = this.level * (1 - this.share);
		let levelEnd = this.level + comes + runsIn - out;
		if (this.outflow === "held" || this.outflow === "seeping") levelEnd = this.level;
		const curved = this.outflow === "draining" && air.tau !== Number.POSITIVE_INFINITY;
		const rate = this.outflow === "draining" ? out / minutes : this.#steadyOut;
		const mixed = curved
			? mixDraining(minutes, this.#draining(air), levelEnd, this.share)
			: mixLinear(minutes, this.level, levelEnd, this.share, this.exudateRate, this.fillRate, rate);
		this.shareIntegral += mixed.integral;
		const solutionOut = before + runsIn - levelEnd * (1 - mixed.share);
		this.level = levelEnd;
		this.share = mixed.share;
		this.filled += runsIn;
		this.instilled += runsIn;
		this.source -= runsIn;
		if (this.outflow === "held" || this.outflow === "draining") {
			this.canister += out;
			this.toCanister += out;
			this.returned += solutionOut;
		} else this.wept += out;
	}

	/** Puts the level exactly on `level`; the rounding left over goes where the liquid went. */
	#settleOn(level: number): void {
		const rest = this.level - level;
		this.level = level;
		this.canister += rest;
		this.toCanister += rest;
		this.returned += rest * (1 - this.share);
	}

	/** The level has reached what suction leaves, at this instant. */
	reachRetained(): void {
		if (this.outflow === "draining") this.#settleOn(this.retained);
		else this.level = this.retained;
	}

	/** The canister stands exactly at `content`, at this instant. */
	reachCanister(content: number): void {
		const rest = content - this.canister;
		this.canister = content;
		this.toCanister += rest;
		this.level -= rest;
	}

	/** The set volume is in, exactly. */
	completeFill(volume: number): void {
		const rest = volume - this.filled;
		this.filled = volume;
		this.instilled += rest;
		this.source = Math.max(0, this.source - rest);
		this.level += rest;
	}

	/** A volume of exudate that comes at once. */
	burst(volume: number): void {
		if (volume === 0) return;
		this.exudate += volume;
		if (this.outflow === "discarded") {
			this.discarded += volume;
			return;
		}
		const after = this.level + volume;
		this.share = 1 - (this.level * (1 - this.share)) / after;
		this.level = after;
	}

	/** The old dressing is taken off with what it holds. */
	discard(): void {
		this.discarded += this.level;
		this.level = 0;
		this.share = 1;
		this.open = 1;
	}

	/** Minutes until the level reaches what suction leaves, within `limit`; Infinity: not. */
	timeToRetained(air: Air, limit: number): number {
		switch (this.outflow) {
			case "still": {
				const lacking = this.retained - this.level;
				const rate = this.exudateRate + this.fillRate;
				return lacking > 0 && rate > 0 ? lacking / rate : Number.POSITIVE_INFINITY;
			}
			case "weeping": {
				const fall = this.weepRate - this.exudateRate - this.fillRate;
				return fall > 0 ? (this.level - this.retained) / fall : Number.POSITIVE_INFINITY;
			}
			case "draining":
				return timeToLevel(this.retained, this.#draining(air), limit);
			case "held":
			case "seeping":
			case "discarded":
				return Number.POSITIVE_INFINITY;
		}
	}

	/** Minutes until the canister holds `content`, within `limit`; Infinity: not. */
	timeToCanister(content: number, air: Air, limit: number): number {
		const room = content - this.canister;
		const flows = this.outflow === "held" || this.outflow === "draining";
		if (flows && room <= same) return 0;
		if (this.outflow === "held") return this.exudateRate > 0 ? room / this.exudateRate : Number.POSITIVE_INFINITY;
		if (this.outflow !== "draining") return Number.POSITIVE_INFINITY;
		// No more can pass than is there and comes in meanwhile.
		if (limit < Number.POSITIVE_INFINITY && this.level + this.exudateRate * limit < room)
			return Number.POSITIVE_INFINITY;
		return timeToDrained(room, this.#draining(air), limit);
	}
}
