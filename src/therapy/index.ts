/** The dressing and its therapy unit: phases, hazards, alarms, care; turns a scenario into replications. */
export { clockOf, isNight, nextClock } from "./clock.ts";
export {
	type Condition,
	callsNurse,
	conditions,
	type Ending,
	priorityOf,
} from "./conditions.ts";
export { DressingProcess } from "./dressing.ts";
export type {
	CanisterReason,
	Notice,
	Observer,
	PauseReason,
	Phase,
	SourceReason,
} from "./observer.ts";
export { order } from "./order.ts";
export { orderMoment } from "./order-moment.ts";
export { meanLength } from "./patients.ts";
export { TherapyDay } from "./replication.ts";
export { type OrderRule, Shelf, type ShelfTold } from "./shelf.ts";
export type { Cause } from "./stores.ts";
export { unobserved } from "./unobserved.ts";
export { type WardObserver, WardRun, type WardTotals } from "./ward-run.ts";
