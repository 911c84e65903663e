/** What a dressing is in, and stays in while it is paused. */
export const phases = ["suction", "fill", "dwell", "drain", "change"] as const;
export type Phase = (typeof phases)[number];

/** Why a phase stands still. */
export const pauseReasons = ["off", "canister", "round", "port"] as const;
export type PauseReason = (typeof pauseReasons)[number];

/** What a unit tells without an alarm. */
export const notices = ["canister-nearly-full", "source-low"] as const;
export type Notice = (typeof notices)[number];

/** Why a canister is changed. */
export const canisterReasons = ["at-capacity", "round", "scripted"] as const;
export type CanisterReason = (typeof canisterReasons)[number];

/** Why a source is renewed. */
export const sourceReasons = ["empty", "round", "expired", "scripted"] as const;
export type SourceReason = (typeof sourceReasons)[number];

/** What a scenario lists to happen at a set time. */
export const happenings = [
	"transfer",
	"turn",
	"breach",
	"clog",
	"kink-fill",
	"kink-suction",
	"off",
	"bleed",
	"canister-change",
	"source-change",
	"dressing-change",
] as const;
export type HappeningKind = (typeof happenings)[number];

const failures: ReadonlySet<HappeningKind> = new Set(["breach", "clog", "kink-fill", "kink-suction", "bleed"]);

/** Whether a ward plans it; else it is a failure to be looked at. */
export const isPlanned = (what: HappeningKind): boolean => !failures.has(what);
