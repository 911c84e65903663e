/** Times real time that a shift may be run at; 0 is a pause. */
export const paces = [0, 1, 10, 60, 150, 300, 600] as const;

const tickMs = 250;

/** Lets minutes of a shift pass with the clock on the wall, at a pace, until it is told to pause. */
export class Pace {
	readonly #window: Window;
	readonly #pass: (minutes: number) => boolean;
	#times = 0;
	#timer: number | null = null;
	#lastMs = 0;

	/** `pass` is told how many minutes have gone by; where it says false, it is told of them again with the next. */
	constructor(window: Window, pass: (minutes: number) => boolean) {
		this.#window = window;
		this.#pass = pass;
	}

	get times(): number {
		return this.#times;
	}

	set(times: number): void {
		this.#times = times;
		if (this.#timer !== null) this.#window.clearInterval(this.#timer);
		this.#timer = null;
		if (times === 0) return;
		this.#lastMs = performance.now();
		this.#timer = this.#window.setInterval(() => {
			const nowMs = performance.now();
			const minutes = ((nowMs - this.#lastMs) / 60_000) * this.#times;
			if (this.#pass(minutes)) this.#lastMs = nowMs;
		}, tickMs);
	}
}
