import { checkScenario, type Problem } from "../../scenario/index.ts";
import type { Typed } from "../options/options.ts";
import { override, readOverrides } from "../options/overrides.ts";
import { folderFor, type ReportKind } from "./report-folder.ts";
import { checkedFile, oneFile, scenarioStem } from "./scenario-files.ts";

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
