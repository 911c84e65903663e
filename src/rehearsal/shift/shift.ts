import type { RehearsalPlan, Scenario } from "../../scenario/index.ts";
import { isNight } from "../../therapy/index.ts";

/** A scenario that has a rehearsal. */
export type Case = Scenario & { readonly rehearsal: RehearsalPlan };

/** Throws RangeError where the scenario has no `rehearsal:` part. */
export function asCase(scenario: Scenario): Case {
	const { rehearsal } = scenario;
	if (rehearsal === undefined) throw new RangeError(`"${scenario.title}" has no rehearsal: part`);
	return { ...scenario, rehearsal };
}

/**
 * The day of a rehearsal: one dressing, nothing left to chance, and nobody who comes by himself. A nurse whose delay has
 * no end is never called; rounds, turns and changes are the trainee's.
 */
export function shiftOf(scenario: Case): Scenario {
	const never = Number.POSITIVE_INFINITY;
	return {
		...scenario,
		chance: false,
		dressings: [scenario.dressings[scenario.rehearsal.dressing]],
		care: {
			response: { dayMin: never, nightMin: never, spread: 0 },
			roundsClockMin: [],
			turningMin: null,
			nurses: null,
			dressingChange: null,
			avoid: { handOver: [], meals: [], smallHours: [] },
		},
		happenings: [],
	};
}

/** When somebody comes who was called at `calledMin`. */
export function helpComesMin({ care, startClockMin }: Case, calledMin: number): number {
	const { dayMin, nightMin } = care.response;
	return calledMin + (isNight(startClockMin + calledMin) ? nightMin : dayMin);
}
