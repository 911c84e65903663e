import { dirname, join } from "node:path";
import {
	type CheckedWard,
	checkWard,
	type Load,
	type WardOverrides,
} from "../scenario/index.ts";
import { placedIn } from "./check-file.ts";
import { fileName } from "./quoted.ts";
import { readScenarioFile } from "./read-file.ts";

/** Reads the files that a ward's file names, beside it. */
export const beside =
	(file: string): Load =>
	(name) =>
		readScenarioFile(join(dirname(file), name));

/** A ward's file, read with the options laid over it. */
export function readWardFile(
	file: string,
	overrides: WardOverrides,
): CheckedWard {
	const read = readScenarioFile(file);
	const checked =
		"problem" in read
			? { ward: null, problems: [read.problem], notes: [], data: undefined }
			: checkWard(read.text, beside(file), overrides);
	return {
		...checked,
		problems: placedIn(fileName(file), checked.problems),
	};
}
