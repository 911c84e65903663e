import type { DressingDay } from "../../results/index.ts";
import type { HiddenCause, Scenario } from "../../scenario/index.ts";
import type { DressingProcess } from "../../therapy/index.ts";
import type { Act, CauseName, Condition, Place } from "../../vocabulary/index.ts";
import type { Bed } from "../places/bed.ts";

/**
 * A kind of cause: what a rehearsal can hide. Each stands in a file of its own and has a line in `causes.ts`; its name
 * stands in the vocabulary, and what a scenario says of it beside the scenario's key `hides`.
 */
export interface Cause<H extends HiddenCause = HiddenCause> {
	readonly name: H["cause"];
	/** A clause, for the debrief only: nothing before it may say so. */
	readonly words: string;
	/** Where a look reveals it, and as what. */
	readonly sights: readonly Sight[];
	/** What mends it; the first is the least work. */
	readonly mendedBy: readonly Act[];
	/** Alarms that it may raise. */
	readonly raises: readonly Condition[];
	/** No act mends it: suction is stopped, help called, and it stays wrong, stopped or not, until a clinician has seen it. */
	readonly forClinician?: true;
	/** What is said of it when the dressing is taken off and lays it open. */
	readonly laidOpen?: string;
	/** It is there from when this alarm is raised, be it hidden or come of itself. */
	readonly showsAs?: Condition;

	/** It comes when the patient is moved to another bed, at no time of its own. */
	readonly withTransfer?: true;

	/** For one that grows from the start of the shift: how it lies hidden then. */
	prepare?(hidden: H, process: DressingProcess): void;
	/** Whether it can come about now; left out: unless a new dressing is just being put on. */
	possible?(bed: Bed): boolean;
	/** Its moment has come. */
	begin?(hidden: H, bed: Bed): void;
	/** It has lasted as long as it was to last; an alarm that it raised stands on. */
	end?(hidden: H, bed: Bed): void;

	/** As chance brings it. */
	hazard(shift: SoundShift): Hazard;
}

/** Something that can be seen, heard or felt at a place: of what is there and nothing else, changing only at events. */
export interface Sight {
	readonly place: Place;
	/** What is said of it, and what where it is not there. */
	readonly words: Told;
	readonly absent?: Told;
	seen(bed: Bed): boolean;
}

export type Told = string | ((bed: Bed) => string);

/** A hidden cause with its moment drawn. */
export type Placed = HiddenCause & { readonly onsetMin: number };

/** What a scenario says of a hidden cause of this kind. */
export type Hidden<N extends CauseName, H = HiddenCause> = H extends { readonly cause: infer C }
	? N extends C
		? H
		: never
	: never;

export interface Hazard {
	/** How many of the kind a shift brings on average; only the shares matter. */
	readonly weight: number;
	/** The course of one, from uniform numbers; the first decides its moment, so that it can be spread evenly. */
	draw(uniform: () => number): Placed;
}

/** A shift in which nothing goes wrong: what the weights of causes are reckoned from. */
export interface SoundShift extends Pick<Scenario, "constants" | "horizonMin">, Pick<DressingDay, "phases" | "totals"> {
	readonly dressing: Scenario["dressings"][number];
	readonly hours: number;
	/** Every how many minutes the patient is turned, and when moved to another bed; null: not at all. */
	readonly turningMin: number | null;
	readonly transferMin: number | null;
}
