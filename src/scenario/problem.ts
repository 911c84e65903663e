/** What is wrong with an input: where, what was expected, what came. Sentences are made from it, once, by `sentence`. */
export interface Problem {
	/** Path in the file, e.g. `dressings[0].regimen.dwell`; "" for the file as a whole. */
	readonly path: string;
	readonly expected: string;
	readonly received: string;
	/** A near miss worth offering, e.g. the nearest key. */
	readonly suggestion?: string;
	/** 1-based place in the text, where known. */
	readonly line?: number;
	readonly column?: number;
}

/** One line: `dressings[0].regimen.dwell (line 9): expected a duration such as "5 min", received 5`. */
export function sentence(problem: Problem): string {
	const place = problem.line === undefined ? "" : ` (line ${problem.line})`;
	const hint =
		problem.suggestion === undefined
			? ""
			: `; did you mean ${problem.suggestion}?`;
	const where = problem.path === "" ? "the file" : problem.path;
	return `${where}${place}: expected ${problem.expected}, received ${problem.received}${hint}`;
}

/** Thrown where an input cannot be used; carries every problem found, not only the first. */
export class UnusableInput extends Error {
	readonly problems: readonly Problem[];
	constructor(problems: readonly Problem[]) {
		super(problems.map(sentence).join("\n"));
		this.name = "UnusableInput";
		this.problems = problems;
	}
}
