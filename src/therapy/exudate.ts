import { exp, ln } from "../elementary/index.ts";
import { exponential, normal, type Stream } from "../engine/index.ts";
import type { Constants } from "../physics/index.ts";
import type { Dressing } from "../scenario/index.ts";

/** The least exudate that counts, mL/min or, at once, mL. */
const least = 1e-9;

/**
 * What the wound gives off, mL/min: base rate × patient factor × block factor, and whatever bleeds.
 *
 * Factors are lognormal of mean 1: exp(s·z − s²/2), s² = ln(1 + cv²); the z of the blocks form a first-order
 * autoregression, z_k = ρ·z_{k−1} + √(1 − ρ²)·N. With chance off both factors are 1.
 */
export class Exudate {
	#patient = 1;
	#block = 1;
	#z = 0;
	#bleeding = 0;
	readonly #base: number;
	readonly #patientSigma: number;
	readonly #blockSigma: number;
	readonly #correlation: number;
	readonly #innovation: number;
	readonly #meanBurst: number;
	/** Mean minutes between bursts of an outflow; Infinity where there is none. */
	readonly spacing: number;
	readonly #chance: boolean;
	readonly #streams: {
		readonly patient: Stream;
		readonly blocks: Stream;
		readonly times: Stream;
		readonly volumes: Stream;
	};

	constructor(
		dressing: Dressing,
		k: Constants,
		chance: boolean,
		streams: {
			patient: Stream;
			blocks: Stream;
			times: Stream;
			volumes: Stream;
		},
	) {
		this.#base = dressing.exudateMlPerDay / 1440;
		this.#patientSigma = Math.sqrt(ln(1 + k["exudate.patientCv"] ** 2));
		this.#blockSigma = Math.sqrt(ln(1 + k["exudate.blockCv"] ** 2));
		this.#correlation = k["exudate.correlation"];
		this.#innovation = Math.sqrt(1 - this.#correlation * this.#correlation);
		const outflow = dressing.outflow;
		this.spacing =
			outflow === null || outflow.burstsPerDay === 0
				? Number.POSITIVE_INFINITY
				: 1440 / outflow.burstsPerDay;
		this.#meanBurst =
			outflow === null || outflow.burstsPerDay === 0
				? 0
				: outflow.totalMlPerDay / outflow.burstsPerDay;
		this.#chance = chance;
		this.#streams = streams;
	}

	reset(): void {
		this.#bleeding = 0;
		if (!this.#chance) return;
		this.#patient = factor(this.#patientSigma, normal(this.#streams.patient));
		this.#z = normal(this.#streams.blocks);
		this.#block = factor(this.#blockSigma, this.#z);
	}

	/** mL/min, now; less than a microlitre in two years counts as none, so that no level is too small to reckon with. */
	get rate(): number {
		const rate = this.#base * this.#patient * this.#block + this.#bleeding;
		return rate < least ? 0 : rate;
	}

	nextBlock(): void {
		this.#z =
			this.#correlation * this.#z +
			this.#innovation * normal(this.#streams.blocks);
		this.#block = factor(this.#blockSigma, this.#z);
	}

	/** Adds (or, negative, takes away) a constant bleeding, mL/min. */
	bleed(rate: number): void {
		this.#bleeding += rate;
		if (Math.abs(this.#bleeding) < 1e-12) this.#bleeding = 0;
	}

	/** Minutes to the next burst: a Poisson process with chance on, else evenly spaced, the first after half a spacing. */
	untilBurst(first: boolean): number {
		if (this.#chance) return this.spacing * exponential(this.#streams.times);
		return first ? this.spacing / 2 : this.spacing;
	}

	/** mL; 0 where it would be too small to reckon with. */
	burstVolume(): number {
		const volume = this.#chance
			? this.#meanBurst * exponential(this.#streams.volumes)
			: this.#meanBurst;
		return volume < least ? 0 : volume;
	}
}

function factor(sigma: number, z: number): number {
	return exp(sigma * z - (sigma * sigma) / 2);
}
