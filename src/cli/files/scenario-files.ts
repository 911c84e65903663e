import { basename, dirname, join } from "node:path";
import { checkScenario, type Load, type Problem } from "../../scenario/index.ts";
import type { Typed } from "../options/options.ts";
import { override, readOverrides } from "../options/overrides.ts";
import { refuse } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { readScenarioFile } from "./read-file.ts";
import { folderFor, type ReportKind } from "./report-folder.ts";

/** The file of a command that takes one; none or several are added to `problems`, and the first is looked at all the same. */
export function oneFile(
	command: string,
	files: readonly string[],
	expected: string,
	problems: Problem[],
): string | undefined {
	const several = `${files.length}: ${files.map(fileName).join(", ")}`;
	if (files.length !== 1) refuse(problems, command, expected, files.length === 0 ? "nothing" : several);
	return files[0];
}

/** What `check` finds in a file; of one that cannot be read, the problem alone. Every problem names a place. */
export function checkedFile<C extends { readonly problems: readonly Problem[] }>(
	file: string,
	check: (text: string) => C,
): Partial<C> & { readonly problems: readonly Problem[] } {
	const read = readScenarioFile(file);
	const checked: Partial<C> = "problem" in read ? {} : check(read.text);
	const problems = "problem" in read ? [read.problem] : (checked.problems ?? []);
	return { ...checked, problems: placedIn(fileName(file), problems) };
}

/** Problems with the file's name for those of the whole file, which have no path in it; `several`: before every path. */
export const placedIn = (name: string, problems: readonly Problem[], several = false): Problem[] =>
	problems.map((problem) => ({
		...problem,
		path: problem.path === "" ? name : several ? `${name}: ${problem.path}` : problem.path,
	}));

/** Reads the files that a ward's file names, beside it. */
export const beside =
	(file: string): Load =>
	(name) =>
		readScenarioFile(join(dirname(file), name));

/** The name of a scenario's file without its ending; null where that is no name for a folder. */
export function scenarioStem(file: string): string | null {
	const name = basename(file).replace(/\.(ya?ml|json)$/i, "");
	return ["", ".", "..", "-"].includes(name) ? null : name;
}

/**
 * What a command that runs one scenario has to work on: the scenario file with the options laid over it (null where there
 * are problems) and the folder of the report. Everything that is wrong with them is added to `problems`.
 */
export async function readInput(kind: ReportKind, files: readonly string[], typed: Typed, problems: Problem[]) {
	const overrides = readOverrides(typed, problems);
	const file = oneFile(kind, files, "one scenario file", problems);
	const checked = file === undefined ? null : checkedFile(file, checkScenario);
	problems.push(...(checked?.problems ?? []));
	const scenario = checked?.scenario ? override(checked.scenario, overrides, problems) : null;
	const stem = scenarioStem(file ?? "");
	// A comparison or a sweep says so, that a file may have a report of each.
	const usual = kind === "day" ? (stem ?? kind) : `${stem ?? "scenario"}-${kind}`;
	const folder = await folderFor(kind, typed, usual, scenario?.title ?? null, problems);
	return { scenario, overrides, folder };
}
