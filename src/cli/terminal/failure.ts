import { type Problem, sentence, UnusableInput } from "../../scenario/reading/problem.ts";

/** Exit status: 0 done; 1 it could not finish; 2 the input, an option or `--out` is unusable. */
export type ExitStatus = 0 | 1 | 2;

/** The program could not finish for a reason outside the input: a full disk, a folder that vanished. */
export class CouldNotFinish extends Error {
	override readonly name = "CouldNotFinish";
}

/** Adds to `problems` that something else was expected at `path`; `suggestion`: what was probably meant. */
export function refuse(
	problems: Problem[],
	path: string,
	expected: string,
	received: string,
	suggestion?: string,
): void {
	problems.push({ path, expected, received, suggestion });
}

const reasons: Readonly<Record<string, string>> = {
	ENOSPC: "there is no space left on the disk",
	EDQUOT: "the disk quota is used up",
	EACCES: "that is not allowed",
	EPERM: "that is not allowed",
	EROFS: "the disk is read-only",
	ENOENT: "it is not there",
	EISDIR: "it is a folder, not a file",
	ENOTDIR: "part of the path is a file, not a folder",
	ENXIO: "nothing is behind it",
	EMFILE: "too many files are open",
	EIO: "the disk reports an error",
	EBUSY: "it is in use",
	ENAMETOOLONG: "the name is too long",
	ELOOP: "it is a link that leads to itself",
};

/** The system's short name of a fault; "" where it gave none. */
export const codeOf = (error: unknown): string => (error instanceof Error && "code" in error ? String(error.code) : "");

/** What the system said, in words; its own words where it is not in the list. */
export function reasonOf(error: unknown): string {
	return reasons[codeOf(error)] ?? (error instanceof Error ? error.message : String(error));
}

/** Says on standard error what went wrong, one problem a line and no stack trace, and gives the exit status. */
export function explain(error: unknown): ExitStatus {
	const say = (text: string) => process.stderr.write(`slackwater: ${text}\n`);
	if (error instanceof UnusableInput) {
		for (const problem of error.problems) say(sentence(problem));
		return 2;
	}
	say(error instanceof CouldNotFinish ? error.message : `a fault of the program: ${reasonOf(error)}`);
	return 1;
}
