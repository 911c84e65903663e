import { exp } from "../elementary/index.ts";
import { exponential, normal, Substream } from "../engine/index.ts";
import type { TherapyLength, WardScenario } from "../scenario/index.ts";
import { type Purpose, purposeNumber } from "../therapy/base/purposes.ts";
import { type WeekClock, weekdayAt } from "./order-moment.ts";

/** One patient of a replication: the number is that of the patient's streams, whatever the policy. */
export interface Patient {
	readonly number: number;
	/** Place in the kinds of the ward. */
	readonly kind: number;
	readonly lengthMin: number;
	/** Age of the dressing when the therapy begins; null: as the kind says. */
	readonly ageMin: number | null;
	/** Was in a bed when the simulation began. */
	readonly isThere: boolean;
}

/**
 * Who comes, when, with what and for how long. Every patient has streams of their own, so that two policies meet the
 * same patients. With chance off arrivals are evenly spread over the integrated rate, the first after half a spacing,
 * kinds come in proportion to their shares, and lengths are their mean.
 */
export class Patients {
	readonly #ward: WardScenario;
	readonly #clock: WeekClock;
	readonly #arrivals: Substream;
	readonly #kind: Substream;
	readonly #length: Substream;
	readonly #age: Substream;
	readonly #shares: number;
	readonly #given: number[];
	#replication = 0;
	#first = true;

	constructor(ward: WardScenario, clock: WeekClock) {
		this.#ward = ward;
		this.#clock = clock;
		const stream = (purpose: Purpose) => new Substream(ward.seed, "ward", purposeNumber(purpose));
		this.#arrivals = stream("ward.arrivals");
		this.#kind = stream("ward.kind");
		this.#length = stream("ward.length");
		this.#age = stream("ward.age");
		this.#shares = ward.kinds.reduce((sum, kind) => sum + kind.share, 0);
		this.#given = ward.kinds.map(() => 0);
	}

	reset(replication: number): void {
		this.#replication = replication;
		this.#arrivals.reset(replication);
		this.#given.fill(0);
		this.#first = true;
	}

	/**
	 * When the next patient comes, after one at `from`: the rate λ(t), which changes at midnight, integrated from there
	 * reaches a unit exponential draw. Infinity where nobody comes.
	 */
	next(from: number): number {
		const { arrivals, chance } = this.#ward;
		if (arrivals === null || Math.max(...arrivals.factors) === 0) return Number.POSITIVE_INFINITY;
		let left = chance ? exponential(this.#arrivals) : this.#first ? 0.5 : 1;
		this.#first = false;
		const { startClockMin } = this.#clock;
		for (let at = from; ; ) {
			const day = Math.floor((startClockMin + at) / 1440);
			const midnight = (day + 1) * 1440 - startClockMin;
			const factor = arrivals.factors[weekdayAt(at, this.#clock)];
			const rate = (arrivals.perDay * factor) / 1440;
			const hazard = rate * (midnight - at);
			if (hazard >= left && rate > 0) return at + left / rate;
			left -= hazard;
			at = midnight;
		}
	}

	/** A patient who comes by chance. */
	arriving(number: number): Patient {
		const kind = this.#drawKind(number);
		return { number, kind, lengthMin: this.#drawLength(number, false), ageMin: null, isThere: false };
	}

	/**
	 * A patient who is there when the simulation begins: what is left of the therapy is that of a ward in balance (a
	 * length drawn in proportion to itself, of which a uniform share is left; Cox 1962, Renewal Theory, from memory),
	 * and the dressing has a uniform age below that at which it is changed.
	 */
	present(number: number, kind: number): Patient {
		const { chance, care } = this.#ward;
		const whole = this.#drawLength(number, true);
		const change = care.dressingChange;
		this.#age.reset(this.#replication, number);
		const ageMin = chance && change !== null && "everyMin" in change ? change.everyMin * this.#age.uniform() : null;
		return { number, kind, lengthMin: chance ? whole * this.#length.uniform() : whole, ageMin, isThere: true };
	}

	#drawKind(number: number): number {
		const { kinds, chance } = this.#ward;
		if (!chance) {
			const came = this.#given.reduce((sum, count) => sum + count, 1);
			let next = 0;
			let most = Number.NEGATIVE_INFINITY;
			kinds.forEach((kind, i) => {
				const owed = (kind.share / this.#shares) * came - this.#given[i];
				if (owed > most + 1e-12) {
					most = owed;
					next = i;
				}
			});
			this.#given[next]++;
			return next;
		}
		this.#kind.reset(this.#replication, number);
		const shares = kinds.map(({ share }) => share);
		return placeAt(this.#kind.uniform(), shares);
	}

	/** `biased`: with a density in proportion to the length, as whoever is found in a bed has it. */
	#drawLength(number: number, biased: boolean): number {
		const { length, chance } = this.#ward;
		if (length === null) return Number.POSITIVE_INFINITY;
		if (!chance) return meanLength(length);
		this.#length.reset(this.#replication, number);
		switch (length.form) {
			case "lognormal": {
				// Biased by its length a lognormal is a lognormal of e^(σ²) times the median.
				const { medianMin, spread } = length;
				const z = spread * normal(this.#length);
				return medianMin * exp(biased ? z + spread * spread : z);
			}
			case "exponential": {
				const one = exponential(this.#length);
				// Biased by its length it is a Gamma of shape 2.
				return length.meanMin * (biased ? one + exponential(this.#length) : one);
			}
			case "table": {
				const weights = length.rows.map(({ share, lengthMin }) => (biased ? share * lengthMin : share));
				return length.rows[placeAt(this.#length.uniform(), weights)].lengthMin;
			}
		}
	}
}

/** The place that a uniform number falls on, where each has room in proportion to its weight. */
function placeAt(u: number, weights: readonly number[]): number {
	let left = u * weights.reduce((sum, weight) => sum + weight, 0);
	const place = weights.findIndex((weight) => {
		left -= weight;
		return left < 0;
	});
	return place < 0 ? weights.length - 1 : place;
}

/** Mean length of a therapy, min. */
export function meanLength(length: TherapyLength): number {
	switch (length.form) {
		case "lognormal":
			return length.medianMin * exp((length.spread * length.spread) / 2);
		case "exponential":
			return length.meanMin;
		case "table": {
			const shares = length.rows.reduce((sum, row) => sum + row.share, 0);
			return length.rows.reduce((sum, row) => sum + row.share * row.lengthMin, 0) / shares;
		}
	}
}
