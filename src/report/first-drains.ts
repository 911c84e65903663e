import type { DressingDay } from "../analysis/day-result.ts";
import type { CycleSpan } from "../charts/index.ts";

/**
 * What the lens of each of several days enlarges: the minutes around the first return of suction after a dwell, in the day
 * where that comes first, and the same minutes of the others; the first minutes where nothing is filled.
 */
export function firstDrains(
	days: readonly DressingDay[],
	toMin: number,
): CycleSpan[] {
	const drains = days.map(
		({ phases }) =>
			phases.find(({ phase }) => phase === "drain")?.startMin ??
			Number.POSITIVE_INFINITY,
	);
	const first = Math.min(...drains);
	if (first >= toMin)
		return days.map(() => ({
			heading: "The first minutes, enlarged",
			fromMin: 0,
			toMin: Math.min(15, toMin),
		}));
	return drains.map((drain) => ({
		heading:
			drain === first
				? "Suction returns after the first dwell, enlarged"
				: "The same minutes, enlarged",
		fromMin: Math.max(0, first - 8),
		toMin: Math.min(toMin, first + 12),
	}));
}
