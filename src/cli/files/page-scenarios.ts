import { checkScenario, checkWard, isWard, type Load } from "../../scenario/index.ts";
import { fileName } from "../terminal/quoted.ts";
import { readScenarioFile } from "./read-file.ts";
import { beside, placedIn } from "./scenario-files.ts";

/**
 * Reads and checks a day's or a ward's file that the workbench is to open with; the title is null where there are problems.
 * `beside`: texts of the files that a ward takes its dressings from, by the name that stands in it. `several`: problems say
 * which of several files they are of.
 */
export function readPageFile(file: string, several: boolean) {
	const read = readScenarioFile(file);
	const text = "problem" in read ? "" : read.text;
	const named = new Map<string, string>();
	const load: Load = (name) => {
		const other = beside(file)(name);
		if ("text" in other) named.set(name, other.text);
		return other;
	};
	const { title, problems } = "problem" in read ? { title: null, problems: [read.problem] } : titled(text, load);
	return {
		file,
		kind: isWard(text) ? "ward" : "day",
		title,
		text,
		beside: Object.fromEntries(named),
		problems: placedIn(fileName(file), problems, several),
	};
}

function titled(text: string, load: Load) {
	if (!isWard(text)) {
		const { scenario, problems } = checkScenario(text);
		return { title: scenario?.title ?? null, problems };
	}
	const { ward, problems } = checkWard(text, load);
	return { title: ward?.title ?? null, problems };
}
