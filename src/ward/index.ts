/** A ward over weeks, on the bedside's own engine: patients, therapy units, nurses by shift, the storeroom and its shelves. */
export { orderMoment } from "./order-moment.ts";
export { meanLength } from "./patients.ts";
export { type OrderRule, Shelf, type ShelfTold } from "./shelf.ts";
export { WardRun, type WardTotals } from "./ward-run.ts";
