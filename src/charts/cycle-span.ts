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
export function cycleSpan(day: DressingDay, horizonMin: number): CycleSpan {
	const cycles = wetSpans(day.phases);
	const undisturbed = cycles.find((cycle) => !isDisturbed(day, cycle));
	const cycle = undisturbed ?? cycles[0];
	if (cycle === undefined)
		return {
			heading: "The first minutes, enlarged",
			fromMin: 0,
			toMin: Math.min(10, horizonMin),
		};
	const margin = Math.max(1, (cycle.toMin - cycle.fromMin) * 0.35);
	return {
		heading: "One cycle, enlarged",
		fromMin: Math.max(0, cycle.fromMin - margin * 0.6),
		toMin: Math.min(horizonMin, cycle.toMin + margin),
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
