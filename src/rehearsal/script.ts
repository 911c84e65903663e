import type { Problem } from "../scenario/index.ts";
import { type Act, acts, type Place, places } from "../vocabulary/index.ts";
import { type Answer, longestWaitMin, type Rehearsal } from "./rehearsal.ts";

/** One line of a script: what a trainee does next. */
export type ScriptStep =
	| { readonly do: "look"; readonly place: Place }
	| { readonly do: "act"; readonly act: Act }
	| { readonly do: "wait"; readonly minutes: number }
	| { readonly do: "next" }
	| { readonly do: "end" };

const manner = 'a line such as "look suction-line", "act free-suction-line", "wait 10", "next" or "end"';

/** Reads a line; null for an empty one or a remark. */
export function readStep(line: string): ScriptStep | { readonly problem: Omit<Problem, "path"> } | null {
	const said = line.replace(/#.*$/u, "").trim();
	if (said === "") return null;
	const [verb, object = "", ...more] = said.split(/\s+/u);
	const [place, act] = [places.find((name) => name === object), acts.find((name) => name === object)];
	const minutes = /^\d+(?:\.\d+)?$/u.test(object) ? Number(object) : Number.POSITIVE_INFINITY;
	const problem = (expected: string) => ({ problem: { expected, received: JSON.stringify(line.trim().slice(0, 80)) } });
	if (more.length > 0) return problem(manner);
	switch (verb) {
		case "look":
			return place === undefined ? problem(`look and one of ${places.join(", ")}`) : { do: verb, place };
		case "act":
			return act === undefined ? problem(`act and one of ${acts.join(", ")}`) : { do: verb, act };
		case "wait":
			return minutes <= longestWaitMin
				? { do: verb, minutes }
				: problem(`wait and minutes from 0 to ${longestWaitMin}`);
		case "next":
		case "end":
			return object === "" ? { do: verb } : problem(manner);
		default:
			return problem(manner);
	}
}

/** Reads a script, one step a line; everything that is wrong with it at once. */
export function readScript(text: string): { steps: readonly ScriptStep[]; problems: readonly Problem[] } {
	const steps: ScriptStep[] = [];
	const problems: Problem[] = [];
	text.split(/\r?\n/u).forEach((line, index) => {
		const read = readStep(line);
		if (read === null) return;
		if ("problem" in read) problems.push({ path: "the script", ...read.problem, line: index + 1 });
		else steps.push(read);
	});
	return { steps, problems };
}

/** A step as it is written in a script: its values, one after the other. */
export const stepText = (step: ScriptStep): string => Object.values(step).join(" ");

/** Does a step; null for the end. */
export function takeStep(rehearsal: Rehearsal, step: ScriptStep): Answer | null {
	switch (step.do) {
		case "look":
			return rehearsal.look(step.place);
		case "act":
			return rehearsal.act(step.act);
		case "wait":
			return rehearsal.wait(step.minutes);
		case "next":
			return rehearsal.next();
		case "end":
			return null;
	}
}
