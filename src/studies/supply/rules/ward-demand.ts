import type { WardScenario } from "../../../scenario/index.ts";
import { WardRun } from "../../../ward/index.ts";

/** When pieces are asked for, rising, minutes from the start: by replication, then by item. */
export type Demand = readonly (readonly Float64Array[])[];

/**
 * Plays replications of a ward whose stores lack nothing, each up to `tailMin` past the end of the time shown. Each gives
 * when every item is asked for, minutes from the scenario's start, rising; and the minutes of therapy of all patients,
 * warm-up included.
 */
export function demandOf(ward: WardScenario, tailMin: number) {
	const times = ward.stores.map((): number[] => []);
	const dressings = ward.kinds.map(({ dressing }) => dressing);
	const run = new WardRun({ ...ward, horizonMin: ward.horizonMin + tailMin }, dressings, null, {
		asked: (item, _cause, atMin) => times[item].push(atMin),
	});
	return (replication: number) => {
		for (const ofItem of times) ofItem.length = 0;
		run.run(replication);
		return { timesMin: times.map((ofItem) => Float64Array.from(ofItem)), therapyMin: run.totals().therapyMin };
	};
}

/** How many of rising times lie before a moment. */
export function countBefore(times: Float64Array, atMin: number): number {
	let low = 0;
	let high = times.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (times[middle] < atMin) low = middle + 1;
		else high = middle;
	}
	return low;
}
