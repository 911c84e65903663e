import type { AlarmProjection } from "../../results/index.ts";

export type AlarmWindows = AlarmProjection["windows"];

/** Probability of a half-hour above which it counts as a likely window of an alarm. */
export const likelyLevel = 0.05;

/** Runs of neighbouring bins whose probability by chance stands above the level. */
export function alarmWindows(bins: AlarmProjection["bins"], level = likelyLevel): AlarmWindows {
	const windows: { startMin: number; endMin: number; peakProbability: number }[] = [];
	for (const bin of bins) {
		if (bin.chance <= level) continue;
		const last = windows.at(-1);
		if (last !== undefined && last.endMin === bin.startMin) {
			last.endMin = bin.endMin;
			last.peakProbability = Math.max(last.peakProbability, bin.chance);
		} else windows.push({ startMin: bin.startMin, endMin: bin.endMin, peakProbability: bin.chance });
	}
	return windows;
}
