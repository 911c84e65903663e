import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";

/** Demand per day and its standard deviation. */
export interface DailyDemand {
	readonly mean: number;
	readonly sd: number;
}

/**
 * Safety stock for a share `service` of cycles without a shortage: z·σ·√T, with T the days until a delivery
 * (Silver, Pyke, Peterson 1998, Inventory Management and Production Planning, from memory).
 */
export function safetyStock(
	sdPerDay: number,
	days: number,
	service: number,
): number {
	return normalQuantile(service, 0, 1) * sdPerDay * Math.sqrt(days);
}

/** Reorder point μ·T + z·σ·√T. */
export function reorderPoint(
	demand: DailyDemand,
	days: number,
	service: number,
): number {
	return demand.mean * days + safetyStock(demand.sd, days, service);
}
