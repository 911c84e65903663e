import {
	type ConstantName,
	type Constants,
	constantFacts,
} from "../physics/index.ts";
import { assumptionRule, written } from "./assumptions.ts";
import { expectedEvents, maxExpectedEvents } from "./events.ts";
import { judge } from "./quantity.ts";
import type { Scenario } from "./scenario.ts";

/** The scenario with another value of one constant, as if its file had said so; null where a file may not say so. */
export function withConstant(
	scenario: Scenario,
	name: ConstantName,
	value: number,
): Scenario | null {
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
				fillMl: regimen.fillSuggested
					? constants["foam.suggested"] * dressing.foamVolumeMl
					: regimen.fillMl,
				drawdown: regimen.drawdownGiven
					? regimen.drawdown
					: constants["pump.drawdown"],
			})),
		})),
	};
	const held = deepestHeld(constants);
	const possible =
		constants["pump.maxDepth"] <= constants["air.ambient"] &&
		constants["port.pumpOff"] <= constants["hands.port"] &&
		varied.dressings.every((dressing) =>
			dressing.regimens.every(({ depthMmHg }) => depthMmHg < held),
		) &&
		expectedEvents(varied) <= maxExpectedEvents;
	return possible ? varied : null;
}

/** The depth at which the pump's curve meets the leak of a sound seal: Q0·(1 − p/pmax) = C·p. */
export function deepestHeld(constants: Constants): number {
	const most = constants["pump.maxDepth"];
	return (
		most / (1 + (constants["leak.sound"] * most) / constants["pump.freeFlow"])
	);
}
