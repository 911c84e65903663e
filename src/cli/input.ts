import { join } from "node:path";
import type { Problem, Scenario } from "../scenario/index.ts";
import { checkFile } from "./check-file.ts";
import { oneFile } from "./one-file.ts";
import {
	type Overrides,
	override,
	readOptions,
	type TypedOptions,
} from "./options.ts";
import { checkFolder, type ReportKind } from "./report-folder.ts";
import { scenarioStem } from "./scenario-stem.ts";
import { uninterrupted } from "./uninterrupted.ts";

/** What a command that runs one scenario has to work on. */
export interface Input {
	/** null where there are problems. */
	readonly scenario: Scenario | null;
	readonly overrides: Overrides;
	/** Where the report goes; null where none is written. */
	readonly folder: string | null;
}

/** Reads the scenario file with the options laid over it and looks at the folder; everything that is wrong is added to `problems`. */
export async function readInput(
	kind: ReportKind,
	files: readonly string[],
	typed: TypedOptions,
	problems: Problem[],
): Promise<Input> {
	const overrides = readOptions(typed, problems);
	const file = oneFile(kind, files, "one scenario file", problems);
	const checked = file === undefined ? null : checkFile(file);
	problems.push(...(checked?.problems ?? []));
	const scenario =
		checked === null || checked.scenario === null
			? null
			: override(checked.scenario, overrides, problems);
	const folder =
		typed.out ??
		(typed.json === true ? null : join("out", nameOf(file ?? "", kind)));
	if (folder !== null)
		await uninterrupted(() =>
			checkFolder(
				folder,
				kind,
				scenario?.title ?? null,
				typed.force === true,
				problems,
			),
		);
	return { scenario, overrides, folder };
}

/** The name of a report's folder: the file's own without its ending; a comparison or a sweep says so, so that a file may have one of each. */
function nameOf(file: string, kind: ReportKind): string {
	const stem = scenarioStem(file);
	return kind === "day" ? (stem ?? kind) : `${stem ?? "scenario"}-${kind}`;
}
