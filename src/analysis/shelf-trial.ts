import { Simulation, Stream } from "../engine/index.ts";
import type { StoreItem, WardScenario } from "../scenario/index.ts";
import { type OrderRule, Shelf, type ShelfTold } from "../therapy/index.ts";

const silent: ShelfTold = {
	ordered() {},
	received() {},
	expired() {},
	waited() {},
};

/** What became of a course of demand. */
export interface Trial {
	readonly asked: number;
	/** Pieces that were there when they were asked for. */
	readonly atOnce: number;
	readonly shelf: Shelf;
}

/**
 * One shelf alone against a course of demand, on the ward's own `Shelf`: who finds it empty waits. `demandMin` are
 * rising times. `seed` null: lead times are their median.
 */
export function tryShelf(
	item: StoreItem,
	rule: OrderRule,
	clock: Pick<WardScenario, "startClockMin" | "startWeekday">,
	demandMin: ArrayLike<number>,
	endMin: number,
	seed: string | null,
	told: ShelfTold = silent,
): Trial {
	const sim = new Simulation();
	const lead = seed === null ? null : new Stream(seed, item.name, 0);
	const shelf = new Shelf(sim, item, rule, clock, lead, told);
	let asked = 0;
	let atOnce = 0;
	const use = sim.event("demand", 50, () => {
		asked++;
		if (shelf.take()) atOnce++;
		else shelf.wait("start", () => {});
		if (asked < demandMin.length) sim.schedule(use, demandMin[asked]);
	});
	shelf.reset(0);
	shelf.open();
	if (demandMin.length > 0) sim.schedule(use, demandMin[0]);
	sim.run(endMin);
	return { asked, atOnce, shelf };
}
