/** Jobs of drawing, one a frame, so that none holds up the page; one takes the place of an older one of its name, behind all others. */
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
			const [next] = this.#jobs;
			if (next === undefined) return;
			const [name, job] = next;
			this.#jobs.delete(name);
			job();
			this.#ask();
		});
	}
}
