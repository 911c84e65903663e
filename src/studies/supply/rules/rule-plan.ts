import { exp } from "../../../elementary/index.ts";
import type { StoreItem, WardScenario } from "../../../scenario/index.ts";
import { minutesADay, minutesAWeek } from "../../../vocabulary/index.ts";

/** What is settled before the search, so that every thread and machine searches alike; plain data. */
export interface SearchPlan {
	/** How far past the end of the time shown replications are played: the last orders are judged by what comes after them. */
	readonly tailMin: number;
	/** The demand of so many first replications is kept whole, for the order list. */
	readonly kept: number;
	/** By item; null for one of unlimited stock. */
	readonly items: readonly (ItemPlan | null)[];
}

export interface ItemPlan {
	/** Pieces above the reorder point that an order brings the position to. */
	readonly quantity: number;
	/** Reorder points that are tried one by one, where pieces expire; null: all of them follow from one trial. */
	readonly levels: readonly number[] | null;
}

/** Pieces in all, and replications, whose moments are kept for the order list. */
const keptPieces = 1_500_000;
const mostKept = 1000;
const leastKept = 20;

/** How many replications' demand is kept, where one has so many pieces. */
export const keptReplications = (ward: WardScenario, piecesEach: number): number =>
	Math.min(ward.replications, mostKept, Math.max(leastKept, Math.floor(keptPieces / Math.max(1, piecesEach))));

/** Whole days from the end of the time shown to when the last order of any item, sent on the order day after it, is there. */
export function tailOf(ward: WardScenario): number {
	const days = ward.stores.map((item) => {
		if (item.stock === null) return 0;
		// A lead time that one order in twenty exceeds: m·exp(1.645·s).
		const lateMin = item.lead.medianMin * exp(1.645 * item.lead.spread);
		return (lateMin + lookMin(item)) / minutesADay + longestGapDays(item) + 1;
	});
	return Math.min(8 * minutesAWeek, Math.ceil(Math.max(0, ...days)) * minutesADay);
}

/** The list of orders looks at a shelf once a day, or at its reviews where these are rarer. */
export const lookMin = ({ reviewMin }: StoreItem): number => Math.max(minutesADay, reviewMin ?? minutesADay);

/** Minutes of a replication that are searched: whole weeks of it where there are any, so that days of the week stay in step. */
export const searchedMin = ({ horizonMin }: WardScenario): number =>
	horizonMin < minutesAWeek ? horizonMin : Math.floor(horizonMin / minutesAWeek) * minutesAWeek;

/** Mean and standard deviation of a lead time that is lognormal with this median and spread s, min: m·exp(s²/2), and that times √(exp(s²) − 1) (Aitchison and Brown 1957, The Lognormal Distribution, from memory). */
export function leadMoments({ medianMin, spread }: StoreItem["lead"]) {
	const square = spread * spread;
	const meanMin = medianMin * exp(square / 2);
	return { meanMin, sdMin: meanMin * Math.sqrt(exp(square) - 1) };
}

/** Longest time from one order day to the next, days; 0 where orders go out at any time. */
function longestGapDays({ orderDays }: StoreItem): number {
	if (orderDays === null) return 0;
	return Math.max(...orderDays.map((day, i) => (orderDays[i + 1] ?? orderDays[0] + 7) - day));
}

/** Protection interval, over which the stock has to last: mean lead time, the time between two looks and the longest wait for an order day, in days. */
export const protectionDays = (item: StoreItem): number =>
	(leadMoments(item.lead).meanMin + (item.reviewMin ?? 0)) / minutesADay + longestGapDays(item);
