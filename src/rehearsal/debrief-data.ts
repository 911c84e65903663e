import type { DayCurve, DressingDay } from "../analysis/index.ts";
import type { Provenance } from "../physics/index.ts";
import type { CauseName } from "../scenario/index.ts";
import type { Act } from "./acts.ts";
import type { TroubleEnd } from "./bedside.ts";
import type { Likelihoods } from "./belief.ts";
import type { Played } from "./orderly.ts";
import type { Place } from "./places.ts";

/** How a rehearsal came to its end. */
export type Ended = "shift-over" | "handed-over" | "left";

/**
 * What gave the hidden causes away, other than looking: the shift was ended before one was found, its file lay open on
 * the bench, or the same case had been debriefed before.
 */
export type Revealed = "ended-early" | "opened-on-bench" | "run-again";

/** What a rehearsal came to: format `slackwater/debrief@1`. Minutes count from the start of the shift. */
export interface Debrief {
	readonly format: "slackwater/debrief@1";
	readonly case: {
		readonly title: string;
		readonly brief: string;
		readonly seed: string;
		readonly start: string;
		readonly startClockMin: number;
		readonly horizonMin: number;
		readonly endedMin: number;
		readonly ended: Ended;
		readonly revealed: readonly Revealed[];
	};
	/** The day in sentences. */
	readonly facts: readonly string[];
	readonly causes: readonly CauseCourse[];
	readonly help: {
		readonly needed: boolean;
		readonly calledMin: number | null;
		readonly cameMin: number | null;
		/** Minutes from when it was needed until it was called. */
		readonly afterMin: number | null;
	};
	/** What went on where the wound bled; null: it did not bleed. */
	readonly bleeding: {
		/** Minutes that the therapy ran while it bled, and washes that began meanwhile. */
		readonly therapyMin: number;
		readonly washes: number;
		/** Minutes that it ran from when fresh blood was found until the end; null: none was found. */
		readonly therapyAfterFoundMin: number | null;
		/** The therapy was stopped by hand, in the bleed or after. */
		readonly stopped: boolean;
	} | null;
	readonly offSuction: {
		/** The most within any 24 h. */
		readonly minutes: number;
		readonly limitMin: number;
		readonly spells: readonly {
			readonly startMin: number;
			readonly endMin: number;
		}[];
	};
	readonly log: readonly LoggedEntry[];
	readonly search: Search;
	readonly day: {
		readonly id: string;
		readonly regimen: {
			readonly depthMmHg: number;
			readonly fillMl: number;
		};
		readonly phases: DressingDay["phases"];
		readonly alarms: DressingDay["alarms"];
		readonly curve: DayCurve;
		readonly totals: DressingDay["totals"];
	};
	readonly assumptions: readonly {
		readonly name: string;
		readonly value: number;
		readonly unit: string;
		readonly provenance: Provenance;
		readonly source: string;
	}[];
}

/** A cause with what became of it; null for what did not come about. */
export interface CauseCourse {
	readonly cause: CauseName;
	readonly words: string;
	readonly onsetMin: number | null;
	/** The first alarm that it raised. */
	readonly signMin: number | null;
	readonly noticedMin: number | null;
	readonly foundMin: number | null;
	readonly foundAt: Place | null;
	readonly endMin: number | null;
	readonly endedBy: TroubleEnd | null;
	/** From its onset. */
	readonly minutesToNotice: number | null;
	readonly minutesToFind: number | null;
	readonly minutesToMend: number | null;
}

/** A look or an act, with why it was not needed ("" where it was) and, after a look, what could be believed. */
export interface LoggedEntry {
	readonly kind: "look" | "act";
	readonly what: Place | Act;
	readonly startMin: number;
	readonly endMin: number;
	/** Its beginning on the clock, and the same with its end. */
	readonly clock: string;
	readonly span: string;
	readonly answer: string;
	readonly needless: string;
	readonly belief: Likelihoods | null;
	/** The same in words; "" where there is none. */
	readonly believed: string;
}

/** What orderly searches would have been in the same shift, each from an alarm on, or from a round where none came. */
interface Search {
	readonly stages: readonly Omit<Played, "looks">[];
	/** The same in sentences. */
	readonly sentences: readonly string[];
	/** How all that is said of likelihood is to be read. */
	readonly note: string;
}
