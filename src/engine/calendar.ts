/**
 * The event calendar: a 4-ary heap of slots ordered by (time, priority, serial).
 *
 * A slot is made once and holds at most one pending time, so that scheduling, moving and cancelling allocate nothing.
 * The serial number counts schedulings: among slots of equal time and priority the one scheduled first comes first.
 * `priority` is a whole number 0…127, smaller first; serials are exact up to 2^45 schedulings.
 */
export class Calendar {
	/** Pending slots, and the time at the root: the whole of what `Simulation` needs to look at. */
	size = 0;
	#slots = 0;
	#serial = 0;
	#capacity = 64;
	#time = new Float64Array(64);
	#order = new Float64Array(64);
	#base = new Float64Array(64);
	#place = new Int32Array(64).fill(-1);
	#heap = new Int32Array(64);
	#heapTime = new Float64Array(64);

	/** A new slot of the given priority; throws RangeError for a priority outside 0…127. */
	slot(priority: number): number {
		if (!Number.isInteger(priority) || priority < 0 || priority > 127)
			throw new RangeError(`priority ${priority} is not a whole number 0…127`);
		if (this.#slots === this.#capacity) this.#grow();
		const slot = this.#slots++;
		this.#base[slot] = priority * 2 ** 45;
		return slot;
	}

	/** Puts the slot at `time`, wherever it was before, with a new serial number. Throws RangeError unless `time` is finite. */
	schedule(slot: number, time: number): void {
		if (!(time - time === 0))
			throw new RangeError(`time ${time} is not finite`);
		const order = this.#base[slot] + this.#serial++;
		this.#time[slot] = time;
		this.#order[slot] = order;
		let at = this.#place[slot];
		if (at < 0) at = this.size++;
		this.#settle(at, slot, time, order);
	}

	cancel(slot: number): void {
		const at = this.#place[slot];
		if (at < 0) return;
		this.#place[slot] = -1;
		const last = --this.size;
		if (at === last) return;
		const moved = this.#heap[last];
		this.#settle(at, moved, this.#heapTime[last], this.#order[moved]);
	}

	/** Takes every slot out, and counts serials from 0 again. */
	clear(): void {
		for (let at = 0; at < this.size; at++) this.#place[this.#heap[at]] = -1;
		this.size = 0;
		this.#serial = 0;
	}

	/** The time of the next slot; Infinity when nothing is pending. */
	nextTime(): number {
		return this.size === 0 ? Number.POSITIVE_INFINITY : this.#heapTime[0];
	}

	/** Removes and returns the next slot. Only to be called while `size > 0`. */
	pop(): number {
		const slot = this.#heap[0];
		this.#place[slot] = -1;
		const last = --this.size;
		if (last > 0) this.#down(0, this.#heap[last], this.#heapTime[last]);
		return slot;
	}

	isPending(slot: number): boolean {
		return this.#place[slot] >= 0;
	}

	/** The pending time of the slot; Infinity when it is not pending. */
	timeOf(slot: number): number {
		return this.#place[slot] < 0 ? Number.POSITIVE_INFINITY : this.#time[slot];
	}

	/** Finds the place for a slot that is to stand at or about `at`. */
	#settle(at: number, slot: number, time: number, order: number): void {
		const heap = this.#heap;
		const heapTime = this.#heapTime;
		const place = this.#place;
		const start = at;
		while (at > 0) {
			const parent = (at - 1) >> 2;
			const above = heapTime[parent];
			if (above < time || (above === time && this.#order[heap[parent]] < order))
				break;
			heap[at] = heap[parent];
			heapTime[at] = above;
			place[heap[at]] = at;
			at = parent;
		}
		if (at === start) {
			this.#down(at, slot, time);
			return;
		}
		heap[at] = slot;
		heapTime[at] = time;
		place[slot] = at;
	}

	#down(at: number, slot: number, time: number): void {
		const heap = this.#heap;
		const heapTime = this.#heapTime;
		const place = this.#place;
		const orders = this.#order;
		const size = this.size;
		const order = orders[slot];
		for (;;) {
			const first = 4 * at + 1;
			if (first >= size) break;
			let best = first;
			let bestTime = heapTime[first];
			const end = Math.min(first + 4, size);
			for (let child = first + 1; child < end; child++) {
				const childTime = heapTime[child];
				if (
					childTime < bestTime ||
					(childTime === bestTime && orders[heap[child]] < orders[heap[best]])
				) {
					best = child;
					bestTime = childTime;
				}
			}
			if (time < bestTime || (time === bestTime && order < orders[heap[best]]))
				break;
			heap[at] = heap[best];
			heapTime[at] = bestTime;
			place[heap[at]] = at;
			at = best;
		}
		heap[at] = slot;
		heapTime[at] = time;
		place[slot] = at;
	}

	#grow(): void {
		this.#capacity *= 2;
		const copy = <A extends Float64Array | Int32Array>(from: A, to: A): A => {
			to.set(from);
			return to;
		};
		this.#time = copy(this.#time, new Float64Array(this.#capacity));
		this.#order = copy(this.#order, new Float64Array(this.#capacity));
		this.#base = copy(this.#base, new Float64Array(this.#capacity));
		this.#place = copy(this.#place, new Int32Array(this.#capacity).fill(-1));
		this.#heap = copy(this.#heap, new Int32Array(this.#capacity));
		this.#heapTime = copy(this.#heapTime, new Float64Array(this.#capacity));
	}
}
