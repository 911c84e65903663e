import { checkScenario, type Problem, type Scenario } from "../../scenario/index.ts";
import type { Desk } from "./desk.ts";

/** What is wrong with the text, and what is allowed but probably not meant. Always comes first. */
export interface Checked {
	readonly kind: "checked";
	readonly problems: readonly Problem[];
	readonly notes: readonly string[];
	readonly rehearsed: boolean;
	readonly regimens: readonly string[];
}

/** Checks the text and says what is wrong with it; null where it cannot be run. */
export function checkOrder(text: string, desk: Pick<Desk<Checked>, "say">): Scenario | null {
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
	most === null || scenario.replications <= most ? scenario : { ...scenario, replications: most };
