import { type CompareAnswer, type CompareOrder, runComparison } from "./compare-order.ts";
import { type DayAnswer, type DayOrder, runDay } from "./day-order.ts";
import type { Desk, Fault } from "./desk.ts";
import type { BeginOrder, DebriefOrder, RehearsalRunAnswer, StepOrder } from "./rehearse-order.ts";
import { RehearsalRun } from "./rehearse-order.ts";
import { type RestsOnAnswer, type RestsOnOrder, runRestsOn } from "./rests-on-order.ts";
import { runStores, type StoresAnswer, type StoresOrder } from "./stores-order.ts";

/** What the page asks of its worker. */
export type Order = DayOrder | CompareOrder | RestsOnOrder | StoresOrder | BeginOrder | StepOrder | DebriefOrder;

/** What comes back. */
export type Answer = DayAnswer | CompareAnswer | RestsOnAnswer | StoresAnswer | RehearsalRunAnswer | Fault;

export type Work<O> = (order: O, desk: Desk<Answer>) => Promise<Answer | null> | Answer;

export type Works = { readonly [K in Order["kind"]]: Work<Extract<Order, { kind: K }>> };

/** How each order is answered, null where it was dropped; a worker has one rehearsal at a time. */
export function works(): Works {
	const rehearsal = new RehearsalRun();
	return {
		day: runDay,
		compare: runComparison,
		"rests-on": runRestsOn,
		stores: runStores,
		rehearse: (order, desk) => rehearsal.begin(order, desk),
		step: (order) => rehearsal.step(order),
		debrief: () => rehearsal.debrief(),
	};
}

/** Orders and answers carry the number of the order, so that answers to an older one can be told and dropped. */
export interface NumberedOrder {
	readonly number: number;
	readonly order: Order;
}
export interface NumberedAnswer {
	readonly number: number;
	readonly answer: Answer;
	/** Nothing more comes for this order. */
	readonly last: boolean;
}
