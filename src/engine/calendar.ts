/** Bytes of one place of the heap: the time, the slot, the serial number of its scheduling. */
const placeBytes = 16;
/** Puts four children into one line of a processor's cache where memory comes 16 bytes into a line, as large pieces do. */
const shift = 32;

/**
 * The event calendar: a 4-ary heap of slots ordered by (time, priority, serial).
 *
 * A slot is made once and holds at most one pending time, so that scheduling, moving and cancelling allocate nothing.
 * The serial number counts schedulings: among slots of equal time and priority the one scheduled first comes first.
 * `priority` is a whole number 0…127, smaller first. Serials are compared modulo 2^32: right as long as no slot stays
 * pending while 2^31 others are scheduled.
 *
 * What is popped leaves a hole at the root, which the next slot that is scheduled takes: an event mostly asks for
 * another, and so one walk through the heap serves both. A place of the heap holds all that a comparison needs but
 * the priority, which is looked up only where times are equal.
 */
export class Calendar {
	/** Places of the heap in use, a hole at the root included. */
	#used = 0;
	/** 1 where the root is a hole: its time is −∞, so that nothing rises into it. */
	#hole = 0;
	#slots = 0;
	#serial = 0;
	#capacity = 64;
	#priority = new Uint8Array(64);
	/** Where in the heap a slot stands; −1: it is not pending. */
	#place = new Int32Array(64).fill(-1);
	/** Time of place i at 2·i. */
	#times = new Float64Array(2 * 64);
	/** Slot of place i at 4·i + 2, serial at 4·i + 3. */
	#who = new Int32Array(this.#times.buffer);

	/** Pending slots. */
	get size(): number {
		return this.#used - this.#hole;
	}

	/** A new slot of the given priority; throws RangeError for a priority outside 0…127. */
	slot(priority: number): number {
		if (!Number.isInteger(priority) || priority < 0 || priority > 127)
			throw new RangeError(`priority ${priority} is not a whole number 0…127`);
		if (this.#slots === this.#capacity) this.#grow();
		const slot = this.#slots++;
		this.#priority[slot] = priority;
		return slot;
	}

	/** Puts the slot at `time`, wherever it was before, with a new serial number. Throws RangeError unless `time` is finite. */
	schedule(slot: number, time: number): void {
		if (!(time - time === 0)) throw new RangeError(`time ${time} is not finite`);
		const serial = this.#serial;
		this.#serial = (serial + 1) | 0;
		const at = this.#place[slot];
		if (at >= 0) {
			// The later serial can only send it back, an earlier time only forward.
			if (time < this.#times[2 * at]) this.#rise(at, slot, time, serial);
			else this.#sink(at, slot, time, serial);
		} else if (this.#hole === 1) {
			this.#hole = 0;
			this.#sink(0, slot, time, serial);
		} else this.#rise(this.#used++, slot, time, serial);
	}

	cancel(slot: number): void {
		const at = this.#place[slot];
		if (at < 0) return;
		this.#place[slot] = -1;
		const last = --this.#used;
		if (at === last) return;
		const moved = this.#who[4 * last + 2];
		const serial = this.#who[4 * last + 3];
		const time = this.#times[2 * last];
		if (this.#before(time, moved, serial, at)) this.#rise(at, moved, time, serial);
		else this.#sink(at, moved, time, serial);
	}

	/** Takes every slot out, and counts serials from 0 again. */
	clear(): void {
		for (let at = this.#hole; at < this.#used; at++) this.#place[this.#who[4 * at + 2]] = -1;
		this.#used = 0;
		this.#hole = 0;
		this.#serial = 0;
	}

	/** The time of the next slot; Infinity when nothing is pending. */
	nextTime(): number {
		if (this.#hole === 1) this.#fill();
		return this.#used === 0 ? Number.POSITIVE_INFINITY : this.#times[0];
	}

	/** Removes and returns the next slot. Only to be called while `size > 0`. */
	pop(): number {
		if (this.#hole === 1) this.#fill();
		const slot = this.#who[2];
		this.#place[slot] = -1;
		this.#times[0] = Number.NEGATIVE_INFINITY;
		this.#hole = 1;
		return slot;
	}

	isPending(slot: number): boolean {
		return this.#place[slot] >= 0;
	}

	/** The pending time of the slot; Infinity when it is not pending. */
	timeOf(slot: number): number {
		const at = this.#place[slot];
		return at < 0 ? Number.POSITIVE_INFINITY : this.#times[2 * at];
	}

	/** Whether a slot at `time` comes before the one that stands at `at`. */
	#before(time: number, slot: number, serial: number, at: number): boolean {
		const other = this.#times[2 * at];
		return time < other || (time === other && this.#wins(slot, serial, at));
	}

	/** Whether a slot comes before the one that stands at `at` for the same time. */
	#wins(slot: number, serial: number, at: number): boolean {
		const priorities = this.#priority;
		const above = priorities[slot] - priorities[this.#who[4 * at + 2]];
		return above < 0 || (above === 0 && ((serial - this.#who[4 * at + 3]) | 0) < 0);
	}

	/** Which of two places in the heap comes first. */
	#earlier(a: number, b: number): number {
		const who = this.#who;
		return this.#before(this.#times[2 * a], who[4 * a + 2], who[4 * a + 3], b) ? a : b;
	}

	/** Closes the hole with the last slot of the heap. */
	#fill(): void {
		this.#hole = 0;
		const last = --this.#used;
		if (last === 0) return;
		const who = this.#who;
		this.#sink(0, who[4 * last + 2], this.#times[2 * last], who[4 * last + 3]);
	}

	/** Puts the slot at `at` or above it. */
	#rise(at: number, slot: number, time: number, serial: number): void {
		const times = this.#times;
		const who = this.#who;
		const place = this.#place;
		while (at > 0) {
			const parent = (at - 1) >> 2;
			const above = times[2 * parent];
			if (above < time || (above === time && !this.#wins(slot, serial, parent))) break;
			const other = who[4 * parent + 2];
			times[2 * at] = above;
			who[4 * at + 2] = other;
			who[4 * at + 3] = who[4 * parent + 3];
			place[other] = at;
			at = parent;
		}
		times[2 * at] = time;
		who[4 * at + 2] = slot;
		who[4 * at + 3] = serial;
		place[slot] = at;
	}

	/**
	 * Puts the slot at `at` or below it. The earliest of four children comes by two comparisons of pairs and one of
	 * their winners: sums instead of branches that no processor could foresee. Equal times are settled by order.
	 */
	#sink(at: number, slot: number, time: number, serial: number): void {
		const times = this.#times;
		const who = this.#who;
		const place = this.#place;
		const used = this.#used;
		let first = 4 * at + 1;
		while (first + 3 < used) {
			const t0 = times[2 * first];
			const t1 = times[2 * first + 2];
			const t2 = times[2 * first + 4];
			const t3 = times[2 * first + 6];
			let left = first + +(t1 < t0);
			let right = first + 2 + +(t3 < t2);
			if (t0 === t1) left = this.#earlier(first, first + 1);
			if (t2 === t3) right = this.#earlier(first + 2, first + 3);
			const leftTime = times[2 * left];
			const rightTime = times[2 * right];
			let best = left + (right - left) * +(rightTime < leftTime);
			if (leftTime === rightTime) best = this.#earlier(left, right);
			const bestTime = times[2 * best];
			if (bestTime > time || (bestTime === time && this.#wins(slot, serial, best))) break;
			const other = who[4 * best + 2];
			times[2 * at] = bestTime;
			who[4 * at + 2] = other;
			who[4 * at + 3] = who[4 * best + 3];
			place[other] = at;
			at = best;
			first = 4 * at + 1;
		}
		if (first < used && first + 3 >= used) {
			// Fewer than four children are left, and they have none.
			let best = first;
			for (let child = first + 1; child < used; child++)
				if (times[2 * child] <= times[2 * best]) best = this.#earlier(best, child);
			const bestTime = times[2 * best];
			if (bestTime < time || (bestTime === time && !this.#wins(slot, serial, best))) {
				const other = who[4 * best + 2];
				times[2 * at] = bestTime;
				who[4 * at + 2] = other;
				who[4 * at + 3] = who[4 * best + 3];
				place[other] = at;
				at = best;
			}
		}
		times[2 * at] = time;
		who[4 * at + 2] = slot;
		who[4 * at + 3] = serial;
		place[slot] = at;
	}

	#grow(): void {
		this.#capacity *= 2;
		const copy = <A extends Float64Array | Int32Array | Uint8Array>(from: A, to: A): A => {
			to.set(from);
			return to;
		};
		this.#priority = copy(this.#priority, new Uint8Array(this.#capacity));
		this.#place = copy(this.#place, new Int32Array(this.#capacity).fill(-1));
		const heap = new ArrayBuffer(placeBytes * this.#capacity + shift);
		this.#times = copy(this.#times, new Float64Array(heap, shift));
		this.#who = new Int32Array(heap, shift);
	}
}
