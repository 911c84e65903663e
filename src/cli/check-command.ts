import {
	checkScenario,
	fullScenario,
	type Problem,
	sentence,
} from "../scenario/index.ts";
import type { ExitStatus } from "./failure.ts";
import { readScenarioFile } from "./read-file.ts";

export interface CheckOptions {
	readonly full?: boolean;
	readonly json?: boolean;
	readonly quiet?: boolean;
}

/** Says of every file whether it is a sound scenario: every problem at once. `--full` prints it with all defaults filled in. */
export function check(
	files: readonly string[],
	options: CheckOptions,
): ExitStatus {
	const results = files.map((file) => ({ file, ...checkFile(file) }));
	if (options.json === true) {
		const printed = results.map(({ file, problems, notes }) => ({
			file,
			sound: problems.length === 0,
			problems,
			notes,
		}));
		process.stdout.write(
			`${JSON.stringify({ format: "slackwater/check@1", files: printed }, null, 2)}\n`,
		);
	} else {
		for (const { file, problems, notes, text } of results) {
			for (const problem of problems)
				process.stderr.write(`${file}: ${sentence(problem)}\n`);
			if (problems.length > 0) continue;
			if (options.full === true) process.stdout.write(fullScenario(text));
			else if (options.quiet !== true) process.stdout.write(`${file}: sound\n`);
			if (options.quiet !== true)
				for (const note of notes)
					process.stderr.write(`${file}: note: ${note}\n`);
		}
	}
	return results.some(({ problems }) => problems.length > 0) ? 2 : 0;
}

function checkFile(file: string): {
	readonly text: string;
	readonly problems: readonly Problem[];
	readonly notes: readonly string[];
} {
	const read = readScenarioFile(file);
	if ("problem" in read)
		return { text: "", problems: [read.problem], notes: [] };
	return { text: read.text, ...checkScenario(read.text) };
}
