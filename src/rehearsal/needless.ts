import type { Act } from "./acts.ts";
import { causeFacts, explainedBy } from "./causes.ts";
import type { Entry } from "./log.ts";
import type { Place } from "./places.ts";

/** A look at the same place this soon after tells nothing new unless something has been done or has happened. */
const sameLookMin = 15;

/** Where one looks before one does something. */
const lookFirst: { readonly [A in Act]?: readonly Place[] } = {
	"free-suction-line": ["suction-line"],
	"free-fill-line": ["fill-line"],
	"change-canister": ["canister"],
	"change-source": ["source"],
	"new-port": ["suction-line", "port"],
	"patch-edge": ["edge", "dressing"],
	"new-dressing": ["suction-line", "port", "edge", "dressing"],
};

/** Why a look or an act was not needed, as a clause; "" where it was, or where nothing can be said against it. */
export function needlessWords(log: readonly Entry[], index: number): string {
	const entry = log[index];
	return entry.kind === "look"
		? needlessLook(entry, log.slice(0, index))
		: needlessAct(entry, log.slice(0, index));
}

function needlessLook(
	entry: Extract<Entry, { kind: "look" }>,
	before: readonly Entry[],
): string {
	if (entry.found.length > 0 || entry.code === null) return "";
	const calling = entry.alarms.filter(
		(condition) => condition !== "suction-absent",
	);
	const suspects = calling.flatMap((condition) => explainedBy[condition]);
	if (
		calling.length > 0 &&
		entry.what !== "dressing" && // blood shows there, whatever the alarm
		!suspects.some((cause) => causeFacts[cause].seenAt.includes(entry.what))
	)
		return "none of the alarms that stood could come from there";
	const last = before.findLastIndex(
		({ what, endMin }) =>
			what === entry.what && entry.startMin - endMin < sameLookMin,
	);
	return last >= 0 &&
		before.slice(last + 1).every(({ kind }) => kind === "look") &&
		before[last].alarms.join() === entry.alarms.join()
		? "it had just been looked at"
		: "";
}

function needlessAct(
	entry: Extract<Entry, { kind: "act" }>,
	before: readonly Entry[],
): string {
	if (!entry.done) return "";
	const { what } = entry;
	if (what === "call-help")
		return before.some((earlier) => earlier.what === what)
			? "it had been done before"
			: "";
	const first = lookFirst[what] ?? [];
	const unseen = first.filter(
		(place) => !before.some((earlier) => earlier.what === place),
	);
	const ahead =
		unseen.length === 0 || unseen.length < (what === "patch-edge" ? 2 : 1)
			? ""
			: `before ${what === "patch-edge" ? "edge or dressing" : unseen.map((place) => place.replace("-", " ")).join(" and ")} had been looked at`;
	if (!entry.served)
		return ahead === ""
			? "it mended nothing"
			: `it mended nothing, and came ${ahead}`;
	return ahead === "" ? "" : `it helped, but came ${ahead}`;
}
