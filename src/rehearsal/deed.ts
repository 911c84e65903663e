import type { Act } from "./acts.ts";
import type { Bedside } from "./bedside.ts";

/** An act that was done, with its time. */
export interface Deed {
	readonly act: Act;
	readonly startMin: number;
	readonly endMin: number;
}

/** A moment at which hands do something to the bedside. */
export interface Step {
	readonly atMin: number;
	readonly take: () => void;
}

/** What a deed does, and when: its beginning, its last minutes, its end. */
export function stepsOf(deed: Deed, bedside: Bedside): Step[] {
	const { act, startMin, endMin } = deed;
	const last = bedside.lastMinutesOf(act);
	const begin = { atMin: startMin, take: () => bedside.beginAct(act) };
	const end = { atMin: endMin, take: () => void bedside.finishAct(act) };
	if (last === 0) return [begin, end];
	const late = {
		atMin: endMin - last,
		take: () => bedside.beginLastMinutes(act),
	};
	return [begin, late, end];
}

/** Does it, from now on: lets the time pass that it takes. */
export function doDeed(deed: Deed, bedside: Bedside): void {
	for (const { atMin, take } of stepsOf(deed, bedside)) {
		bedside.advance(atMin);
		take();
	}
}
