import { airToThin, type Constants, drawdownMin } from "../../physics/index.ts";
import type { DressingSummary, ListedHappening, ScenarioSummary, Supply } from "../../results/index.ts";
import type { Dressing, Regimen, Scenario } from "../../scenario/index.ts";
import { isPlanned } from "../../vocabulary/index.ts";

/** What a report says of the scenario it was made from. */
export function summaryOf(scenario: Scenario, supplies: readonly Supply[], version: string): ScenarioSummary {
	return {
		title: scenario.title,
		seed: scenario.seed,
		version,
		start: scenario.start,
		startClockMin: scenario.startClockMin,
		horizonMin: scenario.horizonMin,
		replications: scenario.replications,
		chance: scenario.chance ? "on" : "off",
		solution: scenario.solution.name,
		dressings: scenario.dressings.map((dressing) => ({
			id: dressing.id,
			patient: dressing.patient,
			tissue: dressing.tissue,
			foamVolumeMl: dressing.foamVolumeMl,
			capacityMl: scenario.constants["foam.capacity"] * dressing.foamVolumeMl,
			exudateMlPerDay: dressing.exudateMlPerDay,
			slough: dressing.slough,
			difficulty: dressing.difficulty,
			canisterMl: dressing.canisterMl,
			sourceMl: dressing.sourceMl,
			canisterHoldsMl: dressing.canisterHoldsMl,
			sourceLeftMl: dressing.sourceLeftMl ?? dressing.sourceMl,
			regimens: dressing.regimens.map((regimen) => regimenSummary(regimen, dressing, scenario.constants)),
		})),
		roundsClockMin: scenario.care.roundsClockMin,
		happenings: listedOf(scenario),
		supplies,
	};
}

/** What the scenario lists within its horizon, in order of time. */
function listedOf({ happenings, care, dressings, horizonMin }: Scenario): ListedHappening[] {
	const change = care.dressingChange;
	const changes =
		change !== null && "atMin" in change
			? change.atMin.flatMap((atMin) =>
					dressings.map(({ id }) => ({ atMin, dressing: id, what: "dressing-change" as const })),
				)
			: [];
	return [...happenings, ...changes]
		.filter(({ atMin }) => atMin < horizonMin)
		.map((happening) => ({
			atMin: happening.atMin,
			dressing: happening.dressing,
			what: happening.what,
			forMin: "forMin" in happening ? happening.forMin : null,
			planned: isPlanned(happening.what),
		}))
		.sort((a, b) => a.atMin - b.atMin);
}

export function regimenSummary(
	regimen: Regimen,
	dressing: Dressing,
	constants: Constants,
): DressingSummary["regimens"][number] {
	const airL = airToThin(
		constants,
		constants["foam.capacity"] * dressing.foamVolumeMl,
		dressing.canisterMl,
		dressing.canisterHoldsMl,
	);
	const seconds = 60 * drawdownMin(regimen.drawdown, regimen.depthMmHg, airL, constants);
	return {
		fromMin: regimen.fromMin,
		begin: regimen.begin,
		depthMmHg: regimen.depthMmHg,
		fillMl: regimen.fillMl,
		dwellMin: regimen.fillMl > 0 ? regimen.dwellMin : null,
		suctionMin: regimen.fillMl > 0 ? regimen.suctionMin : null,
		drawdown: regimen.drawdown,
		drawdownSec: Number.isFinite(seconds) ? seconds : null,
	};
}
