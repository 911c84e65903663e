import { Substream } from "../../engine/index.ts";
import type { HiddenCause, RehearsalPlan, Scenario } from "../../scenario/index.ts";
import { Recorder } from "../../studies/index.ts";
import type { Hazard, Placed, SoundShift } from "../causes/cause.ts";
import { causeOf, causes } from "../causes/causes.ts";
import { Bedside } from "./bedside.ts";
import { type Case, shiftOf } from "./shift.ts";

/** How many causes a drawn case hides: shares of none, one and two. Assumed: a teacher's mix, not a ward's. */
export const causeCounts = { none: 0.1, one: 0.75, two: 0.15 } as const;

const plainBrief = "You take over a patient with a foam dressing under suction. Look after it until the shift ends.";

/** A new case: the same dressing, with causes drawn from the seed as the model brings them. */
export function drawCase(scenario: Scenario, seed: string): Case {
	const plain = { dressing: 0, brief: plainBrief, transferMin: null, told: [], pace: null };
	const rehearsal: RehearsalPlan = { ...plain, ...scenario.rehearsal, help: null, hides: [] };
	const open: Case = { ...scenario, seed, rehearsal };
	const stream = new Substream(seed, "drawn case", 0);
	const hides = drawCauses(hazardsOf(open), () => stream.uniform());
	// As a case file would hide them.
	return { ...open, rehearsal: { ...rehearsal, hides: hides.map(({ onsetMin: _, ...hidden }) => hidden) } };
}

/** The kinds of cause that a shift with this dressing can bring, weighted by the model's own numbers. */
export function hazardsOf(of: Case) {
	const sound = soundShift(of);
	return causes.map((cause) => ({ cause: cause.name, ...cause.hazard(sound) })).filter(({ weight }) => weight > 0);
}

function soundShift(of: Case): SoundShift {
	const shift = shiftOf(of);
	const { constants, horizonMin } = shift;
	const { turningMin } = of.care;
	const { transferMin } = of.rehearsal;
	const [dressing] = shift.dressings;
	const recorder = new Recorder(shift);
	const bedside = new Bedside(shift, recorder);
	bedside.begin([]);
	bedside.advance(horizonMin);
	bedside.process.finish();
	const { phases, totals } = recorder.day(0, bedside.process);
	return { dressing, constants, horizonMin, hours: horizonMin / 60, turningMin, transferMin, phases, totals };
}

/** Causes of one case: how many, which, and the course of each. */
export function drawCauses(hazards: readonly Hazard[], uniform: () => number): Placed[] {
	const u = uniform();
	return drawSome(u < causeCounts.none ? 0 : u < 1 - causeCounts.two ? 1 : 2, hazards, uniform);
}

/** So many causes, each of another kind by their weights, as far as there are any. */
export function drawSome(count: number, hazards: readonly Hazard[], uniform: () => number): Placed[] {
	const left = [...hazards];
	const drawn: Placed[] = [];
	while (drawn.length < count && left.length > 0) {
		const [hazard] = left.splice(pick(left, uniform()), 1);
		drawn.push(hazard.draw(uniform));
	}
	return drawn;
}

/** Index of a hazard by weight. */
function pick(hazards: readonly Hazard[], u: number): number {
	const sum = hazards.reduce((all, { weight }) => all + weight, 0);
	let rest = u * sum;
	const index = hazards.findIndex(({ weight }) => {
		rest -= weight;
		return rest < 0;
	});
	return index < 0 ? hazards.length - 1 : index;
}

/** Every hidden cause with the moment at which it comes, drawn from the seed where the case leaves room. */
export function placedCauses(hides: readonly HiddenCause[], transferMin: number | null, seed: string): Placed[] {
	return hides.map((hidden, i) => {
		if (!("atMin" in hidden)) {
			const onsetMin = causeOf(hidden.cause).withTransfer ? (transferMin ?? Number.POSITIVE_INFINITY) : 0;
			return { ...hidden, onsetMin };
		}
		const { atMin, withinMin } = hidden;
		const laterMin = withinMin === 0 ? 0 : withinMin * new Substream(seed, "rehearsal", i).uniform();
		return { ...hidden, onsetMin: atMin + laterMin };
	});
}
