import type { Problem } from "../../scenario/index.ts";
import { checkScenario, checkWard, fullScenario, isWard, sentence, UnusableInput } from "../../scenario/index.ts";
import { readScenarioFile } from "../files/read-file.ts";
import { beside, placedIn } from "../files/scenario-files.ts";
import type { Typed } from "../options/options.ts";
import { type ExitStatus, refuse } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { type CheckedFile, checkJson } from "./check-json.ts";

/**
 * Says of every file whether it is a sound scenario: every problem at once. `--full` prints it with all defaults filled
 * in. `problems` are those of the command line; where there are any, throws UnusableInput with those of the files too.
 */
export function check(files: readonly string[], options: Typed, problems: Problem[]): ExitStatus {
	checkWords(files, options, problems);
	const results = files.map(checkFile);
	if (problems.length > 0) throw new UnusableInput([...problems, ...results.flatMap(named)]);
	if (options.json === true) process.stdout.write(checkJson(results));
	else for (const result of results) say(result, options);
	return results.every(({ sound }) => sound) ? 0 : 2;
}

interface Result extends CheckedFile {
	readonly text: string;
}

function checkWords(files: readonly string[], { full, json }: Typed, problems: Problem[]): void {
	if (files.length === 0) refuse(problems, "check", "scenario files", "nothing");
	if (full === true && files.length > 1) refuse(problems, "--full", "one scenario file", `${files.length} of them`);
	if (full === true && json === true) refuse(problems, "--full", "no --json beside it", "both");
}

function checkFile(file: string): Result {
	const read = readScenarioFile(file);
	if ("problem" in read) return { file, sound: false, problems: [read.problem], notes: [], text: "" };
	const { problems, notes } = isWard(read.text) ? checkWard(read.text, beside(file)) : checkScenario(read.text);
	return { file, sound: problems.length === 0, problems, notes, text: read.text };
}

/** The problems of a file with its name before their paths. */
const named = ({ file, problems }: CheckedFile): Problem[] => placedIn(fileName(file), problems, true);

function say(result: Result, options: Typed): void {
	for (const problem of named(result)) process.stderr.write(`${sentence(problem)}\n`);
	if (!result.sound) return;
	if (options.full === true) process.stdout.write(fullScenario(result.text, { load: beside(result.file) }));
	else if (options.quiet !== true) process.stdout.write(`${fileName(result.file)}: sound\n`);
	if (options.quiet !== true)
		for (const note of result.notes) process.stderr.write(`${fileName(result.file)}: note: ${note}\n`);
}
