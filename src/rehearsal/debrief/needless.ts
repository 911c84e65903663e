import type { Condition, Place } from "../../vocabulary/index.ts";
import { causes } from "../causes/causes.ts";
import { actFacts } from "../places/acts.ts";
import { causeOf } from "../shift/cause-of.ts";
import type { Entry } from "./shift-record.ts";

/** A look at the same place this soon after tells nothing new unless something has been done or has happened. */
const sameLookMin = 15;

/** Why a look or an act was not needed, as a clause; "" where it was, or where nothing can be said against it. */
export function needlessWords(log: readonly Entry[], index: number): string {
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
	const named = unseen.map((group) => group.map((place) => place.replace("-", " ")).join(" or ")).join(" and ");
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
