import type { WardScenario } from "../scenario/index.ts";
import { type Cause, type WardObserver, WardRun } from "../therapy/index.ts";

/** What one replication asks of stores that lack nothing. */
export interface WardDemand {
	/** By item, minutes from the scenario's start, rising. */
	readonly timesMin: readonly Float64Array[];
	/** Minutes of therapy of all patients, warm-up included. */
	readonly therapyMin: number;
}

/** Takes down when each item is asked for. */
class Listener implements WardObserver {
	readonly times: number[][];

	constructor(items: number) {
		this.times = Array.from({ length: items }, () => []);
	}

	asked(item: number, _cause: Cause, atMin: number): void {
		this.times[item].push(atMin);
	}

	ordered(): void {}
	received(): void {}
	expired(): void {}
	waited(): void {}
	dayEnds(): void {}
	shiftEnds(): void {}
	begins(): void {}
	turnedAway(): void {}
	opens(): void {}
}

/** Plays replications of a ward whose stores lack nothing, each up to `tailMin` past the end of the time shown. */
export function demandOf(
	ward: WardScenario,
	tailMin: number,
): (replication: number) => WardDemand {
	const listener = new Listener(ward.stores.length);
	const run = new WardRun(
		{ ...ward, horizonMin: ward.horizonMin + tailMin },
		ward.kinds.map(({ dressing }) => dressing),
		null,
		listener,
	);
	return (replication) => {
		for (const times of listener.times) times.length = 0;
		run.run(replication);
		return {
			timesMin: listener.times.map((times) => Float64Array.from(times)),
			therapyMin: run.totals().therapyMin,
		};
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
