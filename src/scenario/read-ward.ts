import { expandKinds, type Load } from "./expand-kinds.ts";
import { expectedWardEvents, maxWardEvents } from "./meaning/events.ts";
import type { WardScenario } from "./meaning/ward.ts";
import { wardNotes } from "./notes.ts";
import { isWardData, sound, tooMany } from "./read.ts";
import { found, inOrder, type Problem, UnusableInput } from "./reading/problem.ts";
import { asMap } from "./reading/raw.ts";
import { readTree } from "./reading/tree.ts";
import { crossWard, resolveWard, wardFile } from "./ward.ts";

/** What is laid over a file before it is read, as it would stand in it. */
export interface WardOverrides {
	readonly seed?: string | undefined;
	readonly replications?: number | undefined;
	readonly horizon?: string | undefined;
	readonly chance?: "on" | "off" | undefined;
}

export interface CheckedWard {
	/** null where there are problems. */
	readonly ward: WardScenario | null;
	readonly problems: readonly Problem[];
	readonly notes: readonly string[];
	/** The file as data, with every dressing of another file written out: reads to the same ward without that file. */
	readonly data: unknown;
}

/** Whether a text is the file of a ward. Never throws. */
export const isWard = (text: string): boolean => isWardData(readTree(text).data);

const noFiles: Load = () => ({ problem: { path: "", expected: "no other file here", received: "one" } });

/** Reads a ward; throws UnusableInput with every problem at once. */
export function readWard(text: string, load: Load = noFiles, overrides: WardOverrides = {}): WardScenario {
	const { ward, problems } = checkWard(text, load, overrides);
	if (ward === null) throw new UnusableInput(problems);
	return ward;
}

function refused(problems: readonly Problem[]): CheckedWard {
	return { ward: null, problems: inOrder(problems), notes: [], data: undefined };
}

/** Reads the file of a ward or says everything that is wrong with it. Never throws. */
export function checkWard(text: string, load: Load = noFiles, overrides: WardOverrides = {}): CheckedWard {
	const tree = readTree(text);
	if (tree.data === undefined) return refused(tree.problems);
	if (!isWardData(tree.data)) {
		const both = asMap(tree.data).ward !== undefined;
		const fault = found(
			[both ? "dressings" : "ward"],
			"a ward, and no dressings beside it",
			both ? "both" : "a scenario without one, which the command day simulates",
		);
		return refused([...tree.problems, tree.placed(fault)]);
	}
	const given = Object.entries(overrides).filter(([, value]) => value !== undefined);
	const { data, problems: unread } = expandKinds({ ...asMap(tree.data), ...Object.fromEntries(given) }, load);
	const sofar = { ...tree, problems: [...tree.problems, ...unread.map(tree.placed)] };
	const { file, problems } = sound(wardFile, data, crossWard(data), sofar);
	if (file === null) return refused(problems);
	const ward = resolveWard(file, data);
	const endless = tooMany(expectedWardEvents(ward), maxWardEvents, "ward", "fewer units or weeks help");
	if (endless !== null) return refused([tree.placed(endless)]);
	return { ward, problems: [], notes: wardNotes(ward, data), data };
}
