import type { ConstantName } from "../physics/index.ts";

/** After the categories of IEC 60601-1-8. */
export const priorities = ["medium", "high"] as const;
export type Priority = (typeof priorities)[number];

export interface ConditionFact {
	/** The choice is the model's, not any device's. */
	readonly priority: Priority;
	/** The constant with the minutes of a nurse's work on it; null where none is called: it has causes of its own that call. */
	readonly hands: ConstantName | null;
	/** Whether no fill starts while its alarm stands. */
	readonly withholdsFill: boolean;
}

const calls = (hands: ConstantName): ConditionFact => ({ priority: "medium", hands, withholdsFill: true });

/** Alarm conditions, in the order in which they are listed everywhere. */
export const conditionFacts = {
	"canister-at-capacity": calls("hands.canister"),
	"suction-path-obstructed": calls("hands.port"),
	"fill-path-obstructed": calls("hands.kink"),
	"seal-leak": calls("hands.patch"),
	"depth-not-held": calls("hands.patch"),
	"source-empty": calls("hands.source"),
	"suction-absent": { priority: "medium", hands: null, withholdsFill: false },
	"large-output": { priority: "high", hands: null, withholdsFill: true },
} satisfies Record<string, ConditionFact>;
export type Condition = keyof typeof conditionFacts;

export const conditions = Object.keys(conditionFacts) as readonly Condition[]; // keys forgets the names it lists

export const priorityOf = (condition: Condition): Priority => conditionFacts[condition].priority;

export const callsNurse = (condition: Condition): boolean => conditionFacts[condition].hands !== null;

/** How an alarm came to its end. */
export const endings = ["call", "round", "scripted", "dressing-change", "by-itself", "horizon"] as const;
export type Ending = (typeof endings)[number];
