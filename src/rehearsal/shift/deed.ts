import type { Deed } from "../../results/index.ts";
import { actFacts } from "../places/acts.ts";
import type { Bedside } from "./bedside.ts";

/** What a deed does, and when: its beginning, its last minutes, for which the pump stands still, its end. */
export function stepsOf({ act, startMin, endMin }: Deed, bedside: Bedside): { atMin: number; take(): void }[] {
	const { begin, last } = actFacts[act];
	const lastMin = last?.minutes(bedside.process.constants) ?? 0;
	return [
		{ atMin: startMin, take: () => begin?.(bedside) },
		...(lastMin > 0 ? [{ atMin: endMin - lastMin, take: () => last?.begin(bedside.process) }] : []),
		{ atMin: endMin, take: () => bedside.finishAct(act) },
	];
}

/** Does it, from now on: lets the time pass that it takes. */
export function doDeed(deed: Deed, bedside: Bedside): void {
	for (const { atMin, take } of stepsOf(deed, bedside)) {
		bedside.advance(atMin);
		take();
	}
}
