const bits = new DataView(new ArrayBuffer(8));

/** 32-bit FNV-1a of a name's UTF-16 units; for keys and traces, not for secrets. */
export function nameHash(name: string, offset = 0x811c9dc5): number {
	let hash = offset;
	for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
	return hash | 0;
}

/** A rolling hash of every executed event: the bits of its time and its name, in order. */
export class Trace {
	events = 0;
	#a = 0x9e3779b9 | 0;
	#b = 0x85ebca6b | 0;

	note(time: number, nameHashed: number, _name: string): void {
		bits.setFloat64(0, time);
		this.#fold(bits.getInt32(0));
		this.#fold(bits.getInt32(4));
		this.#fold(nameHashed);
		this.events++;
	}

	/** 16 hexadecimal digits. */
	get hash(): string {
		const digits = (word: number) => (word >>> 0).toString(16).padStart(8, "0");
		return digits(this.#a) + digits(this.#b);
	}

	/** One round of the body of MurmurHash3 on each of two lanes that feed each other (public domain, A. Appleby). */
	#fold(word: number): void {
		let k = Math.imul(word, 0xcc9e2d51);
		k = Math.imul((k << 15) | (k >>> 17), 0x1b873593);
		const a = this.#a ^ k;
		const b = this.#b ^ Math.imul(k, 0x9e3779b1);
		this.#a = (Math.imul((a << 13) | (a >>> 19), 5) + 0xe6546b64 + b) | 0;
		this.#b = (Math.imul((b << 17) | (b >>> 15), 5) + 0x52dce729 + this.#a) | 0;
	}
}

/** A trace that keeps every event, so that two runs can be laid side by side. */
export class TraceLog extends Trace {
	readonly times: number[] = [];
	readonly names: string[] = [];

	override note(time: number, nameHashed: number, name: string): void {
		super.note(time, nameHashed, name);
		this.times.push(time);
		this.names.push(name);
	}
}

export interface Parting {
	/** Index of the first event that differs. */
	readonly index: number;
	readonly first: { readonly time: number; readonly name: string } | null;
	readonly second: { readonly time: number; readonly name: string } | null;
}

/** The first event at which two runs part; null where they are the same. A run that ends early parts there, with null on its side. */
export function firstParting(first: TraceLog, second: TraceLog): Parting | null {
	const length = Math.max(first.times.length, second.times.length);
	const at = (log: TraceLog, i: number) => (i < log.times.length ? { time: log.times[i], name: log.names[i] } : null);
	for (let index = 0; index < length; index++) {
		if (!Object.is(first.times[index], second.times[index]) || first.names[index] !== second.names[index]) {
			return { index, first: at(first, index), second: at(second, index) };
		}
	}
	return null;
}
