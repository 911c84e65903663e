import type { Scenario } from "../scenario/index.ts";
import { assumptionsOf } from "./assumptions.ts";
import { cautionsOf } from "./cautions.ts";
import type { DayResult, ScenarioSummary, Supply } from "./day-result.ts";
import { type PrecisionTarget, precisionCautions } from "./precision.ts";
import type { ProjectionGathering } from "./projection.ts";
import { traceDay } from "./trace-day.ts";

/** Puts the day together: the traced day, the projection that was gathered, cautions and assumptions. */
export function dayResult(
	scenario: Scenario,
	gathered: ProjectionGathering,
	version: string,
	targets: readonly PrecisionTarget[] = [],
): DayResult {
	const traced = traceDay(scenario);
	const projection = gathered.projection();
	return {
		format: "slackwater/day@1",
		scenario: summaryOf(scenario, gathered.supplies(), version),
		trace: traced.trace,
		dressings: traced.dressings,
		projection,
		cautions: [
			...cautionsOf(scenario, traced, projection.dressings, (index) =>
				gathered.offTooLong(index),
			),
			...precisionCautions(projection, targets),
		],
		assumptions: assumptionsOf(scenario),
	};
}

function summaryOf(
	scenario: Scenario,
	supplies: readonly Supply[],
	version: string,
): ScenarioSummary {
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
			regimens: dressing.regimens.map((regimen) => ({
				fromMin: regimen.fromMin,
				begin: regimen.begin,
				depthMmHg: regimen.depthMmHg,
				fillMl: regimen.fillMl,
				dwellMin: regimen.fillMl > 0 ? regimen.dwellMin : null,
				suctionMin: regimen.fillMl > 0 ? regimen.suctionMin : null,
				drawdown: regimen.drawdown,
			})),
		})),
		roundsClockMin: scenario.care.roundsClockMin,
		supplies,
	};
}
