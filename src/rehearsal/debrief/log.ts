import type { Deed, Likelihoods, LoggedEntry } from "../../results/index.ts";
import type { Condition, Place } from "../../vocabulary/index.ts";
import { Belief } from "../belief/belief.ts";
import type { Course } from "../belief/course-bank.ts";
import { causeOf, causes } from "../causes/causes.ts";
import { actFacts } from "../places/acts.ts";
import { beliefWords } from "../search/search-words.ts";
import { clockSpan, clockText, plain } from "../shift/shift-words.ts";
import type { Entry, ShiftRecord } from "./shift-record.ts";

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
		const clock = clockText(startMin, of.startClockMin);
		const span = clockSpan(startMin, endMin, of.startClockMin);
		const needless = needlessWords(log, index);
		const believed = after === null ? "" : beliefWords(after);
		return { kind, what, startMin, endMin, clock, span, answer, needless, belief: after, believed };
	});
}

/** A look at the same place this soon after tells nothing new unless something has been done or has happened. */
const sameLookMin = 15;

/** Why a look or an act was not needed, as a clause; "" where it was, or where nothing can be said against it. */
function needlessWords(log: readonly Entry[], index: number): string {
	const entry = log[index];
	return entry.kind === "look" ? needlessLook(entry, log.slice(0, index)) : needlessAct(entry, log.slice(0, index));
}

function needlessLook(entry: Extract<Entry, { kind: "look" }>, before: readonly Entry[]): string {
	if (entry.found.length > 0 || entry.finding === null) return "";
	const calling: readonly Condition[] = entry.alarms.filter((condition) => condition !== "suction-absent");
	const suspects = causes.filter(({ raises }) => raises.some((condition) => calling.includes(condition)));
	if (
		calling.length > 0 &&
		entry.what !== "dressing" && // blood shows there, whatever the alarm
		!suspects.some(({ sights }) => sights.some(({ place }) => place === entry.what))
	)
		return "none of the alarms that stood could come from there";
	const last = before.findLastIndex(({ what, endMin }) => what === entry.what && entry.startMin - endMin < sameLookMin);
	return last >= 0 &&
		before.slice(last + 1).every(({ kind }) => kind === "look") &&
		before[last].alarms.join() === entry.alarms.join()
		? "it had just been looked at"
		: "";
}

function needlessAct(entry: Extract<Entry, { kind: "act" }>, before: readonly Entry[]): string {
	if (!entry.done) return "";
	const { what } = entry;
	if (what === "call-help") return before.some((earlier) => earlier.what === what) ? "it had been done before" : "";
	const looked = (place: Place) => before.some((earlier) => earlier.what === place);
	const unseen = actFacts[what].lookFirst.filter((group) => !group.some(looked));
	const named = unseen.map((group) => group.map(plain).join(" or ")).join(" and ");
	const ahead = unseen.length === 0 ? "" : `before ${named} had been looked at`;
	if (!hasServed(entry)) return ahead === "" ? "it mended nothing" : `it mended nothing, and came ${ahead}`;
	return ahead === "" ? "" : `it helped, but came ${ahead}`;
}

/** It mended something or ended an alarm, stopped what had to be stopped, or started what was stopped. */
function hasServed({ what, mended, ended, wrong, wasStopped }: Extract<Entry, { kind: "act" }>): boolean {
	if (mended.length > 0) return true;
	if (what === "pause") return !wasStopped && wrong.some((cause) => causeOf(cause).forClinician);
	if (what === "resume" && wasStopped) return true;
	return what !== "call-help" && ended.some((condition) => condition !== "suction-absent");
}
