import type { Dressing, Scenario } from "./scenario.ts";
import type { WardScenario } from "./ward.ts";

/** One dressing of a ward as a scenario of its own, over all the weeks, warm-up included: what its therapy runs on. */
export function dayOfKind(ward: WardScenario, dressing: Dressing): Scenario {
	return {
		title: ward.title,
		seed: ward.seed,
		start: ward.start,
		startClockMin: ward.startClockMin,
		horizonMin: ward.warmUpMin + ward.horizonMin,
		replications: ward.replications,
		chance: ward.chance,
		dressings: [dressing],
		care: ward.care,
		happenings: [],
		compare: [],
		usual: null,
		sweep: null,
		home: null,
		constants: ward.constants,
		solution: ward.solution,
		prices: null,
		packs: {},
		defaulted: [],
		overridden: ward.overridden,
	};
}
