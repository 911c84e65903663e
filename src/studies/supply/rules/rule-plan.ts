import type { WardScenario } from "../../../scenario/index.ts";
import { minutesADay, minutesAWeek } from "../../../vocabulary/index.ts";
import { lateLeadMin, longestGapDays } from "./lead-time.ts";

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
	const days = ward.stores.map((item) =>
		item.stock === null ? 0 : (lateLeadMin(item.lead) + lookMin(item)) / minutesADay + longestGapDays(item) + 1,
	);
	return Math.min(8 * minutesAWeek, Math.ceil(Math.max(0, ...days)) * minutesADay);
}

/** The list of orders looks at a shelf once a day, or at its reviews where these are rarer. */
export const lookMin = ({ reviewMin }: WardScenario["stores"][number]): number =>
	Math.max(minutesADay, reviewMin ?? minutesADay);

/** Minutes of a replication that are searched: whole weeks of it where there are any, so that days of the week stay in step. */
export const searchedMin = ({ horizonMin }: WardScenario): number =>
	horizonMin < minutesAWeek ? horizonMin : Math.floor(horizonMin / minutesAWeek) * minutesAWeek;
