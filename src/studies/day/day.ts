import type { DayResult } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { assumptionsOf } from "../kit/assumptions.ts";
import { type PrecisionTarget, precisionCautions } from "../kit/precision.ts";
import { schedulesOf } from "../trace/schedule.ts";
import { traceDay } from "../trace/trace-day.ts";
import { cautionsOf } from "./cautions.ts";
import type { ProjectionGathering } from "./projection.ts";
import { summaryOf } from "./summary.ts";

/**
 * Puts the day together: the drawn day (`draw`, else the typical one), the undisturbed one, the projection that was
 * gathered, cautions and assumptions.
 */
export function dayResult(
	scenario: Scenario,
	gathered: ProjectionGathering,
	version: string,
	targets: readonly PrecisionTarget[] = [],
	draw?: number,
): DayResult {
	const replication = draw ?? gathered.typical();
	const traced = traceDay(scenario, undefined, replication);
	const schedules = schedulesOf(scenario);
	const projection = gathered.projection();
	return {
		format: "slackwater/day@1",
		scenario: summaryOf(scenario, gathered.supplies(), version),
		trace: { replication, typicalOf: draw === undefined ? gathered.lookedAt : null, ...traced.trace },
		dressings: traced.dressings.map((day, index) => ({ ...day, schedule: schedules[index] })),
		projection,
		home: gathered.home(),
		cautions: [
			...cautionsOf(scenario, traced, projection.dressings, (index) => gathered.offTooLong(index)),
			...precisionCautions(projection, targets),
		],
		assumptions: assumptionsOf(scenario),
	};
}
