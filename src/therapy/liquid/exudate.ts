import { exp, ln } from "../../elementary/index.ts";
import { normal, type Substream } from "../../engine/index.ts";
import type { Constants } from "../../physics/index.ts";

/** The least exudate that counts, mL at once or per minute. */
export const leastMl = 1e-9;

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
	readonly #chance: boolean;
	readonly #streams: { readonly patient: Substream; readonly blocks: Substream };

	constructor(mlPerDay: number, k: Constants, chance: boolean, streams: { patient: Substream; blocks: Substream }) {
		this.#base = mlPerDay / 1440;
		this.#patientSigma = Math.sqrt(ln(1 + k["exudate.patientCv"] ** 2));
		this.#blockSigma = Math.sqrt(ln(1 + k["exudate.blockCv"] ** 2));
		this.#correlation = k["exudate.correlation"];
		this.#innovation = Math.sqrt(1 - this.#correlation * this.#correlation);
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
		return rate < leastMl ? 0 : rate;
	}

	nextBlock(): void {
		this.#z = this.#correlation * this.#z + this.#innovation * normal(this.#streams.blocks);
		this.#block = factor(this.#blockSigma, this.#z);
	}

	/** Adds (or, negative, takes away) a constant bleeding, mL/min. */
	bleed(rate: number): void {
		this.#bleeding += rate;
		if (Math.abs(this.#bleeding) < 1e-12) this.#bleeding = 0;
	}
}

function factor(sigma: number, z: number): number {
	return exp(sigma * z - (sigma * sigma) / 2);
}
