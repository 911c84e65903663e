import type * as z from "zod";
import { crossDay, dayFile, resolveDay } from "./day.ts";
import { expectedEvents, maxExpectedEvents } from "./meaning/events.ts";
import type { Scenario } from "./meaning/scenario.ts";
import { notesOf } from "./notes.ts";
import { problemsOf } from "./reading/issues.ts";
import { type Found, found, inOrder, type Problem, UnusableInput } from "./reading/problem.ts";
import { asMap } from "./reading/raw.ts";
import { type Format, readTree, type Tree } from "./reading/tree.ts";

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

/** Reads a scenario; throws UnusableInput with every problem at once, and nothing else. */
export function readScenario(text: string, options: ReadOptions = {}): Scenario {
	const { scenario, problems } = checkScenario(text, options);
	if (scenario === null) throw new UnusableInput(problems);
	return scenario;
}

/** Reads a scenario or says everything that is wrong with it, in the order of the file. Never throws. */
export function checkScenario(text: string, options: ReadOptions = {}): Checked {
	return checkData(text, options).checked;
}

/** The same, with the raw data of the file. */
export function checkData(
	text: string,
	options: ReadOptions = {},
): { readonly checked: Checked; readonly data: unknown } {
	const tree = readTree(text, options.format);
	const { data } = tree;
	const refused = (problems: readonly Problem[]) => ({
		checked: { scenario: null, problems: inOrder(problems), notes: [] },
		data,
	});
	if (data === undefined) return refused(tree.problems);
	if (isWardData(data)) {
		const ward = found(["ward"], "a scenario of dressings", "a ward, which the command supply simulates");
		return refused([tree.placed(ward)]);
	}
	const { file, problems } = sound(dayFile, data, crossDay(data), tree);
	if (file === null) return refused(problems);
	const scenario = resolveDay(file, data);
	const help = "a shorter horizon, longer cycles or fewer dressings help";
	const endless = tooMany(expectedEvents(scenario), maxExpectedEvents, "scenario", help);
	if (endless !== null) return refused([tree.placed(endless)]);
	return { checked: { scenario, problems: [], notes: notesOf(scenario) }, data };
}

/** Whether the data are those of a ward over weeks, and not of a day. */
export const isWardData = (data: unknown): boolean =>
	asMap(data).ward !== undefined && asMap(data).dressings === undefined;

/** What a schema makes of the data; null where there is a problem: of the text, of a value, or of values that are `joined`. */
export function sound<T>(
	schema: z.ZodType<T>,
	data: unknown,
	crossed: readonly Found[],
	tree: Tree,
): { readonly file: T | null; readonly problems: readonly Problem[] } {
	const parsed = schema.safeParse(data);
	const faults = [...problemsOf(parsed.error?.issues ?? [], data), ...crossed];
	const problems = [...tree.problems, ...faults.map(tree.placed)];
	return { file: parsed.success && problems.length === 0 ? parsed.data : null, problems };
}

/** The problem of a file that would never come to an end. */
export const tooMany = (events: number, most: number, what: string, help: string): Found | null =>
	events <= most
		? null
		: found(
				["horizon"],
				`a ${what} of at most ${most} events a replication`,
				`one of about ${events.toPrecision(2)} (${help})`,
			);
