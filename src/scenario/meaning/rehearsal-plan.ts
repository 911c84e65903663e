/** What the `rehearsal:` part of a scenario says: a shift in which something is hidden from the trainee. Times in minutes from the start. */
export interface RehearsalPlan {
	/** Place of the dressing in the scenario's list. */
	readonly dressing: number;
	/** What the trainee is told at the start. */
	readonly brief: string;
	/** When the patient is moved from one bed to another; null: not at all. */
	readonly transferMin: number | null;
	/** What the trainee hears during the shift. */
	readonly told: readonly { readonly atMin: number; readonly says: string }[];
	/** Suggested pace, times real time; null: none. */
	readonly pace: number | null;
	/** Whether calling for help is right; null: as the causes have it (bleeding needs it). */
	readonly help: "needed" | "not-needed" | null;
	readonly hides: readonly HiddenCause[];
}

/** Comes at `atMin`, or at a moment drawn from the `withinMin` minutes after it. */
interface AtSomeTime {
	readonly atMin: number;
	readonly withinMin: number;
}

export type HiddenCause =
	| (AtSomeTime & {
			readonly cause: "fill-line-kinked" | "suction-line-kinked" | "left-off";
			/** After which it is gone by itself; Infinity: it stays. */
			readonly lastsMin: number;
	  })
	/** Share of the port that debris closes, 0…1. */
	| (AtSomeTime & { readonly cause: "port-clogged"; readonly share: number })
	/** Leak in L/min/mmHg. */
	| (AtSomeTime & { readonly cause: "seal-breach"; readonly size: number })
	/** Comes with the transfer. */
	| { readonly cause: "dressing-dislodged"; readonly size: number }
	/** Content at the start of the shift, from which it fills up or runs out. */
	| { readonly cause: "canister-full" | "source-empty"; readonly holdsMl: number }
	| (AtSomeTime & { readonly cause: "bleeding"; readonly volumeMl: number; readonly lastsMin: number });
