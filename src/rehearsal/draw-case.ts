import { Stream } from "../engine/index.ts";
import type {
	HiddenCause,
	RehearsalPlan,
	Scenario,
} from "../scenario/index.ts";
import type { Placed } from "./bedside.ts";
import { type Hazard, hazardsOf } from "./hazards.ts";
import type { Case } from "./shift.ts";

/** How many causes a drawn case hides: shares of none, one and two. Assumed: a teacher's mix, not a ward's. */
export const causeCounts = { none: 0.1, one: 0.75, two: 0.15 } as const;

const plainBrief =
	"You take over a patient with a foam dressing under suction. Look after it until the shift ends.";

/** A new case: the same dressing, with causes drawn from the seed as the model brings them. */
export function drawCase(scenario: Scenario, seed: string): Case {
	const rehearsal: RehearsalPlan = {
		dressing: 0,
		brief: plainBrief,
		transferMin: null,
		told: [],
		pace: null,
		...scenario.rehearsal,
		help: null,
		hides: [],
	};
	const open: Case = { ...scenario, seed, rehearsal };
	const stream = new Stream(seed, "drawn case", 0);
	const hides = drawCauses(hazardsOf(open), () => stream.uniform());
	return { ...open, rehearsal: { ...rehearsal, hides: hides.map(asHidden) } };
}

/** Causes of one case: how many, which by their weights, and the course of each. */
export function drawCauses(
	hazards: readonly Hazard[],
	uniform: () => number,
): Placed[] {
	const u = uniform();
	const count = u < causeCounts.none ? 0 : u < 1 - causeCounts.two ? 1 : 2;
	const left = [...hazards];
	const drawn: Placed[] = [];
	while (drawn.length < count && left.length > 0) {
		const index = pick(left, uniform());
		drawn.push(left[index].draw(uniform));
		left.splice(index, 1);
	}
	return drawn;
}

/** Index of a hazard by weight. */
export function pick(hazards: readonly Hazard[], u: number): number {
	const sum = hazards.reduce((all, { weight }) => all + weight, 0);
	let rest = u * sum;
	const index = hazards.findIndex(({ weight }) => {
		rest -= weight;
		return rest < 0;
	});
	return index < 0 ? hazards.length - 1 : index;
}

/** A placed cause as a case file would hide it. */
function asHidden({ onsetMin: _, ...hidden }: Placed): HiddenCause {
	return hidden;
}
