import { SingleBar } from "cli-progress";

/**
 * Shows how much is done of a `total` of what is `counted`, on standard error, when that is a terminal and the work is long
 * enough to be looked at.
 */
export function progressBar(total: number, quiet: boolean, counted = "replications") {
	const shown = !quiet && process.stderr.isTTY === true;
	const began = performance.now();
	let bar: SingleBar | null = null;
	const begin = (done: number): SingleBar => {
		const begun = new SingleBar({
			format: `${counted} {value}/{total} [{bar}] {eta_formatted} left`,
			stream: process.stderr,
			clearOnComplete: true,
		});
		begun.start(total, done);
		return begun;
	};
	return {
		update(done: number): void {
			if (!shown || (bar === null && (performance.now() - began < 700 || done === total))) return;
			bar ??= begin(done);
			bar.update(done);
		},
		stop: () => bar?.stop(),
	};
}
