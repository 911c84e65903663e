import { clockOf } from "../therapy/index.ts";

const two = (value: number) => String(value).padStart(2, "0");

/** '14:20': the time on the wall at `atMin` of a shift, to the minute that has begun. */
export function clockText(atMin: number, startClockMin: number): string {
	const minute = Math.floor(clockOf(startClockMin + atMin + 1e-9));
	return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}
