import { checkScenario, type Scenario } from "../scenario/index.ts";
import type { Desk } from "./answer-orders.ts";

/** Checks the text and says what is wrong with it; null where it cannot be run. */
export function checkOrder(text: string, desk: Desk): Scenario | null {
	const { scenario, problems, notes } = checkScenario(text);
	desk.say({
		kind: "checked",
		problems,
		notes,
		rehearsed: scenario?.rehearsal !== undefined,
		regimens: scenario?.compare.map(({ name }) => name) ?? [],
	});
	return scenario;
}

/** The scenario with fewer replications, where fewer are allowed. */
export const atMost = (scenario: Scenario, most: number | null): Scenario =>
	most === null || scenario.replications <= most
		? scenario
		: { ...scenario, replications: most };
