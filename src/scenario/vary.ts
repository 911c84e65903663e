import { type ConstantName, type Constants, constantFacts, deepestHeld } from "../physics/index.ts";
import { assumptionRule, goTogether, written } from "./keys/assumptions.ts";
import { expectedEvents, maxExpectedEvents } from "./meaning/events.ts";
import type { Scenario } from "./meaning/scenario.ts";
import { judge } from "./reading/quantity.ts";

/** The scenario with another value of one constant, as if its file had said so; null where a file may not say so. */
export function withConstant(scenario: Scenario, name: ConstantName, value: number): Scenario | null {
	const rule = assumptionRule(name);
	const text = written(value, constantFacts[name].unit);
	if (!judge(rule.unit === "" ? value : text, rule).ok) return null;
	const constants: Constants = { ...scenario.constants, [name]: value };
	const varied: Scenario = {
		...scenario,
		constants,
		dressings: scenario.dressings.map((dressing) => ({
			...dressing,
			regimens: dressing.regimens.map((regimen) => ({
				...regimen,
				fillMl: regimen.fillSuggested ? constants["foam.suggested"] * dressing.foamVolumeMl : regimen.fillMl,
				drawdown: regimen.drawdownGiven ? regimen.drawdown : constants["pump.drawdown"],
			})),
		})),
	};
	const held = deepestHeld(constants);
	const possible =
		goTogether(constants) &&
		varied.dressings.every((dressing) => dressing.regimens.every(({ depthMmHg }) => depthMmHg < held)) &&
		expectedEvents(varied) <= maxExpectedEvents;
	return possible ? varied : null;
}
