import type { DressingDay, PhaseName } from "../analysis/day-result.ts";

export interface CycleSpan {
	readonly heading: string;
	readonly fromMin: number;
	readonly toMin: number;
}

type Phase = {
	readonly phase: PhaseName;
	readonly startMin: number;
	readonly endMin: number;
};

/**
 * What the lens enlarges: the first cycle from fill to drain that no alarm and no pause disturbs, else the first cycle at
 * all, with a little suction on both sides. A day without fill shows its first drawdown.
 */
export function cycleSpan(
	day: DressingDay,
	toMin: number,
	fromMin = 0,
): CycleSpan {
	const cycles = wetSpans(day.phases).filter(
		(cycle) => cycle.fromMin >= fromMin,
	);
	const undisturbed = cycles.find((cycle) => !isDisturbed(day, cycle));
	const cycle = undisturbed ?? cycles[0];
	if (cycle === undefined)
		return {
			heading: "The first minutes, enlarged",
			fromMin,
			toMin: Math.min(fromMin + 10, toMin),
		};
	const margin = Math.max(1, (cycle.toMin - cycle.fromMin) * 0.35);
	return {
		heading: "One cycle, enlarged",
		fromMin: Math.max(fromMin, cycle.fromMin - margin * 0.6),
		toMin: Math.min(toMin, cycle.toMin + margin),
	};
}

/** From the start of each fill to the end of the drain that follows it. */
function wetSpans(
	phases: readonly Phase[],
): { fromMin: number; toMin: number }[] {
	const spans: { fromMin: number; toMin: number }[] = [];
	phases.forEach((phase, index) => {
		if (phase.phase !== "fill") return;
		let toMin = phase.endMin;
		for (const next of phases.slice(index + 1, index + 3))
			if (next.phase === "dwell" || next.phase === "drain") toMin = next.endMin;
		spans.push({ fromMin: phase.startMin, toMin });
	});
	return spans;
}

const isDisturbed = (
	day: DressingDay,
	cycle: { fromMin: number; toMin: number },
): boolean =>
	[...day.alarms, ...day.pauses, ...day.dressingChanges].some(
		(event) =>
			event.startMin < cycle.toMin + 1 && event.endMin > cycle.fromMin - 1,
	);
