import { SingleBar } from "cli-progress";

/** Shows how far a run is, on standard error, when that is a terminal and the work is long enough to be looked at. */
export class Progress {
	#bar: SingleBar | null = null;
	readonly #total: number;
	readonly #shown: boolean;
	readonly #what: string;
	readonly #began = performance.now();

	/** `what` is counted. */
	constructor(total: number, quiet: boolean, what = "replications") {
		this.#total = total;
		this.#what = what;
		this.#shown = !quiet && process.stderr.isTTY === true;
	}

	update(done: number): void {
		if (!this.#shown) return;
		if (this.#bar === null) {
			if (performance.now() - this.#began < 700 || done === this.#total) return;
			this.#bar = new SingleBar({
				format: `${this.#what} {value}/{total} [{bar}] {eta_formatted} left`,
				stream: process.stderr,
				clearOnComplete: true,
			});
			this.#bar.start(this.#total, done);
		}
		this.#bar.update(done);
	}

	stop(): void {
		this.#bar?.stop();
	}
}
