import { basename, join } from "node:path";
import {
	checkScenario,
	type Problem,
	type Scenario,
} from "../scenario/index.ts";
import {
	type Overrides,
	override,
	readOptions,
	type TypedOptions,
} from "./options.ts";
import { fileName } from "./quoted.ts";
import { readScenarioFile } from "./read-file.ts";
import { checkFolder, type ReportKind } from "./report-folder.ts";
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
	const [file] = files;
	if (files.length !== 1)
		problems.push({
			path: kind,
			expected: "one scenario file",
			received:
				file === undefined
					? "nothing"
					: `${files.length}: ${files.map(fileName).join(", ")}`,
		});
	const scenario =
		file === undefined ? null : readScenario(file, overrides, problems);
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

/** The scenario of a file with the options laid over it; null where there are problems, which are added. */
function readScenario(
	file: string,
	overrides: Overrides,
	problems: Problem[],
): Scenario | null {
	const read = readScenarioFile(file);
	const checked =
		"problem" in read
			? { scenario: null, problems: [read.problem] }
			: checkScenario(read.text);
	problems.push(
		...checked.problems.map((problem) =>
			problem.path === "" ? { ...problem, path: fileName(file) } : problem,
		),
	);
	return checked.scenario === null
		? null
		: override(checked.scenario, overrides, problems);
}

/** The name of a report's folder: the file's own without its ending; a comparison or a sweep says so, so that a file may have one of each. */
function nameOf(file: string, kind: ReportKind): string {
	const name = basename(file).replace(/\.(ya?ml|json)$/i, "");
	const plain = ["", ".", "..", "-"].includes(name) ? "scenario" : name;
	if (kind === "day") return plain === "scenario" ? "day" : plain;
	return `${plain}-${kind}`;
}
