import type { Act, CauseName, Condition, Place, Revealed } from "../../vocabulary/index.ts";
import type { BankSize } from "../belief/course-bank.ts";
import type { Finding } from "../shift/findings.ts";
import type { RunningShift } from "../shift/running-shift.ts";
import type { Shown } from "../shift/view.ts";

/** A look or an act of the trainee, with what it came to. */
export type Entry = {
	readonly startMin: number;
	readonly endMin: number;
	/** What the trainee was answered. */
	readonly answer: string;
	/** Alarms that stood when it began. */
	readonly alarms: readonly Condition[];
	/** Kinds of cause that it showed and that were there. */
	readonly found: readonly CauseName[];
} & (
	| {
			readonly kind: "look";
			readonly what: Place;
			/** null where the look was broken off. */
			readonly finding: Finding | null;
			/** What showed at its end. */
			readonly shown: Shown;
	  }
	| {
			readonly kind: "act";
			readonly what: Act;
			readonly done: boolean;
			readonly mended: readonly CauseName[];
			/** Alarms that stood when it began, and not when it ended. */
			readonly ended: readonly Condition[];
			/** The therapy was switched off when it began. */
			readonly wasStopped: boolean;
			/** What the wound and the dressing that came off it showed; empty for an act that takes none off. */
			readonly seen: readonly { readonly atMin: number; readonly finding: Finding }[];
			/** Kinds of cause that were wrong when it began. */
			readonly wrong: readonly CauseName[];
	  }
);

/** All that the debrief is made from. */
export type ShiftRecord = ReturnType<RunningShift["finish"]> & {
	readonly log: readonly Entry[];
	readonly bank: BankSize;
	/** What was known before the shift began. */
	readonly known: readonly Revealed[];
};
