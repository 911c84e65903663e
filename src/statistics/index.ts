/** Statistics of values that come one by one or block by block: they know of no wounds and no stores. */
export type { Blocked } from "./blocks.ts";
export { blocksIn, InBlockOrder, mergeEach, mergeMoments, partsOf, replicationsIn } from "./blocks.ts";
export { FrequencyTable, type FrequencyTableParts } from "./frequency-table.ts";
export { Histogram, type HistogramParts } from "./histogram.ts";
export { halfWidth, type MeanInterval, meanInterval, wilson } from "./interval.ts";
export { addTo, type Moments, mergeInto, noMoments, variance } from "./moments.ts";
export { quantileIntervals } from "./quantile-interval.ts";
export { reorderPoint, safetyStock } from "./text-book.ts";
export { VectorMoments, type VectorMomentsParts } from "./vector-moments.ts";
