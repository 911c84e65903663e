import { crossProblems } from "./cross.ts";
import { expectedEvents, maxExpectedEvents } from "./events.ts";
import { type Found, found, problemsOf } from "./issues.ts";
import { asMap } from "./lenient.ts";
import { notesOf } from "./notes.ts";
import { type Problem, UnusableInput } from "./problem.ts";
import { resolve } from "./resolve.ts";
import type { Scenario } from "./scenario.ts";
import { scenarioSchema } from "./schema.ts";
import { checkText } from "./text.ts";
import { type Format, readTree, type Tree } from "./tree.ts";

export interface ReadOptions {
	/** By default JSON where the text begins with a brace, else YAML. */
	readonly format?: Format;
}

export interface Checked {
	/** null where there are problems. */
	readonly scenario: Scenario | null;
	readonly problems: readonly Problem[];
	/** What is allowed but probably not meant, one sentence each. */
	readonly notes: readonly string[];
}

const mostProblems = 200;

/** Reads a scenario; throws UnusableInput with every problem at once, and nothing else. */
export function readScenario(
	text: string,
	options: ReadOptions = {},
): Scenario {
	const { scenario, problems } = checkScenario(text, options);
	if (scenario === null) throw new UnusableInput(problems);
	return scenario;
}

/** Reads a scenario or says everything that is wrong with it, in the order of the file. Never throws. */
export function checkScenario(
	text: string,
	options: ReadOptions = {},
): Checked {
	return checkData(text, options).checked;
}

/** The same, with the raw data of the file. */
export function checkData(
	raw: string,
	options: ReadOptions = {},
): { readonly checked: Checked; readonly data: unknown } {
	const { text, problems } = checkText(raw);
	if (problems.length > 0)
		return { checked: refused(problems), data: undefined };
	const tree = readTree(
		text,
		options.format ?? (/^\s*\{/u.test(text) ? "json" : "yaml"),
	);
	if (tree.data === undefined)
		return { checked: refused(tree.problems), data: undefined };
	if (isWardData(tree.data)) {
		const ward = found(
			["ward"],
			"a scenario of dressings",
			"a ward, which the command supply simulates",
		);
		return { checked: refused([placed(ward, tree)]), data: tree.data };
	}
	const parsed = scenarioSchema.safeParse(tree.data);
	const all = [
		...tree.problems,
		...problemsOf(parsed.error?.issues ?? [], tree.data)
			.concat(crossProblems(tree.data))
			.map((problem) => placed(problem, tree)),
	];
	if (!parsed.success || all.length > 0)
		return { checked: refused(all), data: tree.data };
	const scenario = resolve(parsed.data, tree.data);
	const events = expectedEvents(scenario);
	if (!(events <= maxExpectedEvents)) {
		const endless = found(
			["horizon"],
			`a scenario of at most ${maxExpectedEvents} events a replication`,
			`one of about ${events.toPrecision(2)} (a shorter horizon, longer cycles or fewer dressings help)`,
		);
		return { checked: refused([placed(endless, tree)]), data: tree.data };
	}
	return {
		checked: { scenario, problems: [], notes: notesOf(scenario) },
		data: tree.data,
	};
}

/** Whether the data are those of a ward over weeks, and not of a day. */
export const isWardData = (data: unknown): boolean =>
	asMap(data).ward !== undefined && asMap(data).dressings === undefined;

/** A problem with its place in the text. */
export function placed({ keys, ...problem }: Found, tree: Tree): Problem {
	return { ...problem, ...tree.placeOf(keys) };
}

/** In the order of the file, each once, not more than anyone reads. */
export function refused(problems: readonly Problem[]): Checked {
	const order = ({ line = 0, column = 0 }: Problem) => line * 1e7 + column;
	const once = new Map(
		problems.map((problem) => [JSON.stringify(problem), problem]),
	);
	const sorted = [...once.values()].sort((a, b) => order(a) - order(b));
	const shown = sorted.slice(0, mostProblems);
	const hidden = sorted.length - shown.length;
	if (hidden > 0)
		shown.push({
			path: "",
			expected: "fewer problems",
			received: `${hidden} more of them`,
		});
	return { scenario: null, problems: shown, notes: [] };
}
