/** Drawing goes on within a frame until this long has gone by, ms; what is left waits for the next. */
const longestMs = 6;

/** Jobs of drawing, as many in a frame as it has time for, so that they do not hold up the page; one takes the place of an older one of its name, behind all others. */
export class Frames {
	readonly #window: Window;
	readonly #jobs = new Map<string, () => void>();
	#atRest: (() => void) | null = null;
	#asked = false;

	constructor(window: Window) {
		this.#window = window;
	}

	plan(name: string, job: () => void): void {
		this.#jobs.delete(name);
		this.#jobs.set(name, job);
		this.#ask();
	}

	/** Does a job when no other is left, those that others bring with them included. */
	whenAtRest(job: () => void): void {
		this.#atRest = job;
		this.#ask();
	}

	#ask(): void {
		if (this.#asked || (this.#jobs.size === 0 && this.#atRest === null)) return;
		this.#asked = true;
		this.#window.requestAnimationFrame(() => {
			this.#asked = false;
			const began = performance.now();
			for (const [name, job] of [...this.#jobs]) {
				this.#jobs.delete(name);
				job();
				if (performance.now() - began > longestMs) break;
			}
			if (this.#jobs.size === 0) {
				const job = this.#atRest;
				this.#atRest = null;
				job?.();
			}
			this.#ask();
		});
	}
}
