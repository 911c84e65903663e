import type { DayCurve, DressingDay } from "../analysis/day-result.ts";

/**
 * What of a day falls into a stretch of it: what began there, and what had begun and still lasts, both with their whole
 * length; phases are cut at its end, totals stay those of the day.
 */
export function dayBetween(
	day: DressingDay,
	fromMin: number,
	toMin: number,
): DressingDay {
	const lasting = <
		E extends { readonly startMin: number; readonly endMin: number },
	>(
		events: readonly E[],
	): E[] =>
		events.filter(
			({ startMin, endMin }) =>
				startMin < toMin && (startMin >= fromMin || endMin > fromMin),
		);
	const came = <E extends { readonly atMin: number }>(
		events: readonly E[],
	): E[] => events.filter(({ atMin }) => atMin <= toMin && atMin >= fromMin);
	return {
		...day,
		phases: lasting(day.phases).map((phase) => ({
			...phase,
			endMin: Math.min(phase.endMin, toMin),
		})),
		pauses: lasting(day.pauses),
		notices: came(day.notices),
		alarms: lasting(day.alarms),
		canisterChanges: came(day.canisterChanges),
		sourceChanges: came(day.sourceChanges),
		dressingChanges: lasting(day.dressingChanges),
		takeovers: came(day.takeovers),
		curve: curveBetween(day.curve, fromMin, toMin),
	};
}

/** Rows of a stretch, the one before and the one after it, so that the line is drawn to both edges. */
function curveBetween(
	curve: DayCurve,
	fromMin: number,
	toMin: number,
): DayCurve {
	const after = curve.atMin.findIndex((atMin) => atMin > toMin);
	const end = after === -1 ? curve.atMin.length : after + 1;
	const first = curve.atMin.findIndex((atMin) => atMin >= fromMin);
	const begin = Math.max(0, first - 1);
	const within = (values: readonly number[]): number[] =>
		values.slice(begin, end);
	return {
		...curve,
		atMin: within(curve.atMin),
		depthMmHg: within(curve.depthMmHg),
		liquidMl: within(curve.liquidMl),
		canisterMl: within(curve.canisterMl),
		sourceMl: within(curve.sourceMl),
	};
}
