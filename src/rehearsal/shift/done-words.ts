import type { Act, CauseName, Condition } from "../../vocabulary/index.ts";
import { actFacts } from "../places/acts.ts";
import { causeOf } from "./cause-of.ts";

export const plainCondition = (condition: Condition): string => condition.replaceAll("-", " ");

/**
 * What came of an act that was done: the same words whether it mended anything or not, what a dressing change lays open,
 * and the alarms that stand.
 */
export function doneWords(
	act: Act,
	standing: readonly Condition[],
	before: { readonly wasStopped: boolean; readonly again: boolean; readonly found: readonly CauseName[] },
): string {
	const { done } = actFacts[act];
	if (act === "call-help") return before.again ? "Help has been called before." : done;
	const laidOpen = before.found.flatMap((cause) => causeOf(cause).laidOpen ?? []);
	const words = act === "pause" && before.wasStopped ? "The therapy was not running." : [done, ...laidOpen].join(" ");
	return standing.length === 0
		? `${words} No alarm stands.`
		: `${words} Standing: ${standing.map(plainCondition).join(", ")}.`;
}
