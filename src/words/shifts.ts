import type { Clock } from "./clock.ts";

export interface Shift {
	readonly shift: "day" | "night";
	readonly startMin: number;
	readonly endMin: number;
}

const halfDay = 720;

/** The shifts that a span of time touches, cut to it. */
export function shiftsBetween(fromMin: number, toMin: number, clock: Clock): Shift[] {
	const shifts: Shift[] = [];
	const firstBoundary = Math.floor((clock.startClockMin + fromMin - 420) / halfDay) * halfDay + 420;
	for (let start = firstBoundary; start - clock.startClockMin < toMin; start += halfDay) {
		const startMin = Math.max(fromMin, start - clock.startClockMin);
		const endMin = Math.min(toMin, start + halfDay - clock.startClockMin);
		const isDay = ((start - 420) / halfDay) % 2 === 0;
		if (endMin > startMin) shifts.push({ shift: isDay ? "day" : "night", startMin, endMin });
	}
	return shifts;
}
