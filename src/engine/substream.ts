import seedrandom from "seedrandom";
import { nameHash } from "./trace.ts";

// The published types know string seeds only; the generator takes an integer of up to 53 bits as two words.
const tychei = seedrandom.tychei as unknown as (seed: number) => { double: () => number };

/** The finaliser of MurmurHash3 (public domain, A. Appleby): every bit of the word reaches every bit of the result. */
function mix(word: number): number {
	let h = word;
	h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
	h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
	return h ^ (h >>> 16);
}

/**
 * A stream of uniform numbers named by (seed, replication, owner, purpose).
 *
 * The name alone decides the numbers, so that adding an owner or a purpose changes no other stream. The generator
 * is seedrandom's `tychei`, seeded with 53 bits of the hashed name, and is made when it is first drawn from.
 */
export class Substream {
	readonly #high: number;
	readonly #low: number;
	#replication = 0;
	#instance = 0;
	#draw: (() => number) | null = null;

	constructor(seed: string, owner: string, purpose: number) {
		// Lengths go in so that ("a", "bc") and ("ab", "c") differ; two offsets give two independent lanes.
		const name = `${seed.length}:${seed}${owner.length}:${owner}`;
		this.#high = mix(nameHash(name) ^ mix(purpose + 1));
		this.#low = mix(nameHash(name, 0x2c1b3c6d) + Math.imul(purpose + 1, 0x9e3779b1));
	}

	/** Starts the stream of another replication; of another instance, where an owner comes many times in it. */
	reset(replication: number, instance = 0): void {
		this.#replication = replication;
		this.#instance = instance;
		this.#draw = null;
	}

	/** The next number, 0 ≤ u < 1, with 53 random bits. */
	uniform(): number {
		if (this.#draw === null) {
			const r = Math.imul(this.#replication + 1, 0x85ebca77);
			// mix(0) is 0: instance 0 is the stream of an owner that comes once.
			const i = Math.imul(this.#instance, 0xc2b2ae3d);
			const high = mix(this.#high + mix(r) + mix(i)) & 0x1fffff;
			const low = mix(this.#low ^ mix(r + 0x27d4eb2f) ^ mix(i * 3)) >>> 0;
			this.#draw = tychei(high * 4294967296 + low).double;
		}
		return this.#draw();
	}
}
