import type { WardScenario } from "../../../scenario/index.ts";
import { type WardObserver, WardRun } from "../../../ward/index.ts";

const ignore = () => {};

/**
 * Plays replications of a ward whose stores lack nothing, each up to `tailMin` past the end of the time shown. Each gives
 * when every item is asked for, minutes from the scenario's start, rising; and the minutes of therapy of all patients,
 * warm-up included.
 */
export function demandOf(ward: WardScenario, tailMin: number) {
	const times = ward.stores.map((): number[] => []);
	const observer: WardObserver = {
		asked: (item, _cause, atMin) => times[item].push(atMin),
		ordered: ignore,
		received: ignore,
		expired: ignore,
		waited: ignore,
		dayEnds: ignore,
		shiftEnds: ignore,
		begins: ignore,
		turnedAway: ignore,
		opens: ignore,
	};
	const dressings = ward.kinds.map(({ dressing }) => dressing);
	const run = new WardRun({ ...ward, horizonMin: ward.horizonMin + tailMin }, dressings, null, observer);
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
