/** Stands where a time would, for something that has not begun: every time of a day is 0 or later. */
export const never = -1;

const dayBegins = 7 * 60;
const nightBegins = 19 * 60;

/** Minutes after midnight of a time that may run over many days. */
export function clockOf(minutes: number): number {
	return ((minutes % 1440) + 1440) % 1440;
}

/** Night is from 19:00 to 07:00; `minutes` count from a midnight. */
export function isNight(minutes: number): boolean {
	const clock = clockOf(minutes);
	return clock < dayBegins || clock >= nightBegins;
}

/** The first time at or after `from` (minutes from the start) at which the clock shows one of `clocks`; Infinity for none. */
export function nextClock(from: number, startClockMin: number, clocks: readonly number[]): number {
	let soonest = Number.POSITIVE_INFINITY;
	for (const clock of clocks) {
		const first = clockOf(clock - startClockMin);
		const days = Math.max(0, Math.ceil((from - first) / 1440));
		soonest = Math.min(soonest, first + 1440 * days);
	}
	return soonest;
}
