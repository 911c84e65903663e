import type { DayCurve, DressingDay } from "../../results/index.ts";
import type { Span } from "../time/time-plot.ts";
import type { CycleSpan, WaterLineData } from "./data.ts";

/** The stretch of the day that is drawn, and whether it is less than the day. */
export function drawnStretch({ fromMin = 0, spanMin, clock: { horizonMin } }: WaterLineData) {
	const toMin = Math.min(fromMin + (spanMin ?? horizonMin), horizonMin);
	return { fromMin, toMin, isPart: fromMin > 0 || toMin < horizonMin };
}

/** What began in a stretch of a day, and what still lasts there, whole; phases are cut, totals stay those of the day. */
export function dayBetween(day: DressingDay, { fromMin, toMin }: Span): DressingDay {
	const lasting = <E extends { readonly startMin: number; readonly endMin: number }>(events: readonly E[]): E[] =>
		events.filter(({ startMin, endMin }) => startMin < toMin && (startMin >= fromMin || endMin > fromMin));
	const came = <E extends { readonly atMin: number }>(events: readonly E[]): E[] =>
		events.filter(({ atMin }) => atMin <= toMin && atMin >= fromMin);
	return {
		...day,
		phases: lasting(day.phases).map((phase) => ({ ...phase, endMin: Math.min(phase.endMin, toMin) })),
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
function curveBetween(curve: DayCurve, fromMin: number, toMin: number): DayCurve {
	const after = curve.atMin.findIndex((atMin) => atMin > toMin);
	const end = after === -1 ? curve.atMin.length : after + 1;
	const first = curve.atMin.findIndex((atMin) => atMin >= fromMin);
	const begin = Math.max(0, first - 1);
	const within = (values: readonly number[]): number[] => values.slice(begin, end);
	return {
		...curve,
		atMin: within(curve.atMin),
		depthMmHg: within(curve.depthMmHg),
		liquidMl: within(curve.liquidMl),
		canisterMl: within(curve.canisterMl),
		sourceMl: within(curve.sourceMl),
	};
}

/** The first cycle, if there is one, that no alarm and no pause disturbs; the first drawdown of a day without fill. */
export function cycleSpan(day: DressingDay, { fromMin, toMin }: Span): CycleSpan {
	const cycles = wetSpans(day.phases).filter((cycle) => cycle.fromMin >= fromMin);
	const cycle = cycles.find((one) => !isDisturbed(day, one)) ?? cycles[0];
	if (cycle === undefined)
		return { heading: "The first minutes, enlarged", fromMin, toMin: Math.min(fromMin + 10, toMin) };
	const margin = Math.max(1, (cycle.toMin - cycle.fromMin) * 0.35);
	return {
		heading: "One cycle, enlarged",
		fromMin: Math.max(fromMin, cycle.fromMin - margin * 0.6),
		toMin: Math.min(toMin, cycle.toMin + margin),
	};
}

/** From the start of each fill to the end of the drain that follows it. */
function wetSpans(phases: DressingDay["phases"]): Span[] {
	return phases.flatMap(({ phase, startMin, endMin }, index) => {
		if (phase !== "fill") return [];
		const wet = phases.slice(index + 1, index + 3).filter((next) => next.phase === "dwell" || next.phase === "drain");
		return [{ fromMin: startMin, toMin: wet.at(-1)?.endMin ?? endMin }];
	});
}

const isDisturbed = (day: DressingDay, cycle: Span): boolean =>
	[...day.alarms, ...day.pauses, ...day.dressingChanges].some(
		(event) => event.startMin < cycle.toMin + 1 && event.endMin > cycle.fromMin - 1,
	);
