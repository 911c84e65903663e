import {
	dayMin,
	type StoreKind,
	type WardScenario,
	weekMin,
} from "../scenario/index.ts";
import type { Cause } from "../therapy/index.ts";

/** Why a kind of item is taken. */
const causesOf: { readonly [K in StoreKind]: readonly Cause[] } = {
	canister: ["start", "at-capacity", "round"],
	solution: ["start", "empty", "expired", "round"],
	kit: ["start", "dressing-change"],
	port: ["clogged"],
	line: ["start"],
};

/** Places of a demand: one tally for the whole time, then one a day, then one a week. */
interface SeriesPlaces {
	readonly total: number;
	readonly days: number;
	readonly weeks: number;
}

interface ItemPlaces {
	readonly demand: SeriesPlaces;
	readonly causes: readonly (SeriesPlaces & { readonly cause: Cause })[];
	/** First of one a day. */
	readonly onHand: number;
	/** First of one a day; 1 in replications with a shortage on that day, and by its end. */
	readonly outOnDay: number;
	readonly outByDay: number;
	readonly short: number;
	readonly substituted: number;
	readonly ordered: number;
	readonly received: number;
	readonly used: number;
	readonly expired: number;
	readonly endStock: number;
	/** Measures: h, and a share of the time. */
	readonly offHours: number;
	readonly ready: number;
}

/**
 * Where everything that is counted has its place in the flat lists of a part: tallies of whole numbers, and measures
 * (a histogram for quantiles and, block by block, moments for mean and half-width). It depends on the scenario alone,
 * so that parts of one scenario merge place by place.
 */
export interface SupplyLayout {
	readonly days: number;
	readonly weeks: number;
	readonly warmDays: number;
	readonly tallies: number;
	/** Width of the bins of each measure. */
	readonly measures: readonly number[];
	readonly items: readonly ItemPlaces[];
	/** First of one a day, warm-up included. */
	readonly inBed: number;
	readonly waiting: number;
	readonly arrived: number;
	readonly begun: number;
	readonly left: number;
	readonly turnedAway: number;
	/** Patients who waited. */
	readonly waited: number;
	readonly meanInBed: number;
	readonly meanWait: number;
	readonly therapyDays: number;
	readonly liquid: number;
	readonly solution: number;
	readonly weight: number;
	readonly cost: number;
	/** First of one a shift. */
	readonly shifts: number;
	readonly policies: readonly PolicyPlaces[];
}

interface PolicyPlaces {
	/** First of one an item: pieces used. */
	readonly used: number;
	readonly cost: number;
	readonly costDifference: number;
	readonly nurseHours: number;
	readonly nurseHoursDifference: number;
}

export function supplyLayout(ward: WardScenario): SupplyLayout {
	const days = ward.horizonMin / dayMin;
	const weeks = Math.ceil(ward.horizonMin / weekMin);
	const warmDays = ward.warmUpMin / dayMin;
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
	const series = (): SeriesPlaces => ({
		total: place(),
		days: place(days),
		weeks: place(weeks),
	});
	const items = ward.stores.map(
		(item): ItemPlaces => ({
			demand: series(),
			causes: causesOf[item.kind].map((cause) => ({ cause, ...series() })),
			onHand: place(days),
			outOnDay: place(days),
			outByDay: place(days),
			short: place(),
			substituted: place(),
			ordered: place(),
			received: place(),
			used: place(),
			expired: place(),
			endStock: place(),
			offHours: measure(0.1),
			ready: measure(0.001),
		}),
	);
	// Costs move by prices: bins no finer than the least of them keep quantiles as good and the bins few.
	const prices = ward.stores.flatMap(({ price }) =>
		price === null || price === 0 ? [] : [price],
	);
	const priceWidth = Math.max(
		1,
		...(prices.length > 0 ? [Math.min(...prices)] : []),
	);
	return {
		days,
		weeks,
		warmDays,
		items,
		inBed: place(warmDays + days),
		waiting: place(warmDays + days),
		arrived: place(),
		begun: place(),
		left: place(),
		turnedAway: place(),
		waited: place(),
		meanInBed: measure(0.01),
		meanWait: measure(1),
		therapyDays: measure(0.1),
		liquid: measure(100),
		solution: measure(100),
		weight: measure(0.1),
		cost: measure(priceWidth),
		shifts: measure(0.01, ward.shifts.length),
		policies:
			ward.policies.length === 0
				? []
				: [null, ...ward.policies].map(() => ({
						used: place(ward.stores.length),
						cost: measure(priceWidth),
						costDifference: measure(priceWidth),
						nurseHours: measure(0.1),
						nurseHoursDifference: measure(0.1),
					})),
		tallies,
		measures,
	};
}
