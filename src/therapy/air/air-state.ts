import type { Constants } from "../../physics/index.ts";
import { canHold, depthAfter, equilibriumDepth, timeConstant, timeToDepth } from "../../physics/index.ts";

/** Where the curve of depth ends next. `balance`: the depth at which the port takes just what flows in. */
export type AirBoundary = "none" | "set" | "limit" | "balance";

/**
 * Air of one dressing: depth runs from `depth` towards `towards` with the time constant `tau` (Infinity: it stands).
 *
 * The curve ends at a boundary (`next`). Marks of depth that it passes on its way (`low`, `leaking`) bend nothing:
 * their events turn a flag and leave the anchor where it is. Flags are turned by the event of a crossing, or compared
 * afresh where the rules jump (pump start, another depth, another leak); they are not compared again at the instant of
 * a crossing.
 */
export class Air {
	depth = 0;
	towards = 0;
	tau = Number.POSITIVE_INFINITY;
	/** Total leak C, L/min/mmHg. */
	leak = 0;
	/** Air that the pump must thin, L; taken at each pump start. */
	volume = 0;
	/** The set depth has been reached since the last pump start. */
	reached = false;
	/** When the drawdown stops holding the pump back. */
	limitAt = 0;
	/** Below the share of the set depth that counts as held. */
	low = true;
	/** Leak flow above the alarm's limit. */
	leaking = false;
	next: AirBoundary = "none";
	/** Minutes from the anchor until `low` turns, if the curve runs on so long; Infinity: it does not. */
	lowMin = Number.POSITIVE_INFINITY;
	/** The same for `leaking`. */
	leakingMin = Number.POSITIVE_INFINITY;
	setDepth = 0;
	drawdownShare = 0;
	readonly #k: Constants;
	readonly #void: number;

	/** `voidL`: the dressing's own air when its path is closed, L. */
	constructor(constants: Constants, voidL: number) {
		this.#k = constants;
		this.#void = voidL;
	}

	/** Vented, at rest, under a sound seal. */
	reset(): void {
		this.depth = 0;
		this.towards = 0;
		this.tau = Number.POSITIVE_INFINITY;
		this.leak = this.#k["leak.sound"];
	}

	get lowDepth(): number {
		return this.#k["depth.low"] * this.setDepth;
	}

	/** Depth `minutes` after the anchor, mmHg. */
	depthAfter(minutes: number): number {
		if (this.tau === Number.POSITIVE_INFINITY) return this.depth;
		const depth = depthAfter(minutes, this.depth, this.towards, this.tau);
		// The time of a crossing is rounded, and a quick pump moves in that hair of a minute.
		return Math.min(depth, this.setDepth);
	}

	/** Compares the flags afresh after a jump. */
	compare(): void {
		this.low = this.depth < this.lowDepth;
		this.leaking = this.leak * this.depth > this.#k["leak.limit"];
	}

	pumpStart(now: number, volume: number): void {
		this.volume = volume;
		if (this.depth > this.setDepth) this.depth = this.setDepth;
		this.reached = this.depth === this.setDepth;
		this.limitAt = now + this.#k["pump.drawdownLimit"];
		this.compare();
	}

	/** Puts the depth exactly on the boundary that is due now. */
	cross(balance: number): void {
		switch (this.next) {
			case "set":
				this.depth = this.setDepth;
				this.reached = true;
				break;
			case "balance":
				this.depth = balance;
				break;
			case "limit":
			case "none":
				break;
		}
	}

	/**
	 * How depth runs from here, and the minutes until that ends (Infinity: it does not); the marks on its way follow.
	 * `balance`: the depth below which a level that is held is let go; −1 where none is held.
	 */
	plan(now: number, pumpOn: boolean, pathOpen: boolean, balance: number): number {
		const k = this.#k;
		this.next = "none";
		this.lowMin = Number.POSITIVE_INFINITY;
		this.leakingMin = Number.POSITIVE_INFINITY;
		if (!(pumpOn && pathOpen)) {
			this.towards = 0;
			const air = pathOpen ? this.volume : this.#void;
			this.tau =
				this.depth > 0 && this.leak > 0
					? timeConstant(air, k["air.ambient"], 0, k["pump.maxDepth"], this.leak)
					: Number.POSITIVE_INFINITY;
			if (pumpOn && !this.low && this.tau !== Number.POSITIVE_INFINITY)
				this.lowMin = this.#toMark(this.lowDepth, false);
			return Number.POSITIVE_INFINITY;
		}
		const free = this.reached || now >= this.limitAt;
		const flow = (free ? 1 : this.drawdownShare) * k["pump.freeFlow"];
		if (this.reached && this.depth === this.setDepth && canHold(flow, k["pump.maxDepth"], this.leak, this.setDepth)) {
			this.towards = this.depth;
			this.tau = Number.POSITIVE_INFINITY;
			return Number.POSITIVE_INFINITY;
		}
		this.towards = equilibriumDepth(flow, k["pump.maxDepth"], this.leak);
		this.tau = timeConstant(this.volume, k["air.ambient"], flow, k["pump.maxDepth"], this.leak);
		let soonest = Number.POSITIVE_INFINITY;
		if (!free) {
			soonest = this.limitAt - now;
			this.next = "limit";
		}
		const rising = this.towards > this.depth;
		if (rising) soonest = this.#sooner("set", this.setDepth, soonest);
		else if (balance >= 0) soonest = this.#sooner("balance", balance, soonest);
		if (rising === this.low) this.lowMin = this.#toMark(this.lowDepth, rising);
		if (this.leak > 0 && rising !== this.leaking) this.leakingMin = this.#toMark(k["leak.limit"] / this.leak, rising);
		return soonest;
	}

	/** Minutes to a mark that the depth has still to pass: at once where it lies behind, its event being due at this very instant. */
	#toMark(mark: number, rising: boolean): number {
		if (rising ? this.depth >= mark : this.depth <= mark) return 0;
		return timeToDepth(this.depth, mark, this.towards, this.tau);
	}

	/** The sooner of `soonest` and the minutes to `depth`, if that lies ahead; `next` follows. */
	#sooner(name: AirBoundary, depth: number, soonest: number): number {
		const ahead =
			this.towards > this.depth
				? depth < this.towards && depth >= this.depth
				: depth > this.towards && depth <= this.depth;
		if (!ahead) return soonest;
		const minutes = timeToDepth(this.depth, depth, this.towards, this.tau);
		if (minutes >= soonest) return soonest;
		this.next = name;
		return minutes;
	}
}
