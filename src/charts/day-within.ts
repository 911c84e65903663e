import type { DayCurve, DressingDay } from "../analysis/day-result.ts";

/** What of a day began in its first minutes; an alarm keeps its whole length, totals stay those of the day. */
export function dayWithin(day: DressingDay, spanMin: number): DressingDay {
	const began = <E extends { readonly startMin: number }>(
		events: readonly E[],
	): E[] => events.filter((event) => event.startMin < spanMin);
	const came = <E extends { readonly atMin: number }>(
		events: readonly E[],
	): E[] => events.filter((event) => event.atMin <= spanMin);
	return {
		...day,
		phases: began(day.phases).map((phase) => ({
			...phase,
			endMin: Math.min(phase.endMin, spanMin),
		})),
		pauses: began(day.pauses),
		notices: came(day.notices),
		alarms: began(day.alarms),
		canisterChanges: came(day.canisterChanges),
		sourceChanges: came(day.sourceChanges),
		dressingChanges: began(day.dressingChanges),
		curve: curveWithin(day.curve, spanMin),
	};
}

/** Rows up to a time, and the one after it, so that the line is drawn to the edge. */
function curveWithin(curve: DayCurve, spanMin: number): DayCurve {
	const after = curve.atMin.findIndex((atMin) => atMin > spanMin);
	const count = after === -1 ? curve.atMin.length : after + 1;
	return {
		...curve,
		atMin: curve.atMin.slice(0, count),
		depthMmHg: curve.depthMmHg.slice(0, count),
		liquidMl: curve.liquidMl.slice(0, count),
		canisterMl: curve.canisterMl.slice(0, count),
		sourceMl: curve.sourceMl.slice(0, count),
	};
}
