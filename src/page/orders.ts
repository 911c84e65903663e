import type {
	CompareResult,
	DayResult,
	RestsOn,
	SupplyResult,
	TracedDayResult,
} from "../analysis/index.ts";
import type { Clock } from "../charts/index.ts";
import type {
	Debrief,
	HandedOut,
	Answer as RehearsalAnswer,
	Revealed,
	ScriptStep,
	SoFar,
	Taking,
	View,
} from "../rehearsal/index.ts";
import type { Problem } from "../scenario/index.ts";
import type { Beside, Sheet } from "./sheet.ts";

/** What the page asks of its worker. */
export type Order =
	| {
			readonly kind: "day";
			/** Text of a scenario. */
			readonly text: string;
			/** Replications at the most, while something is being dragged; null: those of the scenario. */
			readonly most: number | null;
			/** Version of the program, for the result. */
			readonly version: string;
	  }
	| {
			readonly kind: "compare";
			readonly text: string;
			readonly most: number | null;
			readonly version: string;
			/** Only these two regimens; null: all of the scenario. */
			readonly between: readonly [string, string] | null;
	  }
	| {
			readonly kind: "rests-on";
			readonly text: string;
			readonly between: readonly [string, string];
	  }
	| {
			readonly kind: "stores";
			/** Text of a ward, and the files that it names. */
			readonly sheet: Sheet;
			/** Files that the page carries, for a ward that came without them. */
			readonly carried: Beside;
			readonly version: string;
	  }
	| {
			readonly kind: "rehearse";
			readonly handed: Handed;
			/** What has given the case away already. */
			readonly known: readonly Revealed[];
	  }
	| { readonly kind: "step"; readonly step: ScriptStep }
	| { readonly kind: "debrief" };

/** A case to rehearse; the seed is the scenario's own where it is null. */
export type Handed = Omit<HandedOut, "seed"> & { readonly seed: string | null };

/** What comes back. */
export type Answer =
	/** What is wrong with the scenario, and what is allowed but probably not meant. Always comes first. */
	| {
			readonly kind: "checked";
			readonly problems: readonly Problem[];
			readonly notes: readonly string[];
			readonly rehearsed: boolean;
			readonly regimens: readonly string[];
	  }
	/** The drawn day alone, where the projection takes its time. */
	| { readonly kind: "traced"; readonly day: TracedDayResult }
	| { readonly kind: "day"; readonly result: DayResult }
	| {
			readonly kind: "compare";
			readonly result: CompareResult;
			readonly days: readonly TracedDayResult[];
	  }
	| { readonly kind: "rests-on"; readonly restsOn: RestsOn }
	/** Replications of a ward that are done, or assumptions that have been tried. */
	| { readonly kind: "progress"; readonly done: number; readonly of: number }
	| {
			readonly kind: "stores";
			readonly result: SupplyResult;
			/** The ward as a text that needs no other file; null while this is the first block alone. */
			readonly whole: string | null;
	  }
	| { readonly kind: "begun"; readonly start: Start }
	| {
			readonly kind: "answered";
			readonly answer: RehearsalAnswer;
			readonly soFar: SoFar;
	  }
	| { readonly kind: "debriefed"; readonly debrief: Debrief }
	/** There is nothing to run: the text has problems, or fewer than two regimens to compare. */
	| { readonly kind: "nothing" }
	/** A fault of the program, or a rehearsal that cannot be had. */
	| { readonly kind: "fault"; readonly words: string };

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
