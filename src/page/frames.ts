/** Drawing goes on within a frame until this long has gone by, ms; what is left waits for the next. */
const longestMs = 6;

/** Jobs of drawing, as many in a frame as it has time for, so that they do not hold up the page; one takes the place of an older one of its name, behind all others. */
export class Frames {
	readonly #window: Window;
	readonly #jobs = new Map<string, () => void>();
	#asked = false;

	constructor(window: Window) {
		this.#window = window;
	}

	plan(name: string, job: () => void): void {
		this.#jobs.delete(name);
		this.#jobs.set(name, job);
		this.#ask();
	}

	#ask(): void {
		if (this.#asked || this.#jobs.size === 0) return;
		this.#asked = true;
		this.#window.requestAnimationFrame(() => {
			this.#asked = false;
			const began = performance.now();
			for (const [name, job] of [...this.#jobs]) {
				this.#jobs.delete(name);
				job();
				if (performance.now() - began > longestMs) break;
			}
			this.#ask();
		});
	}
}
