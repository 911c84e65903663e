import type { Problem } from "../scenario/index.ts";
import { fileName } from "./quoted.ts";

/** The file of a command that takes one; none or several are added to `problems`, and the first is looked at all the same. */
export function oneFile(
	command: string,
	files: readonly string[],
	expected: string,
	problems: Problem[],
): string | undefined {
	const [file] = files;
	if (files.length !== 1)
		problems.push({
			path: command,
			expected,
			received:
				file === undefined
					? "nothing"
					: `${files.length}: ${files.map(fileName).join(", ")}`,
		});
	return file;
}
