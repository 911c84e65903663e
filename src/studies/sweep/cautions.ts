import type { Caution, SweepPoint } from "../../results/index.ts";
import { cloggingAssumed, generalCautions } from "../kit/cautions.ts";
import type { SweepPlan } from "./grid.ts";

/** What a reader of a design map must be told. */
export function sweepCautions(plan: SweepPlan, points: readonly SweepPoint[], constrained: boolean): Caution[] {
	const { scenario } = plan;
	const outside = points.filter((point) => point.outside.length > 0).length;
	const said: readonly (readonly [boolean, string, string])[] = [
		[
			true,
			"choice-stays",
			"A map shows what the model gives at each point, not what is right for a wound: healing is not modelled, and the choice stays with the clinician.",
		],
		[
			outside > 0,
			"outside-practice",
			`${outside} of ${points.length} points lie outside common practice for the tissue, or ask more of foam or pump than they give (no source; local practice varies). They are marked, and are no advice.`,
		],
		[constrained && !points.some((point) => point.kept), "none-kept", "No point of the grid keeps every constraint."],
		[scenario.chance, cloggingAssumed.code, cloggingAssumed.text],
		[
			scenario.chance,
			"many-points",
			`Where the best of ${points.length} points is looked for, chance alone makes one look good: run more replications at the few that matter, or compare them.`,
		],
		[
			plan.axes.some(({ name }) => name === "start"),
			"start-moves",
			"Happenings, dressing changes and exudate count from the start of the scenario and move with it; rounds, shifts and nights stay on the clock.",
		],
	];
	return [...generalCautions, ...said.flatMap(([applies, code, text]) => (applies ? [{ code, text }] : []))];
}
