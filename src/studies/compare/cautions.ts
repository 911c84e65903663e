import type { Caution, Difference, RegimenResult } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { cautionsOf } from "../day/cautions.ts";
import { traceDay } from "../trace/trace-day.ts";
import type { Arm } from "./arms.ts";

/** The cautions of every regimen, said once where they are of all, and those of a comparison. */
export function comparisonCautions(
	scenario: Scenario,
	arms: readonly Arm[],
	regimens: readonly RegimenResult[],
	differences: readonly Difference[],
	replication: number,
): Caution[] {
	const ofArms = arms.map((arm, place) =>
		cautionsOf(
			{ ...arm.scenario, replications: scenario.replications },
			traceDay(arm.scenario, undefined, replication),
			regimens[place].dressings,
			() => 0,
		),
	);
	const key = (caution: Caution) => JSON.stringify([caution.code, caution.text, caution.dressing]);
	const everywhere = (caution: Caution) => ofArms.every((list) => list.some((other) => key(other) === key(caution)));
	const common = ofArms[0].filter(everywhere);
	const own = ofArms.flatMap((list, place) =>
		list
			.filter((caution) => !everywhere(caution))
			.map((caution) => ({ ...caution, text: `Regimen ${arms[place].name}: ${caution.text}` })),
	);
	return [
		...common,
		...own,
		{
			code: "choice-stays",
			text: "Nothing here says which regimen is better for the wound: washing, fluid, leaks and calls are set side by side, healing is not modelled, and the choice stays with the clinician.",
		},
		...equalRegimens(arms),
		...rareMeasures(differences),
	];
}

/** Regimens that do not differ in anything that is simulated. */
function equalRegimens(arms: readonly Arm[]): Caution[] {
	const settings = arms.map((arm) => JSON.stringify(arm.scenario.dressings));
	return settings.flatMap((one, place) => {
		const before = settings.indexOf(one);
		return before === place
			? []
			: [
					{
						code: "equal-regimens",
						text: `Regimen ${arms[place].name} has the settings of ${arms[before].name}: they do not differ in anything.`,
					},
				];
	});
}

function rareMeasures(differences: readonly Difference[]): Caution[] {
	const rare = differences.filter((one) => one.kind === "too-rare");
	return rare.length === 0
		? []
		: [
				{
					code: "too-rare",
					text: `Of ${rare.length} differences nothing can be said from ${rare[0].replications} replications: what they count is too rare. More replications may tell.`,
				},
			];
}
