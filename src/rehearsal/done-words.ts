import type { Condition } from "../therapy/index.ts";
import type { Act } from "./acts.ts";

export const plainCondition = (condition: Condition): string =>
	condition.replaceAll("-", " ");

const done: { readonly [A in Act]: string } = {
	"free-suction-line": "The suction line lies free from end to end.",
	"free-fill-line": "The fill line lies free from end to end.",
	"change-canister": "A new canister is in place.",
	"change-source": "A new source hangs.",
	"new-port": "A new port with a new line is on, beside the old one.",
	"patch-edge": "The edge is dry and patched all round.",
	pause: "The therapy is stopped.",
	resume: "The therapy runs.",
	"new-dressing": "A new dressing is on.",
	"call-help": "Help has been called and is on its way.",
};

/**
 * What came of an act that was done: the same words whether it mended anything or not, the blood that a dressing change
 * lays open, and the alarms that stand.
 */
export function doneWords(
	act: Act,
	standing: readonly Condition[],
	before: {
		readonly wasStopped: boolean;
		readonly again: boolean;
		readonly blood: boolean;
	},
): string {
	if (act === "call-help")
		return before.again ? "Help has been called before." : done[act];
	const words =
		act === "pause" && before.wasStopped
			? "The therapy was not running."
			: before.blood
				? `${done[act]} There was fresh blood under the old one.`
				: done[act];
	return standing.length === 0
		? `${words} No alarm stands.`
		: `${words} Standing: ${standing.map(plainCondition).join(", ")}.`;
}
