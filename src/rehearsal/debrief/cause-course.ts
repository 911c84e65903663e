import type { CauseCourse, Debrief } from "../../results/index.ts";
import { causeOf } from "../causes/causes.ts";
import type { Trouble } from "../places/bed.ts";
import type { ShiftRecord } from "./shift-record.ts";

/** What became of a cause: when it showed, was noticed, found and ended. */
export function causeCourse(trouble: Trouble, course: ShiftRecord): CauseCourse {
	const { cause, onsetMin, endMin, endedBy } = trouble;
	const { raises, words } = causeOf(cause);
	const { log, signs } = course;
	const onset = onsetMin ?? Number.POSITIVE_INFINITY;
	const raised = [...signs].flatMap(([condition, at]) =>
		raises.includes(condition) ? at.filter((atMin) => atMin >= onset && atMin <= (endMin ?? Infinity)) : [],
	);
	const signMin = onsetMin === null ? null : least(raised);
	const finding = log.find((entry) => entry.endMin >= onset && entry.found.includes(cause));
	const foundMin =
		finding === undefined ? null : finding.kind === "look" ? finding.endMin : Math.max(finding.startMin, onset);
	const after = log.find(({ startMin }) => signMin !== null && startMin >= signMin);
	const noticedMin = least(
		[finding?.startMin, after?.startMin].filter((at) => at !== undefined).map((at) => Math.max(at, onset)),
	);
	const since = (at: number | null) => (at === null ? null : at - onset);
	const times = { onsetMin, signMin, noticedMin, foundMin, endMin };
	return {
		cause,
		words,
		...times,
		foundAt: finding === undefined ? null : finding.kind === "look" ? finding.what : "dressing",
		endedBy,
		minutesToNotice: since(noticedMin),
		minutesToFind: since(foundMin),
		minutesToMend: endedBy === "by-itself" ? null : since(endMin),
	};
}

export const least = (values: readonly number[]): number | null => (values.length === 0 ? null : Math.min(...values));

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
