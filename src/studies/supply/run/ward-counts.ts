import type { Trace } from "../../../engine/index.ts";
import type { WardScenario } from "../../../scenario/index.ts";
import type { DemandCause } from "../../../vocabulary/index.ts";
import { minutesADay } from "../../../vocabulary/index.ts";
import { type OrderRule, type WardObserver, WardRun, type WardTotals } from "../../../ward/index.ts";
import { keyed } from "../../kit/named.ts";
import type { SupplyLayout } from "./layout.ts";

/** What one replication has come to before it begins. */
function noCounts({ shifts }: WardScenario, { days, warmDays, items }: SupplyLayout) {
	const perDay = () => new Int32Array(days);
	return {
		/** By item, then cause: pieces asked for on each day. */
		demand: items.map(({ causes }) => causes.map(perDay)),
		/** By item: pieces on each day that were not there. */
		short: items.map(perDay),
		/** By item, at the end of each day. */
		onHand: items.map(perDay),
		substitutes: new Int32Array(items.length),
		orders: new Int32Array(items.length),
		/** Therapy lost because an item was out, min. */
		offMin: new Float64Array(items.length),
		/** At the end of each day, warm-up included. */
		inBed: new Int32Array(warmDays + days),
		waiting: new Int32Array(warmDays + days),
		shiftNurseMin: new Float64Array(shifts.length),
		shiftMin: new Float64Array(shifts.length),
		shiftFrom: -warmDays * minutesADay,
		begun: 0,
		waits: 0,
		waitMin: 0,
	};
}

/** Watches one replication of a ward, day by day; used again for the next. */
export class WardCounts implements WardObserver {
	/** What the present replication comes to. */
	seen;
	/** Totals at the start of the count. */
	base: WardTotals | null = null;
	readonly #ward: WardScenario;
	readonly #layout: SupplyLayout;

	constructor(ward: WardScenario, layout: SupplyLayout) {
		this.#ward = ward;
		this.#layout = layout;
		this.seen = noCounts(ward, layout);
	}

	reset(): void {
		this.seen = noCounts(this.#ward, this.#layout);
		this.base = null;
	}

	asked(item: number, cause: DemandCause, atMin: number, atOnce: boolean, substituted: boolean): void {
		const { demand, short, substitutes } = this.seen;
		const day = Math.floor(atMin / minutesADay);
		const at = this.#layout.items[item].causes.findIndex((one) => one.cause === cause);
		demand[item][at][day]++;
		if (!atOnce) short[item][day]++;
		if (substituted) substitutes[item]++;
	}

	ordered(item: number, pieces: number): void {
		this.seen.orders[item] += pieces;
	}

	waited(item: number, minutes: number): void {
		this.seen.offMin[item] += minutes;
	}

	opens(run: WardRun): void {
		this.base = run.totals();
	}

	dayEnds(day: number, run: WardRun): void {
		const { inBed, waiting, onHand } = this.seen;
		const { warmDays } = this.#layout;
		inBed[warmDays + day] = run.units.busy;
		waiting[warmDays + day] = run.units.waiting;
		if (day < 0) return;
		run.storeroom.shelves.forEach((shelf, item) => {
			onHand[item][day] = shelf.onHand;
		});
	}

	shiftEnds(shift: number, endMin: number, nurseMin: number): void {
		const { seen } = this;
		if (seen.shiftFrom >= 0) {
			seen.shiftNurseMin[shift] += nurseMin;
			seen.shiftMin[shift] += endMin - seen.shiftFrom;
		}
		seen.shiftFrom = endMin;
	}

	begins(waitMin: number, atMin: number): void {
		if (atMin < 0) return;
		this.seen.begun++;
		if (waitMin > 0) this.seen.waits++;
		this.seen.waitMin += waitMin;
	}
}

/** A ward made ready to be played again and again; a replication comes to what was seen since the count began. */
export function playable(
	ward: WardScenario,
	layout: SupplyLayout,
	orders: readonly OrderRule[] | null,
	dressings = ward.kinds.map(({ dressing }) => dressing),
) {
	const counts = new WardCounts(ward, layout);
	const run = new WardRun(ward, dressings, orders, counts);
	return (replication: number, trace?: Trace) => {
		counts.reset();
		const events = run.run(replication, trace);
		const { seen, base } = counts;
		return { events, seen, shelves: run.storeroom.shelves, totals: since(base, run.totals()) };
	};
}

function since(base: WardTotals | null, now: WardTotals): WardTotals {
	const names = Object.keys(now) as (keyof WardTotals)[]; // keys forgets the names
	return base === null ? now : keyed(names, (name) => now[name] - base[name]);
}
