import { drawCase, Rehearsal, takeStep, takings } from "../../rehearsal/index.ts";
import { checkOrder, type Desk } from "./desk.ts";
import type { Answer, OrderOf } from "./orders.ts";

/** Longest shift for which causes are drawn, min. */
const longestDrawnMin = 1440;

/** A rehearsal that is kept in the worker: what it hides never comes to the page before the debrief. */
export class RehearsalRun {
	#rehearsal: Rehearsal | null = null;

	begin({ handed: { text, seed, drawn }, known }: OrderOf<"rehearse">, desk: Desk): Answer {
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

	step({ step }: OrderOf<"step">): Answer {
		const answer = this.#rehearsal === null ? null : takeStep(this.#rehearsal, step);
		return this.#rehearsal === null || answer === null
			? noneUnderWay
			: { kind: "answered", answer, soFar: this.#rehearsal.soFar() };
	}

	debrief(): Answer {
		return this.#rehearsal === null ? noneUnderWay : { kind: "debriefed", debrief: this.#rehearsal.debrief() };
	}
}

const fault = (words: string): Answer => ({ kind: "fault", words });
const noneUnderWay = fault("No rehearsal is under way.");
