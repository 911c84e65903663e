import {
	dayMin,
	type StoreItem,
	type WardScenario,
	weekMin,
} from "../scenario/index.ts";
import {
	type Cause,
	type OrderRule,
	type WardObserver,
	WardRun,
} from "../therapy/index.ts";
import { type DemandCourse, tryShelf } from "./shelf-trial.ts";
import type { RuleResult } from "./supply-result.ts";
import { reorderPoint } from "./text-book.ts";

/** A reorder point is sought in this much demand: days of therapy, and no more than ten years. */
const soughtTherapyDays = 12_000;
const soughtDays = 3650;
/** Reorder points are sought up to here. */
const mostReorder = 1_000_000;

/** Takes down when each item is asked for. */
class Listener implements WardObserver {
	readonly courses: {
		readonly timesMin: number[];
		readonly askers: number[];
	}[];
	offset = 0;

	constructor(items: number) {
		this.courses = Array.from({ length: items }, () => ({
			timesMin: [],
			askers: [],
		}));
	}

	asked(
		item: number,
		_cause: Cause,
		atMin: number,
		_atOnce: boolean,
		_substituted: boolean,
		asker: number,
	): void {
		this.courses[item].timesMin.push(this.offset + atMin);
		this.courses[item].askers.push(asker);
	}

	ordered(): void {}
	received(): void {}
	expired(): void {}
	waited(): void {}
	dayEnds(): void {}
	shiftEnds(): void {}
	begins(): void {}
	turnedAway(): void {}
	opens(): void {}
}

/**
 * The demand for every item with stores that lack nothing, of as many replications as it takes, one after another; whole
 * weeks of each where there are any, so that days of the week stay in step.
 */
export function demandCourses(ward: WardScenario): DemandCourse[] {
	const spanMin =
		ward.horizonMin < weekMin
			? ward.horizonMin
			: Math.floor(ward.horizonMin / weekMin) * weekMin;
	const whole = { ...ward, horizonMin: spanMin };
	const most = Math.min(
		ward.replications,
		Math.ceil((soughtDays * dayMin) / spanMin),
	);
	const listener = new Listener(ward.stores.length);
	const run = new WardRun(
		whole,
		ward.kinds.map(({ dressing }) => dressing),
		null,
		listener,
	);
	let runs = 0;
	for (let therapyMin = 0; runs < most; ) {
		listener.offset = runs * spanMin;
		run.run(runs++);
		therapyMin += run.totals().therapyMin;
		if (therapyMin >= soughtTherapyDays * dayMin) break;
	}
	return listener.courses.map((course) => ({
		...course,
		endMin: runs * spanMin,
	}));
}

/** Mean lead time, the time between two looks and the longest wait for an order day, in days. */
export function exposureDays(item: StoreItem): number {
	const { orderDays, lead, reviewMin } = item;
	const gaps =
		orderDays === null
			? [0]
			: orderDays.map((day, i) => {
					const next = orderDays[i + 1] ?? orderDays[0] + 7;
					return next - day;
				});
	return (lead.medianMin + (reviewMin ?? 0)) / dayMin + Math.max(...gaps);
}

/** Mean and standard deviation of the pieces asked for in a day. */
function dailyDemand({ timesMin, endMin }: Omit<DemandCourse, "askers">): {
	readonly mean: number;
	readonly sd: number;
} {
	const days = Math.max(1, Math.round(endMin / dayMin));
	const counts = new Int32Array(days);
	for (const at of timesMin) counts[Math.floor(at / dayMin)]++;
	const mean = timesMin.length / days;
	const squares = counts.reduce(
		(sum, count) => sum + (count - mean) * (count - mean),
		0,
	);
	return { mean, sd: days < 2 ? 0 : Math.sqrt(squares / (days - 1)) };
}

/** The order rules of every item, given or found, with what they rest on; null for an item of unlimited stock. */
export function findRules(ward: WardScenario): (RuleResult | null)[] {
	if (ward.stores.every(({ stock }) => stock === null))
		return ward.stores.map(() => null);
	const courses = demandCourses(ward);
	return ward.stores.map((item, i) =>
		item.stock === null ? null : findRule(item, ward, courses[i]),
	);
}

/**
 * The least reorder point with which the shelf holds a piece for the wanted share of the time, by bisection, on one
 * course of demand for all candidates. With Poisson demand that share is also the share of pieces that are there when
 * asked for (Wolff 1982, Poisson arrivals see time averages; from memory); unlike the latter it is not flattered by
 * patients whose therapy is off and who ask for nothing more.
 */
function findRule(
	item: StoreItem,
	ward: WardScenario,
	course: DemandCourse,
): RuleResult {
	const demand = dailyDemand(course);
	const days = exposureDays(item);
	// An order covers a week, in whole packs, unless the scenario says otherwise.
	const weekly = Math.ceil((7 * demand.mean) / item.pack) * item.pack;
	const quantity =
		item.reorder !== null && item.upTo !== null
			? item.upTo - item.reorder
			: Math.max(item.pack, weekly);
	const known = new Map<number, number>();
	const serviceOf = (reorder: number): number => {
		const before = known.get(reorder);
		if (before !== undefined) return before;
		const upTo = reorder + quantity;
		const { ready } = tryShelf(
			{ ...item, stock: upTo },
			{ reorder, upTo },
			ward,
			course,
			ward.chance ? `${ward.seed}: levels` : null,
		);
		known.set(reorder, ready);
		return ready;
	};
	const textBook = Math.max(
		0,
		Math.ceil(reorderPoint(demand, days, item.service) - 1e-9),
	);
	const reorder = item.reorder ?? sought(serviceOf, item.service, textBook);
	const step = Math.max(1, Math.round(0.15 * reorder));
	const ladder = [-2, -1, 0, 1, 2]
		.map((steps) => reorder + steps * step)
		.filter((level) => level >= 0)
		.map((level) => ({ reorder: level, service: serviceOf(level) }));
	return {
		reorder,
		upTo: reorder + quantity,
		origin: item.reorder === null ? "found" : "given",
		service: item.service,
		demandPerDay: demand.mean,
		demandSdPerDay: demand.sd,
		exposureDays: days,
		textBook: {
			reorder: textBook,
			service: textBook > mostReorder ? null : serviceOf(textBook),
		},
		ladder,
	};
}

function sought(
	serviceOf: (reorder: number) => number,
	wanted: number,
	guess: number,
): number {
	let low = -1;
	let high = Math.max(1, guess);
	while (serviceOf(high) < wanted && high < mostReorder) {
		low = high;
		high *= 2;
	}
	while (high - low > 1) {
		const middle = Math.floor((low + high) / 2);
		if (serviceOf(middle) >= wanted) high = middle;
		else low = middle;
	}
	return high;
}

/** The rules that a run follows; what an item of unlimited stock gets is never looked at. */
export const orderRules = (
	rules: readonly (RuleResult | null)[],
): OrderRule[] => rules.map((rule) => rule ?? { reorder: 0, upTo: 1 });
