import type { Load } from "../../scenario/index.ts";
import { isWardData } from "../../scenario/read.ts";
import { asList, asMap } from "../../scenario/reading/raw.ts";
import type { Beside, Sheet } from "./history.ts";
import { dataOf } from "./scenario-text.ts";

/** A file that was dropped or opened. */
export interface OpenedFile {
	readonly name: string;
	readonly text: string;
}

/** Names of the files that the kinds of a ward take their dressings from, each once, as they stand in its data. */
export function filesNamed(data: unknown): string[] {
	const { kinds } = asMap(asMap(data).ward);
	const names = asList(kinds)
		.map((kind) => asMap(kind).file)
		.filter((file) => typeof file === "string");
	return [...new Set(names)];
}

/** A name without its folders: a browser tells no more of a file. */
const baseOf = (name: string) => name.replace(/^.*[\\/]/u, "");

/** The text that a ward means by a name: that of the very name, else of the only one that differs in its folders. */
function textOf(files: Beside, name: string, names: readonly string[]) {
	if (Object.hasOwn(files, name)) return files[name];
	const base = baseOf(name);
	if (names.filter((other) => baseOf(other) === base).length > 1) return;
	const [key] = Object.keys(files).filter((one) => baseOf(one) === base);
	return key === undefined ? undefined : files[key];
}

/** Reads the files that a ward names from those that lie beside it, else from those that the page carries; `taken` is told of the latter. */
export function loaderOf({ text, beside }: Sheet, carried: Beside, taken: (name: string) => void): Load {
	const names = filesNamed(dataOf(text));
	return (name) => {
		const own = textOf(beside, name, names);
		if (own !== undefined) return { text: own };
		const other = textOf(carried, name, names);
		if (other !== undefined) {
			taken(name);
			return { text: other };
		}
		const base = baseOf(name);
		const alike = names.filter((one) => baseOf(one) === base);
		const problem =
			alike.length > 1
				? { expected: "files of different names, since a page knows no folders", received: alike.join(" and ") }
				: {
						expected: `${base} beside the ward's file: drop it here too, or open both together`,
						received: "no file of that name",
					};
		return { problem: { path: "", ...problem } };
	};
}

/** Names of the files that were opened and are of use to a ward, and of those that are of none. */
interface Sorted {
	readonly used: readonly string[];
	readonly unused: readonly string[];
}

/** What becomes of files that were opened together: a ward and what it needs, files that the ward on the bench names, a day. */
export type Placing =
	| ({ readonly kind: "ward"; readonly name: string; readonly sheet: Sheet } & Sorted)
	| ({ readonly kind: "beside"; readonly sheet: Sheet } & Sorted)
	| ({ readonly kind: "day"; readonly name: string; readonly text: string } & Pick<Sorted, "unused">);

/** Where files belong that were opened together; null where there are none. `atStores`: the ward is what is looked at. */
export function placingOf(files: readonly OpenedFile[], atStores: boolean, bench: Sheet): Placing | null {
	const [first] = files;
	if (first === undefined) return null;
	for (const file of files) {
		const data = dataOf(file.text);
		if (isWardText(file.text, data)) return placedWard(file, data, files, bench);
	}
	if (atStores) {
		const { beside, ...sorted } = besideOf(dataOf(bench.text), files, bench.beside);
		if (sorted.used.length > 0) return { kind: "beside", sheet: { text: bench.text, beside }, ...sorted };
		// A file that nothing can be told of is meant for what is looked at.
		const data = dataOf(first.text);
		if (asMap(data).dressings === undefined) return placedWard(first, data, files, bench);
	}
	return { kind: "day", name: first.name, text: first.text, unused: files.slice(1).map(({ name }) => name) };
}

/** What has been done with them, in a sentence. */
export function placedWords(placing: Placing): string {
	switch (placing.kind) {
		case "ward":
			return `${placing.name} lies on the bench of the stores${placing.used.length === 0 ? "" : `, with ${placing.used.join(", ")} beside it`}.`;
		case "beside":
			return `Beside the ward: ${placing.used.join(", ")}.`;
		case "day":
			return `${placing.name} lies on the bench.`;
	}
}

function placedWard(ward: OpenedFile, data: unknown, files: readonly OpenedFile[], bench: Sheet): Placing {
	const others = files.filter((file) => file !== ward);
	// What lay beside the ward before is still at hand: its file may have been saved and opened again.
	const { beside, ...sorted } = besideOf(data, others, bench.beside);
	return { kind: "ward", name: ward.name, sheet: { text: ward.text, beside }, ...sorted };
}

/** The files that a ward names, among those that were opened, else among those that lay beside it before. */
function besideOf(data: unknown, files: readonly OpenedFile[], before: Beside): Sorted & { readonly beside: Beside } {
	const names = filesNamed(data);
	const opened = Object.fromEntries(files.map((file) => [file.name, file.text]));
	const isUsed = ({ name }: OpenedFile) =>
		names.some((one) => baseOf(one) === name && textOf(opened, one, names) !== undefined);
	const found = names.map((name) => [name, textOf(opened, name, names) ?? textOf(before, name, names)] as const);
	const beside = found.flatMap(([name, text]) => (text === undefined ? [] : [[name, text] as const]));
	return {
		beside: Object.fromEntries(beside),
		used: files.filter(isUsed).map(({ name }) => name),
		unused: files.filter((file) => !isUsed(file)).map(({ name }) => name),
	};
}

/** Whether a text is a ward's, or would be if it could be read. */
const isWardText = (text: string, data: unknown): boolean =>
	data === undefined ? /^\s*"?ward"?\s*:/mu.test(text) : isWardData(data);
