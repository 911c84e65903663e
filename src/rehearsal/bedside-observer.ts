import type { Recorder } from "../analysis/index.ts";
import {
	type CanisterReason,
	type Condition,
	conditions,
	type DressingProcess,
	type Ending,
	type Notice,
	type Observer,
	type PauseReason,
	type Phase,
	type SourceReason,
} from "../therapy/index.ts";

export const phases: readonly Phase[] = [
	"suction",
	"fill",
	"dwell",
	"drain",
	"change",
];

/** An alarm that stands. */
export interface StandingAlarm {
	readonly condition: Condition;
	readonly sinceMin: number;
	/** The phase in which it was raised. */
	readonly raisedIn: Phase;
}

/** Keeps which alarms stand, hands alarms on, and everything else to a recorder where there is one. */
export class BedsideObserver implements Observer {
	/** In the order of `conditions`. */
	readonly standing: (StandingAlarm | null)[] = conditions.map(() => null);
	phaseSince = 0;
	readonly #recorder: Recorder | null;
	readonly #raised: (condition: Condition, atMin: number) => Phase;

	/** `raised` is told of every alarm and answers with the phase of that moment. */
	constructor(
		recorder: Recorder | null,
		raised: (condition: Condition, atMin: number) => Phase,
	) {
		this.#recorder = recorder;
		this.#raised = raised;
	}

	reset(): void {
		this.standing.fill(null);
		this.phaseSince = 0;
	}

	alarmStarts(_: number, condition: Condition, atMin: number): void {
		this.standing[conditions.indexOf(condition)] = {
			condition,
			sinceMin: atMin,
			raisedIn: this.#raised(condition, atMin),
		};
	}

	alarmEnds(
		dressing: number,
		condition: Condition,
		start: number,
		end: number,
		ending: Ending,
	): void {
		this.standing[conditions.indexOf(condition)] = null;
		this.#recorder?.alarmEnds(dressing, condition, start, end, ending);
	}

	span(
		dressing: number,
		process: DressingProcess,
		start: number,
		end: number,
	): void {
		this.#recorder?.span(dressing, process, start, end);
	}

	phase(dressing: number, phase: Phase, start: number, end: number): void {
		this.phaseSince = end;
		this.#recorder?.phase(dressing, phase, start, end);
	}

	pause(
		dressing: number,
		reason: PauseReason,
		start: number,
		end: number,
	): void {
		if (end > start) this.#recorder?.pause(dressing, reason, start, end);
	}

	notice(dressing: number, notice: Notice, at: number): void {
		this.#recorder?.notice(dressing, notice, at);
	}

	canisterChange(dressing: number, reason: CanisterReason, at: number): void {
		this.#recorder?.canisterChange(dressing, reason, at);
	}

	sourceChange(
		dressing: number,
		reason: SourceReason,
		at: number,
		wastedMl: number,
	): void {
		this.#recorder?.sourceChange(dressing, reason, at, wastedMl);
	}

	offSuction(dressing: number, start: number, end: number): void {
		this.#recorder?.offSuction(dressing, start, end);
	}

	breach(): void {}
}
