import type { CanisterReason, Condition, Ending, PauseReason, Phase, SourceReason } from "../vocabulary/index.ts";

/** How the words of a result are written in a sentence or beside a mark. */
export const conditionWords: { readonly [C in Condition]: string } = {
	"canister-at-capacity": "canister at capacity",
	"suction-path-obstructed": "suction path obstructed",
	"fill-path-obstructed": "fill path obstructed",
	"seal-leak": "seal leak",
	"depth-not-held": "depth not held",
	"source-empty": "source empty",
	"suction-absent": "suction absent",
	"large-output": "large output",
};

export const endingWords: { readonly [E in Ending]: string } = {
	call: "nurse called",
	round: "mended at a round",
	scripted: "as scripted",
	"dressing-change": "dressing changed",
	"by-itself": "ended by itself",
	horizon: "still standing",
};

export const phaseWords: { readonly [P in Phase]: string } = {
	suction: "suction",
	fill: "fill",
	dwell: "dwell",
	drain: "drain",
	change: "dressing change",
};

export const pauseWords: { readonly [R in PauseReason]: string } = {
	off: "switched off",
	canister: "canister full",
	round: "canister changed",
	port: "new port",
};

export const canisterReasonWords: { readonly [R in CanisterReason]: string } = {
	"at-capacity": "full",
	round: "at a round",
	scripted: "scripted",
};

export const sourceReasonWords: { readonly [R in SourceReason]: string } = {
	empty: "empty",
	round: "at a round",
	expired: "hung too long",
	scripted: "scripted",
};
