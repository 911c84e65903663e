import type { Trace } from "../../../engine/index.ts";
import type { WardScenario } from "../../../scenario/index.ts";
import { minutesADay } from "../../../vocabulary/index.ts";
import { type OrderRule, WardRun, type WardTotals } from "../../../ward/index.ts";
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

/** A ward made ready to be played again and again; a replication comes to what was seen since the count began. */
export function playable(
	ward: WardScenario,
	layout: SupplyLayout,
	orders: readonly OrderRule[] | null,
	dressings = ward.kinds.map(({ dressing }) => dressing),
) {
	let seen = noCounts(ward, layout);
	const run = new WardRun(ward, dressings, orders, {
		asked(item, cause, atMin, atOnce, substituted) {
			const day = Math.floor(atMin / minutesADay);
			const at = layout.items[item].causes.findIndex((one) => one.cause === cause);
			seen.demand[item][at][day]++;
			if (!atOnce) seen.short[item][day]++;
			if (substituted) seen.substitutes[item]++;
		},
		ordered(item, pieces) {
			seen.orders[item] += pieces;
		},
		waited(item, minutes) {
			seen.offMin[item] += minutes;
		},
		opens() {
			base = run.totals();
		},
		dayEnds(day) {
			const at = layout.warmDays + day;
			seen.inBed[at] = run.units.busy;
			seen.waiting[at] = run.units.waiting;
			if (day < 0) return;
			run.storeroom.shelves.forEach((shelf, item) => {
				seen.onHand[item][day] = shelf.onHand;
			});
		},
		shiftEnds(shift, endMin, nurseMin) {
			if (seen.shiftFrom >= 0) {
				seen.shiftNurseMin[shift] += nurseMin;
				seen.shiftMin[shift] += endMin - seen.shiftFrom;
			}
			seen.shiftFrom = endMin;
		},
		begins(waitMin, atMin) {
			if (atMin < 0) return;
			seen.begun++;
			if (waitMin > 0) seen.waits++;
			seen.waitMin += waitMin;
		},
	});
	/** At the start of the count. */
	let base = run.totals();
	return (replication: number, trace?: Trace) => {
		seen = noCounts(ward, layout);
		const events = run.run(replication, trace);
		const now = run.totals();
		const names = Object.keys(now) as (keyof WardTotals)[]; // keys forgets the names
		const totals = keyed(names, (name) => now[name] - base[name]);
		return { events, seen, shelves: run.storeroom.shelves, totals };
	};
}
