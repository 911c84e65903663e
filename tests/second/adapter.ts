import type { Scenario } from "../../src/scenario/index.ts";
import type { SecondInput } from "./second.ts";

/** A scenario as the second implementation takes it. */
export function secondInput(scenario: Scenario): SecondInput {
	const { care, constants } = scenario;
	const change = care.dressingChange;
	return {
		horizonMin: scenario.horizonMin,
		startClockMin: scenario.startClockMin,
		chance: scenario.chance,
		dressings: scenario.dressings.map((dressing) => ({
			id: dressing.id,
			foamVolumeMl: dressing.foamVolumeMl,
			exudateMlPerDay: dressing.exudateMlPerDay,
			slough: constants[`slough.${dressing.slough}`],
			difficulty: constants[`difficulty.${dressing.difficulty}`],
			outflow: dressing.outflow,
			canisterMl: dressing.canisterMl,
			sourceMl: dressing.sourceMl,
			holdsMl: dressing.canisterHoldsMl,
			leftMl: dressing.sourceLeftMl ?? dressing.sourceMl,
			ageMin: dressing.ageMin,
			regimens: dressing.regimens.map((regimen) => ({ ...regimen })),
		})),
		care: {
			dayMin: care.response.dayMin,
			nightMin: care.response.nightMin,
			spread: care.response.spread,
			roundsClockMin: [...care.roundsClockMin],
			turningMin: care.turningMin,
			nurses: care.nurses,
			changeEveryMin: change !== null && "everyMin" in change ? change.everyMin : null,
			changeAtMin: change !== null && "atMin" in change ? [...change.atMin] : [],
		},
		happenings: scenario.happenings.map((happening) => ({ ...happening })),
		constants: { ...constants },
	};
}
