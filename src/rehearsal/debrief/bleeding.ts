import type { CauseCourse, Debrief } from "../../results/index.ts";
import { minutesText } from "../shift/clock-text.ts";
import type { ShiftRecord } from "./shift-record.ts";

/** How long suction and washes went on in a bleed; off the spells in which they did not. */
export function bleedingOf(
	causes: readonly CauseCourse[],
	{ off, log, day, endedMin }: ShiftRecord,
): Debrief["bleeding"] {
	const bleed = causes.find(({ cause, onsetMin }) => cause === "bleeding" && onsetMin !== null);
	if (bleed === undefined) return null;
	const { onsetMin, foundMin } = bleed;
	const startMin = onsetMin ?? 0; // told from null above
	const endMin = bleed.endMin ?? endedMin;
	const ran = (fromMin: number, toMin: number) =>
		off.reduce(
			(left, { start, end }) => left - Math.max(0, Math.min(end, toMin) - Math.max(start, fromMin)),
			toMin - fromMin,
		);
	return {
		therapyMin: ran(startMin, endMin),
		washes: day.phases.filter(
			({ phase, startMin: at }) =>
				phase === "fill" && at >= startMin && at < endMin && !off.some(({ start, end }) => start <= at && at < end),
		).length,
		// A bleed that has stopped is still for a clinician to see to.
		therapyAfterFoundMin: foundMin === null ? null : ran(foundMin, endedMin),
		stopped: log.some(
			(entry) => entry.kind === "act" && entry.what === "pause" && entry.done && entry.endMin >= startMin,
		),
	};
}

/** Fresh blood was found, and nobody stopped the therapy. */
export const leftRunning = (bleeding: Debrief["bleeding"]): boolean =>
	bleeding !== null && !bleeding.stopped && (bleeding.therapyAfterFoundMin ?? 0) > 0;

export function bleedingSentence(bleeding: Debrief["bleeding"]): string {
	if (bleeding === null) return "";
	const { therapyMin, washes, therapyAfterFoundMin: after } = bleeding;
	const washed = washes === 0 ? "" : `, with ${washes === 1 ? "a wash" : `${washes} washes`} run in`;
	const found = after === null ? "" : `, and for ${minutesText(after)} after fresh blood was found`;
	return `Suction went on for ${minutesText(therapyMin)} while the wound bled${washed}${found}${leftRunning(bleeding) ? ": it had to be stopped, and was not" : ""}.`;
}
