import type { Dressing, Scenario } from "./scenario.ts";
import type { WardScenario } from "./ward.ts";

/** One dressing of a ward as a scenario of its own, over all the weeks, warm-up included: what its therapy runs on. */
export function dayOfKind(ward: WardScenario, dressing: Dressing): Scenario {
	const { title, seed, start, startClockMin, replications, chance, care, constants, solution, overridden } = ward;
	const frame = { title, seed, start, startClockMin, replications, chance, care, constants, solution, overridden };
	const nothing = { happenings: [], compare: [], usual: null, sweep: null, home: null, prices: null, packs: {} };
	const horizonMin = ward.warmUpMin + ward.horizonMin;
	return { ...frame, horizonMin, dressings: [dressing], ...nothing, defaulted: [] };
}
