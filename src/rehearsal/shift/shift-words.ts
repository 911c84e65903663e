import { clockOf } from "../../therapy/index.ts";
import type { Act, CauseName, Condition } from "../../vocabulary/index.ts";
import { causeOf } from "../causes/causes.ts";
import { actFacts } from "../places/acts.ts";

const two = (value: number) => String(value).padStart(2, "0");

/** '14:20': the time on the wall at `atMin` of a shift, to the nearest minute, as charts and tables write it. */
export function clockText(atMin: number, startClockMin: number): string {
	const minute = clockOf(Math.round(startClockMin + atMin));
	return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

/** '14:20 to 14:22', or one time where both are written alike. */
export function clockSpan(fromMin: number, toMin: number, startClockMin: number): string {
	const [from, to] = [fromMin, toMin].map((at) => clockText(at, startClockMin));
	return from === to ? from : `${from} to ${to}`;
}

/** '31 s' would be too fine for a shift: '0.5 min', '12 min', '2 h 5 min'. */
export function minutesText(value: number): string {
	if (value < 10) return `${Math.round(value * 10) / 10} min`;
	const whole = Math.round(value);
	if (whole < 60) return `${whole} min`;
	const [hours, rest] = [Math.floor(whole / 60), whole % 60];
	return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

export const plain = (name: string): string => name.replaceAll("-", " ");

/** What came of an act: the same words whether it mended anything or not, what it laid open, and the alarms that stand. */
export function doneWords(
	act: Act,
	standing: readonly Condition[],
	before: { readonly wasStopped: boolean; readonly again: boolean; readonly found: readonly CauseName[] },
): string {
	const { done } = actFacts[act];
	if (act === "call-help") return before.again ? "Help has been called before." : done;
	const laidOpen = before.found.flatMap((cause) => causeOf(cause).laidOpen ?? []);
	const words = act === "pause" && before.wasStopped ? "The therapy was not running." : [done, ...laidOpen].join(" ");
	return standing.length === 0 ? `${words} No alarm stands.` : `${words} Standing: ${standing.map(plain).join(", ")}.`;
}
