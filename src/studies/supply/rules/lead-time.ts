import { exp } from "../../../elementary/index.ts";
import type { StoreItem } from "../../../scenario/index.ts";
import { minutesADay } from "../../../vocabulary/index.ts";

/** Mean and standard deviation of a lead time that is lognormal with this median and spread s, min: m·exp(s²/2), and that times √(exp(s²) − 1) (Aitchison and Brown 1957, The Lognormal Distribution, from memory). */
export function leadMoments({ medianMin, spread }: StoreItem["lead"]): {
	readonly meanMin: number;
	readonly sdMin: number;
} {
	const square = spread * spread;
	const meanMin = medianMin * exp(square / 2);
	return { meanMin, sdMin: meanMin * Math.sqrt(exp(square) - 1) };
}

/** A lead time that one order in twenty exceeds, min: m·exp(1.645·s). */
export const lateLeadMin = ({ medianMin, spread }: StoreItem["lead"]): number => medianMin * exp(1.645 * spread);

/** Longest time from one order day to the next, days; 0 where orders go out at any time. */
export function longestGapDays({ orderDays }: StoreItem): number {
	if (orderDays === null) return 0;
	return Math.max(...orderDays.map((day, i) => (orderDays[i + 1] ?? orderDays[0] + 7) - day));
}

/** Protection interval, over which the stock has to last: mean lead time, the time between two looks and the longest wait for an order day, in days. */
export const protectionDays = (item: StoreItem): number =>
	(leadMoments(item.lead).meanMin + (item.reviewMin ?? 0)) / minutesADay + longestGapDays(item);
