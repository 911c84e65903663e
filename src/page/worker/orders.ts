import type { HandedOut, ScriptStep, SoFar, Taking, Answer as Told, View } from "../../rehearsal/index.ts";
import type { CompareResult, DayResult, Debrief, RestsOn, SupplyResult, TracedDayResult } from "../../results/index.ts";
import type { Revealed } from "../../vocabulary/index.ts";
import type { Clock } from "../../words/index.ts";
import type { Findings } from "../editor/bench.ts";
import type { Beside, Sheet } from "../editor/history.ts";

/** The names of two regimens. */
export type Between = readonly [string, string];

/** A scenario that is run. */
interface Run {
	readonly text: string;
	/** Replications at the most, while something is being dragged; null: those of the scenario. */
	readonly most: number | null;
	/** Version of the program, for the result. */
	readonly version: string;
}

/** A case to rehearse; the seed is the scenario's own where it is null. */
export type Handed = Omit<HandedOut, "seed"> & { readonly seed: string | null };

/** What the page asks of its worker. */
export type Order =
	| (Run & { readonly kind: "day" })
	/** `between`: only these two regimens; null: all of the scenario. */
	| (Run & { readonly kind: "compare"; readonly between: Between | null })
	| { readonly kind: "rests-on"; readonly text: string; readonly between: Between }
	/** `carried`: files that the page carries, for a ward that came without them. */
	| { readonly kind: "stores"; readonly sheet: Sheet; readonly carried: Beside; readonly version: string }
	/** `known`: what has given the case away already. */
	| { readonly kind: "rehearse"; readonly handed: Handed; readonly known: readonly Revealed[] }
	| { readonly kind: "step"; readonly step: ScriptStep }
	| { readonly kind: "debrief" };

export type OrderOf<K extends Order["kind"]> = Extract<Order, { readonly kind: K }>;

/** A rehearsal as it begins. */
export interface Start {
	readonly title: string;
	readonly brief: string;
	readonly pace: number | null;
	readonly seed: string;
	readonly takings: readonly Taking[];
	/** The whole shift on the clock. */
	readonly clock: Clock;
	readonly regimen: { readonly depthMmHg: number; readonly fillMl: number };
	readonly view: View;
	readonly soFar: SoFar;
}

/** What comes back. */
export type Answer =
	/** What is wrong with the text, and what is allowed but probably not meant. Always comes first. */
	| (Findings & { readonly kind: "checked" })
	/** There is nothing to run: the text has problems, or fewer than two regimens to compare. */
	| { readonly kind: "nothing" }
	/** A fault of the program, or a rehearsal that cannot be had. */
	| { readonly kind: "fault"; readonly words: string }
	/** Replications of a ward that are done, or assumptions that have been tried. */
	| { readonly kind: "progress"; readonly done: number; readonly of: number }
	/** The drawn day alone, where the projection takes its time. */
	| { readonly kind: "traced"; readonly day: TracedDayResult }
	| { readonly kind: "day"; readonly result: DayResult }
	| { readonly kind: "compare"; readonly result: CompareResult; readonly days: readonly TracedDayResult[] }
	| { readonly kind: "rests-on"; readonly restsOn: RestsOn }
	/** `whole`: the ward as a text that needs no other file; null while this is the first block alone. */
	| { readonly kind: "stores"; readonly result: SupplyResult; readonly whole: string | null }
	| { readonly kind: "begun"; readonly start: Start }
	| { readonly kind: "answered"; readonly answer: Told; readonly soFar: SoFar }
	| { readonly kind: "debriefed"; readonly debrief: Debrief };

/** Orders and answers carry the number of the order, so that answers to an older one can be told and dropped. */
export interface NumberedOrder {
	readonly number: number;
	readonly order: Order;
}
export interface NumberedAnswer {
	readonly number: number;
	readonly answer: Answer;
	/** Nothing more comes for this order. */
	readonly last: boolean;
}
