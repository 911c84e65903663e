import type { CauseCourse } from "../../results/index.ts";
import type { Trouble } from "../places/bed.ts";
import { causeOf } from "../shift/cause-of.ts";
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
	return {
		cause,
		words,
		onsetMin,
		signMin,
		noticedMin,
		foundMin,
		foundAt: finding === undefined ? null : finding.kind === "look" ? finding.what : "dressing",
		endMin,
		endedBy,
		minutesToNotice: since(noticedMin),
		minutesToFind: since(foundMin),
		minutesToMend: endedBy === "by-itself" ? null : since(endMin),
	};
}

export const least = (values: readonly number[]): number | null => (values.length === 0 ? null : Math.min(...values));
