import type { HandedOut, Answer as RehearsalAnswer, ScriptStep, SoFar, Taking, View } from "../../rehearsal/index.ts";
import { drawCase, Rehearsal, takeStep, takings } from "../../rehearsal/index.ts";
import type { Debrief } from "../../results/index.ts";
import type { Revealed } from "../../vocabulary/index.ts";
import type { Clock } from "../../words/index.ts";
import { type Checked, checkOrder } from "./check-order.ts";
import type { Desk, Fault, Nothing } from "./desk.ts";

export interface BeginOrder {
	readonly kind: "rehearse";
	readonly handed: Handed;
	/** What has given the case away already. */
	readonly known: readonly Revealed[];
}
export interface StepOrder {
	readonly kind: "step";
	readonly step: ScriptStep;
}
export interface DebriefOrder {
	readonly kind: "debrief";
}

/** A case to rehearse; the seed is the scenario's own where it is null. */
export type Handed = Omit<HandedOut, "seed"> & { readonly seed: string | null };

export type RehearsalRunAnswer =
	| Checked
	| Nothing
	| Fault
	| { readonly kind: "begun"; readonly start: Start }
	| { readonly kind: "answered"; readonly answer: RehearsalAnswer; readonly soFar: SoFar }
	| { readonly kind: "debriefed"; readonly debrief: Debrief };

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

/** Longest shift for which causes are drawn, min. */
const longestDrawnMin = 1440;

/** A rehearsal that is kept in the worker: what it hides never comes to the page before the debrief. */
export class RehearsalRun {
	#rehearsal: Rehearsal | null = null;

	begin({ handed: { text, seed, drawn }, known }: BeginOrder, desk: Desk<RehearsalRunAnswer>): RehearsalRunAnswer {
		const checked = checkOrder(text, desk);
		if (checked === null) return { kind: "nothing" };
		if (drawn && checked.horizonMin > longestDrawnMin)
			return fault(`Causes are drawn for a shift of at most 24 h; this one has ${checked.horizonMin / 60} h.`);
		const played = seed ?? checked.seed;
		const scenario = drawn ? drawCase(checked, played) : checked;
		if (scenario.rehearsal === undefined)
			return fault("This scenario has no rehearsal: part. Draw a case from it instead.");
		const rehearsal = new Rehearsal(scenario, played, undefined, known);
		this.#rehearsal = rehearsal;
		return {
			kind: "begun",
			start: {
				title: rehearsal.title,
				brief: rehearsal.brief,
				pace: rehearsal.pace,
				seed: played,
				takings: takings(scenario.constants),
				clock: { start: scenario.start, startClockMin: scenario.startClockMin, horizonMin: scenario.horizonMin },
				regimen: scenario.dressings[0].regimens[0],
				view: rehearsal.view(),
				soFar: rehearsal.soFar(),
			},
		};
	}

	step({ step }: StepOrder): RehearsalRunAnswer {
		const answer = this.#rehearsal === null ? null : takeStep(this.#rehearsal, step);
		return this.#rehearsal === null || answer === null
			? noneUnderWay
			: { kind: "answered", answer, soFar: this.#rehearsal.soFar() };
	}

	debrief(): RehearsalRunAnswer {
		return this.#rehearsal === null ? noneUnderWay : { kind: "debriefed", debrief: this.#rehearsal.debrief() };
	}
}

const fault = (words: string): Fault => ({ kind: "fault", words });
const noneUnderWay = fault("No rehearsal is under way.");
