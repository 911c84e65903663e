import {
	drawCase,
	Rehearsal,
	type Revealed,
	type ScriptStep,
	takeStep,
	takings,
} from "../rehearsal/index.ts";
import type { Desk } from "./answer-orders.ts";
import { checkOrder } from "./check-order.ts";
import type { Answer, Handed } from "./orders.ts";

/** Longest shift for which causes are drawn, min. */
const longestDrawnMin = 1440;

/** A rehearsal that is kept in the worker: what it hides never comes to the page before the debrief. */
export class RehearsalRun {
	#rehearsal: Rehearsal | null = null;

	begin(
		{ text, seed, drawn }: Handed,
		known: readonly Revealed[],
		desk: Desk,
	): Answer {
		const checked = checkOrder(text, desk);
		if (checked === null) return { kind: "nothing" };
		if (drawn && checked.horizonMin > longestDrawnMin)
			return fault(
				`Causes are drawn for a shift of at most 24 h; this one has ${checked.horizonMin / 60} h.`,
			);
		const played = seed ?? checked.seed;
		const scenario = drawn ? drawCase(checked, played) : checked;
		if (scenario.rehearsal === undefined)
			return fault(
				"This scenario has no rehearsal: part. Draw a case from it instead.",
			);
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
				clock: {
					start: scenario.start,
					startClockMin: scenario.startClockMin,
					horizonMin: scenario.horizonMin,
				},
				regimen: scenario.dressings[0].regimens[0],
				view: rehearsal.view(),
				soFar: rehearsal.soFar(),
			},
		};
	}

	step(step: ScriptStep): Answer {
		if (this.#rehearsal === null) return fault("No rehearsal is under way.");
		const answer = takeStep(this.#rehearsal, step);
		return answer === null
			? fault("No rehearsal is under way.")
			: { kind: "answered", answer, soFar: this.#rehearsal.soFar() };
	}

	debrief(): Answer {
		return this.#rehearsal === null
			? fault("No rehearsal is under way.")
			: { kind: "debriefed", debrief: this.#rehearsal.debrief() };
	}
}

const fault = (words: string): Answer => ({ kind: "fault", words });
