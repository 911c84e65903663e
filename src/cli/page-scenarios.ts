import {
	checkScenario,
	checkWard,
	isWard,
	type Problem,
} from "../scenario/index.ts";
import { placedIn } from "./check-file.ts";
import { fileName } from "./quoted.ts";
import { readScenarioFile } from "./read-file.ts";
import { beside } from "./ward-file.ts";

/** A scenario file that the workbench is to open with. */
export interface PageScenario {
	readonly file: string;
	readonly kind: "day" | "ward";
	/** null where there are problems. */
	readonly title: string | null;
	readonly text: string;
	/** Texts of the files that a ward takes its dressings from, by the name that stands in it. */
	readonly beside: { readonly [name: string]: string };
	readonly problems: readonly Problem[];
}

/** Reads and checks a day's or a ward's file. `several`: problems say which of several files they are of. */
export function readPageFile(file: string, several: boolean): PageScenario {
	const read = readScenarioFile(file);
	const text = "problem" in read ? "" : read.text;
	const kind = isWard(text) ? "ward" : "day";
	const named = new Map<string, string>();
	const placed = (problems: readonly Problem[]) =>
		placedIn(fileName(file), problems).map((problem) =>
			several && problem.path !== fileName(file)
				? { ...problem, path: `${fileName(file)}: ${problem.path}` }
				: problem,
		);
	if ("problem" in read)
		return {
			file,
			kind,
			title: null,
			text,
			beside: {},
			problems: placed([read.problem]),
		};
	const load = beside(file);
	const { title, problems } =
		kind === "ward"
			? titled(
					checkWard(text, (name) => {
						const other = load(name);
						if ("text" in other) named.set(name, other.text);
						return other;
					}),
				)
			: titled(checkScenario(text));
	return {
		file,
		kind,
		title,
		text,
		beside: Object.fromEntries(named),
		problems: placed(problems),
	};
}

const titled = (checked: {
	readonly scenario?: { readonly title: string } | null;
	readonly ward?: { readonly title: string } | null;
	readonly problems: readonly Problem[];
}) => ({
	title: checked.scenario?.title ?? checked.ward?.title ?? null,
	problems: checked.problems,
});
