import type { Condition, Ending } from "./conditions.ts";
import type { DressingProcess } from "./dressing.ts";

export type Phase = "suction" | "fill" | "dwell" | "drain" | "change";
export type PauseReason = "off" | "canister" | "round" | "port";
export type Notice = "canister-nearly-full" | "source-low";
export type CanisterReason = "at-capacity" | "round" | "scripted";
export type SourceReason = "empty" | "round" | "expired" | "scripted";

/** Is told what happens, in order; takes no part in it. `dressing` is the place in the scenario's list. Times in minutes. */
export interface Observer {
	/** A span over which the dressing ran undisturbed is over; `process.depthAt(t)` and its like answer for it until this returns. */
	span(
		dressing: number,
		process: DressingProcess,
		start: number,
		end: number,
	): void;
	phase(dressing: number, phase: Phase, start: number, end: number): void;
	pause(
		dressing: number,
		reason: PauseReason,
		start: number,
		end: number,
	): void;
	notice(dressing: number, notice: Notice, at: number): void;
	/** `listed`: a happening that the scenario lists brings it, not chance. */
	alarmStarts(
		dressing: number,
		condition: Condition,
		at: number,
		listed: boolean,
	): void;
	alarmEnds(
		dressing: number,
		condition: Condition,
		start: number,
		end: number,
		ending: Ending,
	): void;
	/** `due`: since when it was at capacity, or the round or script that asked for the change. */
	canisterChange(
		dressing: number,
		reason: CanisterReason,
		at: number,
		due: number,
	): void;
	sourceChange(
		dressing: number,
		reason: SourceReason,
		at: number,
		wastedMl: number,
	): void;
	offSuction(dressing: number, start: number, end: number): void;
	breach(dressing: number, sizeLeak: number, at: number): void;
}
