/** What can be hidden in a rehearsal, in the order in which it is listed everywhere. */
export const causeNames = [
	"fill-line-kinked",
	"suction-line-kinked",
	"port-clogged",
	"canister-full",
	"source-empty",
	"seal-breach",
	"dressing-dislodged",
	"left-off",
	"bleeding",
] as const;
export type CauseName = (typeof causeNames)[number];

/** How a cause came to its end. */
export const troubleEnds = ["mended", "by-itself", "handed-over"] as const;
export type TroubleEnd = (typeof troubleEnds)[number];

/** Where a trainee can look. */
export const places = ["dressing", "suction-line", "fill-line", "canister", "source", "port", "edge", "unit"] as const;
export type Place = (typeof places)[number];

/** What a trainee can do. */
export const acts = [
	"free-suction-line",
	"free-fill-line",
	"change-canister",
	"change-source",
	"new-port",
	"patch-edge",
	"pause",
	"resume",
	"new-dressing",
	"call-help",
] as const;
export type Act = (typeof acts)[number];

/** How a rehearsal came to its end. */
export const shiftEnds = ["shift-over", "handed-over", "left"] as const;
export type ShiftEnd = (typeof shiftEnds)[number];

/**
 * What gave the hidden causes away, other than looking: the shift was ended before one was found, its file lay open on
 * the bench, or the same case had been debriefed before.
 */
export const revelations = ["ended-early", "opened-on-bench", "run-again"] as const;
export type Revealed = (typeof revelations)[number];
