import type { Problem } from "../scenario/index.ts";
import { type Act, acts, isAct } from "./acts.ts";
import { isPlace, type Place, places } from "./places.ts";
import type { Answer, Rehearsal } from "./rehearsal.ts";

/** One line of a script: what a trainee does next. */
export type ScriptStep =
	| { readonly do: "look"; readonly place: Place }
	| { readonly do: "act"; readonly act: Act }
	| { readonly do: "wait"; readonly minutes: number }
	| { readonly do: "next" }
	| { readonly do: "end" };

const longestWaitMin = 1440;
const manner =
	'a line such as "look suction-line", "act free-suction-line", "wait 10", "next" or "end"';

/** Reads a line; null for an empty one or a remark. */
export function readStep(
	line: string,
): ScriptStep | { readonly problem: Omit<Problem, "path"> } | null {
	const words = line
		.replace(/#.*$/u, "")
		.trim()
		.split(/\s+/u)
		.filter((word) => word !== "");
	const [verb, object = ""] = words;
	if (verb === undefined) return null;
	const problem = (expected: string, received = line.trim()) => ({
		problem: { expected, received: JSON.stringify(received.slice(0, 80)) },
	});
	if (words.length > 2) return problem(manner);
	switch (verb) {
		case "look":
			return isPlace(object)
				? { do: "look", place: object }
				: problem(`look and one of ${places.join(", ")}`);
		case "act":
			return isAct(object)
				? { do: "act", act: object }
				: problem(`act and one of ${acts.join(", ")}`);
		case "wait": {
			const minutes = /^\d+(?:\.\d+)?$/u.test(object) ? Number(object) : -1;
			return minutes >= 0 && minutes <= longestWaitMin
				? { do: "wait", minutes }
				: problem(`wait and minutes from 0 to ${longestWaitMin}`);
		}
		case "next":
		case "end":
			return words.length === 1 ? { do: verb } : problem(manner);
		default:
			return problem(manner);
	}
}

/** Reads a script, one step a line; everything that is wrong with it at once. */
export function readScript(text: string): {
	readonly steps: readonly ScriptStep[];
	readonly problems: readonly Problem[];
} {
	const steps: ScriptStep[] = [];
	const problems: Problem[] = [];
	text.split(/\r?\n/u).forEach((line, index) => {
		const read = readStep(line);
		if (read === null) return;
		if ("problem" in read)
			problems.push({ path: "the script", ...read.problem, line: index + 1 });
		else steps.push(read);
	});
	return { steps, problems };
}

/** A step as it is written in a script. */
export function stepText(step: ScriptStep): string {
	switch (step.do) {
		case "look":
			return `look ${step.place}`;
		case "act":
			return `act ${step.act}`;
		case "wait":
			return `wait ${step.minutes}`;
		default:
			return step.do;
	}
}

/** Does a step; null for the end. */
export function takeStep(
	rehearsal: Rehearsal,
	step: ScriptStep,
): Answer | null {
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
