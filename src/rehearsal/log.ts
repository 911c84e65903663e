import type { CauseName } from "../scenario/index.ts";
import type { Condition } from "../therapy/index.ts";
import type { Act } from "./acts.ts";
import type { Shown } from "./belief.ts";
import type { Place } from "./places.ts";

/** A look or an act of the trainee, with what it came to. */
export type Entry = {
	readonly startMin: number;
	readonly endMin: number;
	/** What the trainee was answered. */
	readonly answer: string;
	/** Alarms that stood when it began. */
	readonly alarms: readonly Condition[];
} & (
	| {
			readonly kind: "look";
			readonly what: Place;
			/** Number of the finding; null where it was broken off. */
			readonly code: number | null;
			/** What showed at its end. */
			readonly shown: Shown;
			/** Kinds of cause that it showed and that were there. */
			readonly found: readonly CauseName[];
	  }
	| {
			readonly kind: "act";
			readonly what: Act;
			readonly done: boolean;
			readonly mended: readonly CauseName[];
			/** It ended an alarm, or stopped what had to be stopped, or was called for. */
			readonly served: boolean;
			/** What the wound and the dressing that came off it showed; empty for an act that takes none off. */
			readonly seen: readonly {
				readonly atMin: number;
				readonly code: number;
			}[];
			/** Kinds of cause that these showed and that were there. */
			readonly found: readonly CauseName[];
			/** Kinds of cause that were wrong when it began. */
			readonly wrong: readonly CauseName[];
	  }
);
