import type { AvoidedTime } from "../analysis/measures.ts";
import type { SweepResult } from "../analysis/sweep-result.ts";
import type { BeginTimesData } from "../charts/index.ts";

const names: { readonly [T in AvoidedTime]: string } = {
	handOver: "hand-over",
	meals: "meals",
	smallHours: "small hours",
};

/** The stretches of the day that the scenario keeps clear, for the chart of beginnings. */
export const avoidedWindows = (
	result: SweepResult,
): BeginTimesData["windows"] =>
	(Object.keys(names) as AvoidedTime[]) // the keys of the record above
		.flatMap((time) =>
			result.avoid[time].map(({ fromMin, toMin }) => ({
				label: names[time],
				startClockMin: fromMin,
				endClockMin: toMin,
			})),
		);
