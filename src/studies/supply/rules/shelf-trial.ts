import { Simulation, Substream } from "../../../engine/index.ts";
import type { StoreItem, WardScenario } from "../../../scenario/index.ts";
import { type OrderRule, Shelf, type ShelfTold } from "../../../ward/index.ts";

/** How a trial is played and watched. */
interface TrialWays {
	readonly told?: ShelfTold;
	/** Which stream of lead times. */
	readonly run?: number;
	/** Is told, span by span, of the pieces on the shelf less those that are waited for. */
	readonly net?: (pieces: number, fromMin: number, toMin: number) => void;
}

/**
 * One shelf alone against a course of demand (rising times, and for how long it was watched), on the ward's own `Shelf`.
 * Who finds it empty waits for the delivery. `seed` null: lead times are their median. Gives how many pieces were asked
 * for and how many of them were there at once, and the share of the time with a piece on the shelf.
 */
export function tryShelf(
	item: StoreItem,
	rule: OrderRule,
	clock: Pick<WardScenario, "startClockMin" | "startWeekday">,
	{ timesMin, endMin }: { readonly timesMin: ArrayLike<number>; readonly endMin: number },
	seed: string | null,
	{ told = {}, run = 0, net }: TrialWays = {},
) {
	const sim = new Simulation();
	const lead = seed === null ? null : new Substream(seed, item.name, 0);
	let since = 0;
	let pieces = item.stock ?? 0;
	const changed = () => {
		if (net !== undefined && sim.now > since) net(pieces, since, sim.now);
		since = sim.now;
		pieces = shelf.onHand - shelf.waiting;
	};
	const shelf = new Shelf(sim, item, rule, clock, lead, {
		...told,
		received: (...got) => {
			changed();
			told.received?.(...got);
		},
		expired: (...lost) => {
			changed();
			told.expired?.(...lost);
		},
	});
	let next = 0;
	let atOnce = 0;
	const use = sim.event("demand", 50, () => {
		if (shelf.take()) atOnce++;
		else shelf.wait(() => {});
		changed();
		next++;
		if (next < timesMin.length) sim.schedule(use, timesMin[next]);
	});
	shelf.reset(run);
	shelf.open();
	if (timesMin.length > 0) sim.schedule(use, timesMin[0]);
	sim.run(endMin);
	shelf.close();
	changed();
	// A sum of times may be more than the whole by rounding.
	const ready = Math.max(0, 1 - shelf.emptyMin / endMin);
	return { asked: next, atOnce, ready, shelf };
}
