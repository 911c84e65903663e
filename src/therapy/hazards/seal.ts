import pow from "@stdlib/math-base-special-pow";
import { exp } from "../../elementary/index.ts";
import { exponential, lognormal, type Substream } from "../../engine/index.ts";
import { bracketedRoot, type Constants, gaussLegendre8 } from "../../physics/index.ts";

import { never } from "../base/clock.ts";

export interface SealStreams {
	readonly dry: Substream;
	readonly drySize: Substream;
	readonly wet: Substream;
	readonly wetSize: Substream;
}

/** What a wet seal needs to know of the liquid over it: the level at a time of the present span, mL. */
export interface LevelOver {
	levelAt(at: number): number;
	readonly capacity: number;
}

/** Minutes after which the wet hazard stands still. */
const wetPlateau = 60;

/**
 * The hazards of the seal. A breach happens when the integrated hazard since the last one reaches a unit exponential
 * draw E; the dry and the wet hazard have an E each, which lasts over cycles and dressings.
 *
 *     dry  h(t) = r·b(t)                                       r = breach.dry·difficulty
 *     wet  h(s) = (k/λ)·(s/λ)^(k−1)·b(t)·exp(4·min(1, max(0, L − cap)/cap))·difficulty,  s held at 60 min
 *     b(t) = 1 + breach.age·age(t)                             continuous in the age of the dressing
 *
 * Weibull: hazard of shape k and scale λ in the time s since the fill began.
 */
export class Seal {
	/** When the dressing's age was 0. */
	ageZero = 0;
	#dryLeft = 0;
	#wetLeft = 0;
	#since = 0;
	#fillBegan = 0;
	#over = false;
	/** When the seal will break below capacity; `never`: to be worked out. */
	#plainAt = never;
	readonly #streams: SealStreams;
	readonly #dryRate: number;
	readonly #wetScale: number;
	readonly #shape: number;
	readonly #aging: number;
	readonly #difficulty: number;
	readonly #overfill: number;
	readonly #sizeMedian: number;
	readonly #sizeSigma: number;

	constructor(k: Constants, difficulty: number, streams: SealStreams) {
		this.#streams = streams;
		this.#difficulty = difficulty;
		this.#dryRate = (k["breach.dry"] / 60) * difficulty;
		this.#wetScale = k["breach.wetScale"];
		this.#shape = k["breach.wetShape"];
		this.#aging = k["breach.age"] / 1440;
		this.#overfill = k["breach.overfill"];
		this.#sizeMedian = k["breach.sizeMedian"];
		this.#sizeSigma = k["breach.sizeSigma"];
	}

	reset(ageZero: number): void {
		this.ageZero = ageZero;
		this.#over = false;
		this.#dryLeft = exponential(this.#streams.dry);
		this.#wetLeft = exponential(this.#streams.wet);
	}

	/** Size of a breach that a move makes, from the move's own stream, L/min/mmHg. */
	size(stream: Substream): number {
		return lognormal(stream, this.#sizeMedian, this.#sizeSigma);
	}

	/** The dry hazard runs from `now`; returns when it will break the seal (Infinity: never). */
	beginDry(now: number): number {
		this.#since = now;
		return now + this.#lasts(this.#dryLeft, this.#dryRate, now);
	}

	/**
	 * Minutes from `from` until a hazard that grows with the age of the dressing alone has used up `left`:
	 * r·(b·Δ + a·Δ²/2) = E, solved without cancellation. Infinity where the rate is nothing, or as good as.
	 */
	#lasts(left: number, rate: number, from: number): number {
		const target = left / rate;
		if (!(target < Number.POSITIVE_INFINITY)) return Number.POSITIVE_INFINITY;
		const b = 1 + this.#aging * (from - this.ageZero);
		return (2 * target) / (b + Math.sqrt(b * b + 2 * this.#aging * target));
	}

	endDry(now: number): void {
		const span = now - this.#since;
		const b = 1 + this.#aging * (this.#since - this.ageZero);
		this.#dryLeft = Math.max(0, this.#dryLeft - this.#dryRate * span * (b + (this.#aging * span) / 2));
	}

	/** The seal has just broken by itself while dry: a new E; returns the size of the breach. */
	breakDry(): number {
		this.#dryLeft = exponential(this.#streams.dry);
		return this.size(this.#streams.drySize);
	}

	beginWet(now: number): void {
		this.#fillBegan = now;
		this.#since = now;
		this.#over = false;
		this.#plainAt = never;
	}

	endWet(now: number, liquid: LevelOver): void {
		this.#account(now, liquid);
	}

	breakWet(now: number): number {
		this.#since = now;
		this.#plainAt = never;
		this.#wetLeft = exponential(this.#streams.wet);
		return this.size(this.#streams.wetSize);
	}

	/** Books the hazard of a span that ends now, if it ran above capacity. To be called before the liquid moves on. */
	passWet(now: number, liquid: LevelOver): void {
		if (this.#over) this.#account(now, liquid);
	}

	/**
	 * When the wet hazard will break the seal (Infinity: not within this span). `highest`: the most that the level can
	 * be until `spanEnd`. Below capacity the answer does not depend on the span.
	 */
	planWet(now: number, spanEnd: number, highest: number, liquid: LevelOver): number {
		const over = highest > liquid.capacity;
		if (over !== this.#over) {
			if (now > this.#since) this.#accountPlain(now);
			this.#over = over;
			this.#plainAt = never;
		}
		if (!over) {
			if (this.#plainAt < 0) this.#plainAt = this.#plainTime();
			return this.#plainAt;
		}
		const integral = (t: number) => this.#overIntegral(now, t, liquid);
		if (integral(spanEnd) < this.#wetLeft) return Number.POSITIVE_INFINITY;
		return bracketedRoot(
			(t) => integral(t) - this.#wetLeft,
			(t) => this.#overHazard(t, liquid),
			now,
			spanEnd,
			1e-9,
		);
	}

	#account(now: number, liquid: LevelOver): void {
		if (!this.#over) {
			this.#accountPlain(now);
			return;
		}
		this.#wetLeft = Math.max(0, this.#wetLeft - this.#overIntegral(this.#since, now, liquid));
		this.#since = now;
	}

	#accountPlain(now: number): void {
		const used = this.#plainIntegral(now - this.#fillBegan) - this.#plainIntegral(this.#since - this.#fillBegan);
		this.#wetLeft = Math.max(0, this.#wetLeft - used);
		this.#since = now;
	}

	#power(x: number, exponent: number): number {
		return exponent === 2 ? x * x : exponent === 1 ? x : pow(x, exponent);
	}

	/** Integrated hazard from the start of the fill to `s` min later, below capacity. */
	#plainIntegral(s: number): number {
		const k = this.#shape;
		const young = 1 + this.#aging * (this.#fillBegan - this.ageZero);
		const rising = Math.min(s, wetPlateau);
		let sum = this.#power(rising / this.#wetScale, k) * (young + (this.#aging * rising * k) / (k + 1));
		if (s > wetPlateau) {
			const flat = s - wetPlateau;
			sum += this.#weibull(wetPlateau) * flat * (young + this.#aging * (wetPlateau + flat / 2));
		}
		return sum * this.#difficulty;
	}

	/** Weibull hazard at `s` min, per min. */
	#weibull(s: number): number {
		return (this.#shape / this.#wetScale) * this.#power(Math.min(s, wetPlateau) / this.#wetScale, this.#shape - 1);
	}

	#plainHazard(s: number): number {
		return this.#difficulty * this.#weibull(s) * (1 + this.#aging * (this.#fillBegan + s - this.ageZero));
	}

	/** When the hazard, left alone, will have been used up: Newton's method from the right, where it cannot overshoot for a shape of 1 or more. */
	#plainTime(): number {
		const since = this.#since - this.#fillBegan;
		const target = this.#plainIntegral(since) + this.#wetLeft;
		const flat = target - this.#plainIntegral(wetPlateau);
		if (flat >= 0) {
			const rate = this.#weibull(wetPlateau) * this.#difficulty;
			const stands = this.#fillBegan + wetPlateau;
			return stands + this.#lasts(flat, rate, stands);
		}
		if (this.#shape < 1) {
			const s = bracketedRoot(
				(x) => this.#plainIntegral(x) - target,
				(x) => this.#plainHazard(x),
				since,
				wetPlateau,
				1e-10,
			);
			return this.#fillBegan + s;
		}
		const young = this.#difficulty * (1 + this.#aging * (this.#fillBegan - this.ageZero));
		const root = this.#shape === 2 ? Math.sqrt(target / young) : pow(target / young, 1 / this.#shape);
		let s = Math.min(wetPlateau, this.#wetScale * root);
		for (let i = 0; i < 40; i++) {
			const step = (this.#plainIntegral(s) - target) / this.#plainHazard(s);
			s -= step;
			if (!(step > 1e-11)) break;
		}
		return this.#fillBegan + Math.max(s, since);
	}

	#overHazard(t: number, liquid: LevelOver): number {
		const excess = Math.min(1, Math.max(0, liquid.levelAt(t) - liquid.capacity) / liquid.capacity);
		return this.#plainHazard(t - this.#fillBegan) * exp(this.#overfill * excess);
	}

	/** By Gauss–Legendre panels of at most two minutes (400 at the most). */
	#overIntegral(from: number, to: number, liquid: LevelOver): number {
		const panels = Math.min(400, Math.max(1, Math.ceil((to - from) / 2)));
		const wide = (to - from) / panels;
		let sum = 0;
		for (let i = 0; i < panels; i++) {
			const start = from + i * wide;
			sum += gaussLegendre8((t) => this.#overHazard(t, liquid), start, start + wide);
		}
		return sum;
	}
}
