import type { DayCurve, DressingDay, DressingProjection, DressingSummary } from "../../results/index.ts";
import {
	type Clock,
	clockTime,
	conditionWords,
	depthWords,
	pauseWords,
	percentWords,
	phaseWords,
	volumeWords,
} from "../../words/index.ts";

/** What one lane of the chart reads at a minute. */
export interface Reading {
	readonly lane: string;
	readonly words: string;
}

/** Every lane of a dressing's day at one minute, in words. */
export function readingsAt(
	atMin: number,
	of: {
		readonly clock: Clock;
		readonly dressing: DressingSummary;
		readonly day: DressingDay;
		/** null or none while it is being worked out. */
		readonly projection?: DressingProjection | null | undefined;
	},
): Reading[] {
	const { clock, dressing, day } = of;
	const projection = of.projection ?? null;
	const { curve } = day;
	const stands = ({ startMin, endMin }: { startMin: number; endMin: number }) => startMin <= atMin && atMin < endMin;
	const phase = day.phases.findLast(({ startMin }) => startMin <= atMin);
	const pause = day.pauses.find(stands);
	const alarms = day.alarms.filter(stands);
	const has = dressing.regimens.some(({ fillMl }) => fillMl > 0);
	return [
		{ lane: "time", words: clockTime(atMin, clock) },
		{
			lane: "phase",
			words: `${phase === undefined ? "none" : phaseWords[phase.phase]}${pause === undefined ? "" : `, ${pauseWords[pause.reason]}`}`,
		},
		{ lane: "depth", words: depthWords(valueAt(curve, "depthMmHg", atMin)) },
		{ lane: "in the dressing", words: volumeWords(valueAt(curve, "liquidMl", atMin)) },
		{
			lane: "canister",
			words: `${volumeWords(valueAt(curve, "canisterMl", atMin))}${bandWords(projection, atMin, clock)}`,
		},
		...(has ? [{ lane: "source", words: volumeWords(valueAt(curve, "sourceMl", atMin)) }] : []),
		{
			lane: "alarms",
			words: alarms.length === 0 ? "none stands" : alarms.map(({ condition }) => conditionWords[condition]).join(", "),
		},
		...(projection === null ? [] : [{ lane: "an alarm starts", words: chanceWords(projection, atMin) }]),
	];
}

/** Straight between the rows of the curve; at a jump what comes after it. */
export function valueAt(curve: DayCurve, column: Exclude<keyof DayCurve, "atMin">, atMin: number): number {
	const [times, values] = [curve.atMin, curve[column]];
	let [low, high] = [0, times.length - 1];
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if (times[middle] <= atMin) low = middle;
		else high = middle - 1;
	}
	if (low === times.length - 1) return values[low] ?? 0;
	const [from, to] = [times[low], times[low + 1]];
	const share = to > from ? Math.max(0, (atMin - from) / (to - from)) : 0;
	return values[low] + share * (values[low + 1] - values[low]);
}

function bandWords(projection: DressingProjection | null, atMin: number, clock: Clock): string {
	if (projection === null) return "";
	const { stepMin, p10Ml, p90Ml } = projection.canisterLevel;
	// What is known is the content at the last step; a drain may lie between.
	const at = Math.min(Math.floor(atMin / stepMin + 1e-9), p10Ml.length - 1);
	const [low, high] = [volumeWords(p10Ml[at] ?? 0), volumeWords(p90Ml[at] ?? 0)];
	return low === high ? "" : ` (8 days in 10, at ${clockTime(at * stepMin, clock)}: ${low} to ${high})`;
}

/** The likeliest conditions of the half-hour. */
function chanceWords(projection: DressingProjection, atMin: number): string {
	const likely = projection.alarms
		.map(({ condition, bins }) => ({ condition, probability: bins.find(({ endMin }) => atMin < endMin)?.chance ?? 0 }))
		.filter(({ probability }) => probability >= 0.005)
		.sort((a, b) => b.probability - a.probability)
		.slice(0, 2);
	return likely.length === 0
		? "hardly, in this half-hour"
		: `${likely.map(({ condition, probability }) => `${conditionWords[condition]} ${percentWords(probability)}`).join(", ")} in this half-hour`;
}
