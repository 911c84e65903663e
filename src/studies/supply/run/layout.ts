import type { WardScenario } from "../../../scenario/index.ts";
import type { DemandCause, PieceKind } from "../../../vocabulary/index.ts";
import { minutesADay, minutesAWeek } from "../../../vocabulary/index.ts";
import { keyed } from "../../kit/named.ts";

/** Why a kind of item is taken. */
const causesOf: { readonly [K in PieceKind]: readonly DemandCause[] } = {
	canister: ["start", "at-capacity", "round"],
	solution: ["start", "empty", "expired", "round"],
	kit: ["start", "dressing-change"],
	port: ["clogged"],
	line: ["start"],
};

/** Pieces of an item that are counted over the whole time. */
export const pieceCounts = ["short", "substituted", "ordered", "received", "used", "expired", "endStock"] as const;
/** Patients that are; `waited` are those who did not begin at once. */
export const patientCounts = ["arrived", "begun", "left", "turnedAway", "waited"] as const;

export type SupplyLayout = ReturnType<typeof supplyLayout>;

/**
 * Where everything that is counted has its place in the flat lists of a part: tallies of whole numbers, and measures
 * (a histogram for quantiles and, block by block, moments for mean and half-width). It depends on the scenario alone,
 * so that parts of one scenario merge place by place. What is counted by day, week, shift or item has its first place here.
 */
export function supplyLayout(ward: WardScenario) {
	const days = ward.horizonMin / minutesADay;
	const weeks = Math.ceil(ward.horizonMin / minutesAWeek);
	const warmDays = ward.warmUpMin / minutesADay;
	let tallies = 0;
	const place = (count = 1) => {
		tallies += count;
		return tallies - count;
	};
	const measures: number[] = [];
	const measure = (width: number, count = 1) => {
		for (let i = 0; i < count; i++) measures.push(width);
		return measures.length - count;
	};
	/** Of a demand: one tally for the whole time, then one a day, then one a week. */
	const series = () => ({ total: place(), days: place(days), weeks: place(weeks) });
	const items = ward.stores.map((item) => ({
		demand: series(),
		causes: causesOf[item.kind].map((cause) => ({ cause, ...series() })),
		onHand: place(days),
		/** 1 in replications with a shortage on that day, and by its end. */
		outOnDay: place(days),
		outByDay: place(days),
		...keyed(pieceCounts, () => place()),
		/** Measures: h, and a share of the time. */
		offHours: measure(0.1),
		ready: measure(0.001),
	}));
	// Costs move by prices: bins no finer than the least of them keep quantiles as good and the bins few.
	const prices = ward.stores.flatMap(({ price }) => (price === null || price === 0 ? [] : [price]));
	const priceWidth = Math.max(1, ...(prices.length > 0 ? [Math.min(...prices)] : []));
	return {
		days,
		weeks,
		warmDays,
		items,
		/** One a day, warm-up included. */
		inBed: place(warmDays + days),
		waiting: place(warmDays + days),
		...keyed(patientCounts, () => place()),
		meanInBed: measure(0.01),
		meanWait: measure(1),
		therapyDays: measure(0.1),
		liquid: measure(100),
		solution: measure(100),
		weight: measure(0.1),
		cost: measure(priceWidth),
		shifts: measure(0.01, ward.shifts.length),
		policies: (ward.policies.length === 0 ? [] : [null, ...ward.policies]).map(() => ({
			used: place(ward.stores.length),
			cost: measure(priceWidth),
			costDifference: measure(priceWidth),
			nurseHours: measure(0.1),
			nurseHoursDifference: measure(0.1),
		})),
		tallies,
		/** Width of the bins of each measure. */
		measures,
	};
}
