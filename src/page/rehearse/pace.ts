/** Times real time that a shift may be run at; 0 is a pause. */
export const paces = [0, 1, 10, 60, 150, 300, 600] as const;

const tickMs = 250;

/**
 * Lets minutes of a shift pass with the clock on the wall, at a pace, until it is told to pause. `pass` is told how many
 * minutes have gone by; where it says false, it is told of them again with the next.
 */
export function paceOf(window: Window, pass: (minutes: number) => boolean) {
	let pace = 0;
	let timer: number | undefined;
	let lastMs = 0;
	return {
		times: () => pace,
		set(times: number): void {
			pace = times;
			window.clearInterval(timer);
			if (times === 0) return;
			lastMs = performance.now();
			timer = window.setInterval(() => {
				const nowMs = performance.now();
				if (pass(((nowMs - lastMs) / 60_000) * times)) lastMs = nowMs;
			}, tickMs);
		},
	};
}
