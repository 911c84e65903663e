import { type ConstantName, constantFacts, constantNames } from "../../physics/index.ts";
import type { Assumption } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { picked } from "./named.ts";

/** Constants that act only when chance is on. */
const ofChance = /^(breach|turn|transfer|debris|clump|kink|exudate|difficulty|slough)\./;

/** Whether a scenario makes any use of a constant. */
function isUsed(name: ConstantName, scenario: Scenario): boolean {
	if (!scenario.chance && ofChance.test(name)) return false;
	const [group, member] = name.split(".");
	const regimens = scenario.dressings.flatMap((dressing) => dressing.regimens);
	if (group === "difficulty") return scenario.dressings.some((dressing) => dressing.difficulty === member);
	if (group === "slough") return scenario.dressings.some((dressing) => dressing.slough === member);
	if (name === "pump.drawdown") return regimens.some((regimen) => !regimen.drawdownGiven);
	if (name === "foam.suggested") return regimens.some((regimen) => regimen.fillSuggested);
	if (group === "turn")
		return scenario.care.turningMin !== null || scenario.happenings.some((happening) => happening.what === "turn");
	if (group === "transfer") return scenario.happenings.some((happening) => happening.what === "transfer");
	if (group === "round") return scenario.care.roundsClockMin.length > 0;
	return true;
}

/** Every number the answer rests on: the model's constants that were used, then what the scenario left to the defaults. */
export function assumptionsOf(scenario: Scenario): Assumption[] {
	const overridden = new Set(scenario.overridden);
	const constants = constantNames
		.filter((name) => isUsed(name, scenario))
		.map((name): Assumption => {
			const fact = constantFacts[name];
			const given = overridden.has(name);
			return {
				name,
				value: scenario.constants[name],
				...picked(fact, "unit", "provenance", "source", "meaning"),
				...(given && { provenance: "assumed", source: "set by the scenario" }),
				defaulted: !given,
			};
		});
	const defaults = scenario.defaulted.map(
		({ path, ...entry }): Assumption => ({
			name: path,
			...picked(entry, "value", "provenance", "source"),
			unit: "",
			meaning: "not given by the scenario",
			defaulted: true,
		}),
	);
	return [...constants, ...defaults];
}
