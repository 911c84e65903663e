import {
	checkScenario,
	type Problem,
	type Scenario,
} from "../scenario/index.ts";
import { fileName } from "./quoted.ts";
import { readScenarioFile } from "./read-file.ts";

/** A scenario's file, read and checked: its text and what it means, null where that is not to be had; every problem names a place. */
export function checkFile(file: string): {
	readonly text: string | null;
	readonly scenario: Scenario | null;
	readonly problems: readonly Problem[];
} {
	const read = readScenarioFile(file);
	if ("problem" in read)
		return {
			text: null,
			scenario: null,
			problems: placedIn(fileName(file), [read.problem]),
		};
	const { scenario, problems } = checkScenario(read.text);
	return {
		text: read.text,
		scenario,
		problems: placedIn(fileName(file), problems),
	};
}

/** Problems of a whole file, which have no path in it, named after it. */
export const placedIn = (
	name: string,
	problems: readonly Problem[],
): Problem[] =>
	problems.map((problem) =>
		problem.path === "" ? { ...problem, path: name } : problem,
	);
