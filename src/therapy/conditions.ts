/** Alarm conditions, in the order in which they are listed everywhere. */
export const conditions = [
	"canister-at-capacity",
	"suction-path-obstructed",
	"fill-path-obstructed",
	"seal-leak",
	"depth-not-held",
	"source-empty",
	"suction-absent",
	"large-output",
] as const;

export type Condition = (typeof conditions)[number];

/** After the categories of IEC 60601-1-8; the choice is the model's, not any device's. */
export function priorityOf(condition: Condition): "medium" | "high" {
	return condition === "large-output" ? "high" : "medium";
}

/** Whether the condition calls a nurse: the other two have causes of their own that call. */
export function callsNurse(condition: Condition): boolean {
	return condition !== "suction-absent" && condition !== "large-output";
}

/** How an alarm came to its end. */
export type Ending =
	| "call"
	| "round"
	| "scripted"
	| "dressing-change"
	| "by-itself"
	| "horizon";
