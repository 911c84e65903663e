import { same } from "./liquid-state.ts";

/**
 * How much exudate reached the dressing within the last `window` minutes: a sum that grows with the rate at its
 * leading edge and shrinks with the rate that was in force `window` ago. What leaves the window has an event of its own.
 */
export class OutputWindow {
	/** The sum stands above the limit. */
	above = false;
	readonly #limit: number;
	readonly #window: number;
	readonly #times: number[] = [];
	/** Change of rate, mL/min, at each time; 0 for a burst. */
	readonly #steps: number[] = [];
	readonly #bursts: number[] = [];
	#head = 0;
	#sum = 0;
	#rateIn = 0;
	#rateOut = 0;
	#at = 0;
	/** Whether the limit can be reached at all: nothing is watched before that. */
	#watched = false;

	constructor(limit: number, window: number) {
		this.#limit = limit;
		this.#window = window;
	}

	/** Starts anew at `now` with a steady `rate`; `mayBurst` where bursts or bleeding are to be expected. */
	reset(now: number, rate: number, mayBurst: boolean): void {
		this.#times.length = 0;
		this.#steps.length = 0;
		this.#bursts.length = 0;
		this.#head = 0;
		this.#sum = 0;
		this.#rateIn = 0;
		this.#rateOut = 0;
		this.#at = now;
		this.above = false;
		this.#watched = mayBurst;
		this.setRate(now, rate);
	}

	setRate(now: number, rate: number): void {
		this.#advance(now);
		this.#push(now, rate - this.#rateIn, 0);
		this.#rateIn = rate;
		if (rate * this.#window > this.#limit) this.#watched = true;
	}

	burst(now: number, volume: number): void {
		this.#advance(now);
		this.#watched = true;
		this.#push(now, 0, volume);
		this.#sum += volume;
	}

	/** Takes note that `now` is the moment the sum crosses the limit or something leaves the window; returns whether it stands above. */
	pass(now: number): boolean {
		const crossing = this.#crossing();
		this.#advance(now);
		if (!this.#leave(now) && crossing <= now) this.above = !this.above;
		else this.compare();
		return this.above;
	}

	/** Compares the sum with the limit after a jump. */
	compare(): void {
		this.above = this.#sum > this.#limit + same;
	}

	/** The time of the next crossing or leaving; Infinity where none can matter. */
	next(): number {
		if (!this.#watched) return Number.POSITIVE_INFINITY;
		const leaves = this.#head < this.#times.length ? this.#times[this.#head] + this.#window : Number.POSITIVE_INFINITY;
		return Math.min(leaves, this.#crossing());
	}

	#crossing(): number {
		const slope = this.#rateIn - this.#rateOut;
		const gap = this.#limit + same - this.#sum;
		if (this.above ? slope < 0 : slope > 0) return this.#at + Math.max(0, gap / slope);
		return Number.POSITIVE_INFINITY;
	}

	#push(time: number, step: number, volume: number): void {
		this.#times.push(time);
		this.#steps.push(step);
		this.#bursts.push(volume);
	}

	/** What should have left meanwhile, unwatched, leaves at its own time. */
	#advance(now: number): void {
		while (this.#head < this.#times.length && this.#times[this.#head] + this.#window < now) {
			this.#runTo(this.#times[this.#head] + this.#window);
			this.#leave(this.#at);
		}
		this.#runTo(now);
	}

	#runTo(time: number): void {
		this.#sum += (this.#rateIn - this.#rateOut) * (time - this.#at);
		this.#at = time;
	}

	/** Lets out what is due; whether anything was. */
	#leave(now: number): boolean {
		let left = false;
		while (this.#head < this.#times.length && this.#times[this.#head] + this.#window <= now) {
			this.#rateOut += this.#steps[this.#head];
			this.#sum -= this.#bursts[this.#head];
			this.#head++;
			left = true;
		}
		return left;
	}
}
