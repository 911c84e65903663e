import { minutesADay } from "../../vocabulary/index.ts";
import { type Clock, timeOfDay } from "../../words/index.ts";

const midnight: Clock = { start: "", startClockMin: 0, horizonMin: minutesADay };

/** '07:00' for 420, whatever the day. */
export const clockWords = (clockMin: number): string => timeOfDay(clockMin, midnight);

/** Minutes from the left end of a clock of 24 h that begins at `fromMin`, in 0 … 1440. */
export const onClock = (clockMin: number, fromMin: number): number =>
	(((clockMin - fromMin) % minutesADay) + minutesADay) % minutesADay;

/** A span of at most 24 h on that clock: two pieces where it passes the end, none where it is empty. */
export function clockPieces(startMin: number, endMin: number, fromMin: number) {
	const length = Math.min(endMin - startMin, minutesADay);
	if (!(length >= 0)) return [];
	const from = onClock(startMin, fromMin);
	const to = from + length;
	if (to <= minutesADay) return [{ from, to }];
	return [
		{ from, to: minutesADay },
		{ from: 0, to: to - minutesADay },
	];
}
