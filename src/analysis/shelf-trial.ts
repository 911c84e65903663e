import { Simulation, Stream } from "../engine/index.ts";
import type { StoreItem, WardScenario } from "../scenario/index.ts";
import { type OrderRule, Shelf, type ShelfTold } from "../therapy/index.ts";

const silent: ShelfTold = {
	ordered() {},
	received() {},
	expired() {},
	waited() {},
};

/** When one item is asked for, in rising order, by whom, and for how long that was watched. */
export interface DemandCourse {
	readonly timesMin: readonly number[];
	/** Whose dressing, by therapy unit; left out: everybody asks once. */
	readonly askers?: readonly number[];
	readonly endMin: number;
}

/** What became of a course of demand. */
export interface Trial {
	readonly asked: number;
	/** Pieces that were there when they were asked for. */
	readonly atOnce: number;
	/** Share of the time with a piece on the shelf. */
	readonly ready: number;
	readonly shelf: Shelf;
}

/**
 * One shelf alone against a course of demand, on the ward's own `Shelf`. Who finds it empty waits, and asks for nothing
 * more until the delivery: a therapy that is off uses nothing up, and what it would have asked for comes afterwards.
 * `seed` null: lead times are their median.
 */
export function tryShelf(
	item: StoreItem,
	rule: OrderRule,
	clock: Pick<WardScenario, "startClockMin" | "startWeekday">,
	course: DemandCourse,
	seed: string | null,
	told: ShelfTold = silent,
): Trial {
	const { timesMin, askers, endMin } = course;
	const sim = new Simulation();
	const lead = seed === null ? null : new Stream(seed, item.name, 0);
	const shelf = new Shelf(sim, item, rule, clock, lead, told);
	/** Who waits, with how much they have put off. */
	const putOff = new Map<number, number>();
	const again: number[] = [];
	let next = 0;
	let asked = 0;
	let atOnce = 0;
	const ask = (asker: number) => {
		const before = putOff.get(asker);
		if (before !== undefined) {
			putOff.set(asker, before + 1);
			return;
		}
		asked++;
		if (shelf.take()) {
			atOnce++;
			return;
		}
		putOff.set(asker, 0);
		shelf.wait("start", () => {
			const times = putOff.get(asker) ?? 0;
			putOff.delete(asker);
			for (let i = 0; i < times; i++) again.push(asker);
			if (times > 0) sim.schedule(catchUp, sim.now);
		});
	};
	const use = sim.event("demand", 50, () => {
		ask(askers?.[next] ?? -next);
		next++;
		if (next < timesMin.length) sim.schedule(use, timesMin[next]);
	});
	const catchUp = sim.event("what was put off", 60, () => {
		for (const asker of again.splice(0)) ask(asker);
	});
	shelf.reset(0);
	shelf.open();
	if (timesMin.length > 0) sim.schedule(use, timesMin[0]);
	sim.run(endMin);
	shelf.close();
	// A sum of times may be more than the whole by rounding.
	const ready = Math.max(0, 1 - shelf.emptyMin / endMin);
	return { asked, atOnce, ready, shelf };
}
