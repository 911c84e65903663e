import type { Condition, Phase } from "../../vocabulary/index.ts";
import type { Whole } from "../parts/whole.ts";
import type { WoundOutput } from "../parts/wound-output.ts";

/** What moves a patient: a turn in bed, or a transfer from one place to another. */
export type Move = "turn" | "transfer";

/** What a hazard may ask of the dressing that it endangers. */
export interface Endangered extends Whole {
	readonly horizonMin: number;
	/** The pump runs through an open path, and the depth stands where it is set. */
	readonly isHeld: boolean;
	/** Liquid in the dressing at a time of the present span, mL. */
	levelAt(at: number): number;
	/** Liquid that the foam takes without pooling, mL. */
	readonly capacity: number;
	/** When the fill that runs will have its volume; Infinity where none does. */
	readonly fillEndsAt: number;
	readonly wound: WoundOutput;
}

/**
 * Something that goes wrong with a dressing, at times by chance: law, draws, events and what it does stand in its one
 * file, and a line of `hazards.ts` puts it into every run. What it draws has an entry in `purposes`, its numbers in the
 * constants, an alarm of its own in the conditions.
 *
 * Every call is asked for only by who needs it. With nothing left to chance a hazard is never told of phases, spans and
 * moves, and draws nothing: but what a scenario lists may still bring about what it does.
 */
export interface Hazard {
	/** A therapy begins now, with a dressing of that age: everything is set back and, where chance rules, first drawn. */
	begin?(ageMin: number): void;
	/** A phase is about to begin; `left` ends with it, or is null where the therapy or a new dressing begins. */
	enter?(phase: Phase, left: Phase | null): void;
	/** A span is over: to be booked before the liquid moves on. */
	settle?(): void;
	/** Air and liquid run undisturbed from now on, for `spanMin` minutes at the most. */
	plan?(spanMin: number): void;
	move?(kind: Move): void;
	/** The dressing comes off, and with it what was wrong with it. */
	dressingOff?(): void;
	/** A new one is on. */
	dressingOn?(): void;
	/** How a nurse who was called mends the causes that are this hazard's. */
	readonly remedies?: { readonly [C in Condition]?: () => void };
}
