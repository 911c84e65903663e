import type { StoreItem } from "../scenario/index.ts";
import { clockOf } from "../therapy/base/clock.ts";

/** How the clock and the week run from time 0 of a simulation; 0 is Monday. */
export interface WeekClock {
	readonly startClockMin: number;
	readonly startWeekday: number;
}

/** The day of the week at a time, 0 is Monday. */
export function weekdayAt(at: number, clock: WeekClock): number {
	const days = Math.floor((clock.startClockMin + at) / 1440);
	return (((clock.startWeekday + days) % 7) + 7) % 7;
}

/** The first moment at or after `from` at which an order goes out: at once, or the cut-off of an order day. */
export function orderMoment(
	from: number,
	item: Pick<StoreItem, "orderDays" | "cutOffClockMin">,
	clock: WeekClock,
): number {
	if (item.orderDays === null) return from;
	const first = clockOf(item.cutOffClockMin - clock.startClockMin);
	let at = first + 1440 * Math.max(0, Math.ceil((from - first) / 1440));
	while (!item.orderDays.includes(weekdayAt(at, clock))) at += 1440;
	return at;
}
