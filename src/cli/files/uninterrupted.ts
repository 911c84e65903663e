/** Signals that ask a program to stop. */
export const stopSignals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/**
 * Does a piece of work on the disk to its end even where an interrupt comes in the middle, then lets the interrupt have
 * its way: the process ends as it would have done, and a shell sees 130 after Ctrl-C. Elsewhere signals are not held up.
 */
export async function uninterrupted(work: () => void): Promise<void> {
	let caught: NodeJS.Signals | null = null;
	const hold = (signal: NodeJS.Signals) => {
		caught ??= signal;
	};
	for (const signal of stopSignals) process.on(signal, hold);
	try {
		work();
		// A signal that came meanwhile is told of in the next turns of the event loop.
		for (let turn = 0; turn < 2; turn++) await new Promise((resume) => setImmediate(resume));
	} finally {
		for (const signal of stopSignals) process.off(signal, hold);
		if (caught !== null) process.kill(process.pid, caught);
	}
}
