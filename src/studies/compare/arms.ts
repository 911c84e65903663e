import type { Dressing, RegimenPatch, Scenario } from "../../scenario/index.ts";

/** One of the regimens that are set against each other, as a scenario of its own. */
export interface Arm {
	readonly name: string;
	readonly scenario: Scenario;
}

/** The regimens of `compare:` laid over the scenario, in the order of the file; those named in `only`, in that order, where it is given. */
export function armsOf(scenario: Scenario, only: readonly string[] | null = null): Arm[] {
	const arms = scenario.compare.map((patch) => ({ name: patch.name, scenario: laidOver(scenario, patch) }));
	return only === null ? arms : only.flatMap((name) => arms.filter((arm) => arm.name === name));
}

function laidOver(scenario: Scenario, patch: RegimenPatch): Scenario {
	return {
		...scenario,
		dressings: scenario.dressings.map((dressing): Dressing => {
			const meant = patch.dressing === null || patch.dressing === dressing.id;
			return {
				...dressing,
				regimens: patch.regimens[dressing.id] ?? dressing.regimens,
				canisterMl: (meant ? patch.canisterMl : null) ?? dressing.canisterMl,
				sourceMl: (meant ? patch.sourceMl : null) ?? dressing.sourceMl,
				canisterHoldsMl: (meant ? patch.canisterHoldsMl : null) ?? dressing.canisterHoldsMl,
				sourceLeftMl: (meant ? patch.sourceLeftMl : null) ?? dressing.sourceLeftMl,
			};
		}),
	};
}
