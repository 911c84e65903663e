import type { Deed, Likelihoods, LoggedEntry } from "../../results/index.ts";
import { Belief } from "../belief/belief.ts";
import type { Course } from "../belief/course.ts";
import { beliefWords } from "../search/search-words.ts";
import { clockSpan, clockText } from "../shift/clock-text.ts";
import { needlessWords } from "./needless.ts";
import type { ShiftRecord } from "./shift-record.ts";

/** The log with what was needless in it, and after each look what could be believed, given all that was seen and done. */
export function logOf(
	{ of, log, cameMin }: ShiftRecord,
	bankOf: (deeds: readonly Deed[]) => readonly Course[],
): LoggedEntry[] {
	const deeds = log.flatMap((entry) =>
		entry.kind === "act" && entry.done ? [{ act: entry.what, startMin: entry.startMin, endMin: entry.endMin }] : [],
	);
	const looks = log.some(({ kind }) => kind === "look");
	const belief = looks ? new Belief(bankOf(deeds)) : null;
	// Where help has come and the shift has gone on, a clinician has seen that nothing bled.
	let helpLeftMin = of.rehearsal.help === null ? cameMin : null;
	return log.map((entry, index) => {
		const { kind, what, startMin, endMin, answer } = entry;
		let after: Likelihoods | null = null;
		if (entry.kind === "act") for (const { atMin, finding } of entry.seen) belief?.find(finding, atMin);
		if (entry.kind === "look" && entry.finding !== null && belief !== null) {
			if (helpLeftMin !== null && entry.endMin > helpLeftMin) {
				belief.helpLeft(helpLeftMin);
				helpLeftMin = null;
			}
			belief.see(entry.shown);
			belief.find(entry.finding, entry.endMin);
			after = belief.at(entry.endMin);
		}
		return {
			kind,
			what,
			startMin,
			endMin,
			clock: clockText(startMin, of.startClockMin),
			span: clockSpan(startMin, endMin, of.startClockMin),
			answer,
			needless: needlessWords(log, index),
			belief: after,
			believed: after === null ? "" : beliefWords(after),
		};
	});
}
