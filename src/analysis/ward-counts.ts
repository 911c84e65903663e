import { dayMin, type WardScenario } from "../scenario/index.ts";
import type {
	Cause,
	WardObserver,
	WardRun,
	WardTotals,
} from "../therapy/index.ts";
import type { SupplyLayout } from "./supply-layout.ts";

/** What one replication of a ward comes to, day by day; used again for the next. */
export class WardCounts implements WardObserver {
	/** By item, then cause: pieces asked for on each day. */
	readonly demand: readonly (readonly Int32Array[])[];
	/** By item: pieces on each day that were not there. */
	readonly short: readonly Int32Array[];
	/** By item, at the end of each day. */
	readonly onHand: readonly Int32Array[];
	readonly substitutes: Int32Array;
	readonly orders: Int32Array;
	/** Therapy lost because an item was out, min. */
	readonly offMin: Float64Array;
	/** At the end of each day, warm-up included. */
	readonly inBed: Int32Array;
	readonly waiting: Int32Array;
	readonly shiftNurseMin: Float64Array;
	readonly shiftMin: Float64Array;
	begun = 0;
	waits = 0;
	waitMin = 0;
	/** Totals at the start of the count. */
	base: WardTotals | null = null;
	readonly #layout: SupplyLayout;
	#shiftFrom = 0;

	constructor(ward: WardScenario, layout: SupplyLayout) {
		this.#layout = layout;
		const { days, warmDays, items } = layout;
		const perDay = () => new Int32Array(days);
		this.demand = items.map(({ causes }) => causes.map(perDay));
		this.short = items.map(perDay);
		this.onHand = items.map(perDay);
		this.substitutes = new Int32Array(items.length);
		this.orders = new Int32Array(items.length);
		this.offMin = new Float64Array(items.length);
		this.inBed = new Int32Array(warmDays + days);
		this.waiting = new Int32Array(warmDays + days);
		this.shiftNurseMin = new Float64Array(ward.shifts.length);
		this.shiftMin = new Float64Array(ward.shifts.length);
	}

	reset(): void {
		const lists = [
			...this.demand.flat(),
			...this.short,
			...this.onHand,
			this.substitutes,
			this.orders,
			this.offMin,
			this.inBed,
			this.waiting,
			this.shiftNurseMin,
			this.shiftMin,
		];
		for (const list of lists) list.fill(0);
		this.begun = 0;
		this.waits = 0;
		this.waitMin = 0;
		this.base = null;
		this.#shiftFrom = -this.#layout.warmDays * dayMin;
	}

	asked(
		item: number,
		cause: Cause,
		atMin: number,
		atOnce: boolean,
		substituted: boolean,
	): void {
		const day = Math.floor(atMin / dayMin);
		const { causes } = this.#layout.items[item];
		const at = causes.findIndex((one) => one.cause === cause);
		this.demand[item][at][day]++;
		if (!atOnce) this.short[item][day]++;
		if (substituted) this.substitutes[item]++;
	}

	ordered(item: number, pieces: number): void {
		this.orders[item] += pieces;
	}

	received(): void {}

	expired(): void {}

	waited(item: number, minutes: number): void {
		this.offMin[item] += minutes;
	}

	opens(run: WardRun): void {
		this.base = run.totals();
	}

	dayEnds(day: number, run: WardRun): void {
		const { warmDays } = this.#layout;
		this.inBed[warmDays + day] = run.inBed;
		this.waiting[warmDays + day] = run.waiting;
		if (day < 0) return;
		run.storeroom.shelves.forEach((shelf, item) => {
			this.onHand[item][day] = shelf.onHand;
		});
	}

	shiftEnds(shift: number, endMin: number, nurseMin: number): void {
		if (this.#shiftFrom >= 0) {
			this.shiftNurseMin[shift] += nurseMin;
			this.shiftMin[shift] += endMin - this.#shiftFrom;
		}
		this.#shiftFrom = endMin;
	}

	begins(waitMin: number, atMin: number): void {
		if (atMin < 0) return;
		this.begun++;
		if (waitMin > 0) this.waits++;
		this.waitMin += waitMin;
	}

	turnedAway(): void {}
}
