import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";

/** A mean and its standard deviation: of the demand per day, or of a time in days. */
export interface MeanAndSd {
	readonly mean: number;
	readonly sd: number;
}

/**
 * Safety stock for a share `service` of cycles without a shortage, where demand and the time until a delivery both vary:
 * z·√(T·σ² + μ²·σT²), with T the mean of that time and σT its standard deviation, days. The variance is that of a sum of
 * independent days over a time that is itself drawn (Silver, Pyke, Peterson 1998, Inventory Management and Production
 * Planning, from memory).
 */
export function safetyStock(perDay: MeanAndSd, days: MeanAndSd, service: number): number {
	const variance = days.mean * perDay.sd * perDay.sd + perDay.mean * perDay.mean * days.sd * days.sd;
	return normalQuantile(service, 0, 1) * Math.sqrt(variance);
}

/** Reorder point μ·T + safety stock. */
export function reorderPoint(perDay: MeanAndSd, days: MeanAndSd, service: number): number {
	return perDay.mean * days.mean + safetyStock(perDay, days, service);
}
