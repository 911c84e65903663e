/** Jobs of drawing, one a frame, so that none holds up the page; a job of the same name that still waits is replaced. */
export class Frames {
	readonly #window: Window;
	readonly #jobs = new Map<string, () => void>();
	#asked = false;

	constructor(window: Window) {
		this.#window = window;
	}

	plan(name: string, job: () => void): void {
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
