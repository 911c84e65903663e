import type { Regimen } from "../../scenario/index.ts";
import type {
	CanisterReason,
	Condition,
	Ending,
	Notice,
	PauseReason,
	Phase,
	SourceReason,
} from "../../vocabulary/index.ts";

/** What may be read of a dressing, at any time of the span that has just run. */
export interface Readings {
	/** Suction depth, mmHg, positive. */
	depthAt(at: number): number;
	/** Liquid in the dressing, mL. */
	levelAt(at: number): number;
	/** Liquid in the canister, mL. */
	canisterAt(at: number): number;
	/** Solution left in the source, mL. */
	sourceAt(at: number): number;
	/** Exudate that has come since the therapy began, mL. */
	exudateAt(at: number): number;
	readonly phase: Phase;
	readonly regimen: Regimen;
}

/** Is told what happens, in order; takes no part in it. `dressing` is the place in the scenario's list. Times in minutes. */
export interface Observer {
	/** A span over which the dressing ran undisturbed is over; `process` answers for it until this returns. */
	span(dressing: number, process: Readings, start: number, end: number): void;
	phase(dressing: number, phase: Phase, start: number, end: number): void;
	pause(dressing: number, reason: PauseReason, start: number, end: number): void;
	notice(dressing: number, notice: Notice, at: number): void;
	/** `listed`: a happening that the scenario lists brings it, not chance. */
	alarmStarts(dressing: number, condition: Condition, at: number, listed: boolean): void;
	alarmEnds(dressing: number, condition: Condition, start: number, end: number, ending: Ending): void;
	/** `due`: since when it was at capacity, or the round or script that asked for the change. */
	canisterChange(dressing: number, reason: CanisterReason, at: number, due: number): void;
	sourceChange(dressing: number, reason: SourceReason, at: number, wastedMl: number): void;
	offSuction(dressing: number, start: number, end: number): void;
	breach(dressing: number, sizeLeak: number, at: number): void;
}

/** For runs that nobody watches: takes note of nothing. */
export const unobserved: Observer = {
	span() {},
	phase() {},
	pause() {},
	notice() {},
	alarmStarts() {},
	alarmEnds() {},
	canisterChange() {},
	sourceChange() {},
	offSuction() {},
	breach() {},
};
