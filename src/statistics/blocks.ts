import { type Moments, mergeInto } from "./moments.ts";

/** What takes in values, gives what it holds as plain data, fit for a thread or a file, and takes in such data of others. */
interface Accumulator<P> {
	merge(parts: P): void;
	parts(): P;
}

export const partsOf = <P>(all: readonly Accumulator<P>[]): P[] => all.map((one) => one.parts());

/** Merges place by place. */
export function mergeEach<P>(into: readonly Accumulator<P>[], parts: readonly P[]): void {
	for (let i = 0; i < parts.length; i++) into[i].merge(parts[i]);
}

/** Merges the moments of a block, place by place. */
export function mergeMoments(into: readonly Moments[], block: readonly Moments[]): void {
	for (let i = 0; i < block.length; i++) mergeInto(into[i], block[i]);
}

/** Replications that are run and summed in blocks of a fixed size. */
export interface Blocked {
	readonly size: number;
	readonly replications: number;
}

export const blocksIn = ({ size, replications }: Blocked): number => Math.ceil(replications / size);

/** The replications of block k: k·size … (k + 1)·size − 1, as far as there are any. */
export function replicationsIn(block: number, { size, replications }: Blocked): number[] {
	const first = block * size;
	return Array.from({ length: Math.max(0, Math.min(first + size, replications) - first) }, (_, i) => first + i);
}

/**
 * Takes the parts of a run in any order and hands them on by block, so that sums, whose last bits depend on the order,
 * are the same however the blocks were dealt out.
 */
export class InBlockOrder<P> {
	/** The first block that has not been handed on. */
	next = 0;
	readonly #take: (part: P) => void;
	readonly #whose: string;
	readonly #waiting = new Map<number, { readonly part: P; readonly blocks: number }>();

	/** `whose` blocks they are, for complaints: ` of group 2`. */
	constructor(take: (part: P) => void, whose = "") {
		this.#take = take;
		this.#whose = whose;
	}

	/** A part of so many blocks from `first` on. Throws RangeError where it came before. */
	add(first: number, blocks: number, part: P): void {
		if (first < this.next || this.#waiting.has(first)) throw new RangeError(`block ${first}${this.#whose} came twice`);
		this.#waiting.set(first, { part, blocks });
		for (let due = this.#waiting.get(this.next); due !== undefined; due = this.#waiting.get(this.next)) {
			this.#waiting.delete(this.next);
			this.#take(due.part);
			this.next += due.blocks;
		}
	}

	/** Throws RangeError where one of so many blocks has not come. */
	complete(blocks: number): void {
		if (this.next !== blocks) throw new RangeError(`block ${this.next} of ${blocks}${this.#whose} is missing`);
	}
}
