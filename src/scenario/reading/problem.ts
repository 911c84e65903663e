/** Keys from the root of a file to a value in it. */
export type Keys = readonly (string | number)[];

/** `["dressings", 0, "regimen", "dwell"]` as `dressings[0].regimen.dwell`; a key that would be misread is quoted. */
export function pathText(keys: Keys): string {
	let text = "";
	for (const key of keys) {
		if (typeof key === "number") text += `[${key}]`;
		else if (/^[\p{L}_][\p{L}\p{N}_.-]*$/u.test(key)) text += text === "" ? key : `.${key}`;
		else text += `[${JSON.stringify(shorten(key))}]`;
	}
	return text;
}

/** What stands at `keys`; undefined where nothing does. */
export function valueAt(data: unknown, keys: Keys): unknown {
	let value = data;
	for (const key of keys) {
		if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
		value = (value as Record<string | number, unknown>)[key]; // an object that has the key
	}
	return value;
}

const longestShown = 60;

/** A text short enough to stand in a sentence. */
export function shorten(text: string, longest = longestShown): string {
	const points = [...text];
	return points.length <= longest ? text : `${points.slice(0, longest - 1).join("")}…`;
}

/** A value of the file in the words of a sentence. */
export function received(value: unknown): string {
	if (value === undefined || value === null) return "nothing";
	if (typeof value === "string") return JSON.stringify(shorten(value));
	if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
	if (typeof value === "object") return "a map";
	return shorten(String(value));
}

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

/** A problem that still knows its keys, so that its place in the text can be looked up. */
export interface Found extends Problem {
	readonly keys: Keys;
}

export function found(keys: Keys, expected: string, received: string, suggestion?: string): Found {
	return { keys, path: pathText(keys), expected, received, ...(suggestion === undefined ? {} : { suggestion }) };
}

/** One line: `dressings[0].regimen.dwell (line 9): expected a duration such as "5 min", received 5`. */
export function sentence(problem: Problem): string {
	const place = problem.line === undefined ? "" : ` (line ${problem.line})`;
	const hint = problem.suggestion === undefined ? "" : `; did you mean ${problem.suggestion}?`;
	const where = problem.path === "" ? "the file" : problem.path;
	return `${where}${place}: expected ${problem.expected}, received ${problem.received}${hint}`;
}

const mostTold = 200;

/** In the order of the file, each once, not more than anyone reads. */
export function inOrder(problems: readonly Problem[]): Problem[] {
	const place = ({ line = 0, column = 0 }: Problem) => line * 1e7 + column;
	const once = new Map(problems.map((problem) => [JSON.stringify(problem), problem]));
	const sorted = [...once.values()].sort((a, b) => place(a) - place(b));
	const told = sorted.slice(0, mostTold);
	const hidden = sorted.length - told.length;
	if (hidden > 0) told.push({ path: "", expected: "fewer problems", received: `${hidden} more of them` });
	return told;
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
