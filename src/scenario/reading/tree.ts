import { type Document, LineCounter, parseAllDocuments } from "yaml";
import { grow, type Place } from "./grow.ts";
import { type Found, type Keys, type Problem, pathText, shorten } from "./problem.ts";
import { guardShape } from "./shape-guard.ts";
import { checkText } from "./text.ts";

export type Format = "yaml" | "json";

/** What could be made of a text. */
export interface Tree {
	/** Plain data; undefined where the text could not be read as data at all. */
	readonly data: unknown;
	readonly problems: readonly Problem[];
	/** A problem with the place of its value in the text, or of the nearest map or list around it. */
	placed(this: void, found: Found): Problem;
}

/**
 * Reads YAML or JSON (which is read as the YAML that it is, then held to JSON's own rules); by default JSON where the text
 * begins with a brace. Never throws.
 */
export function readTree(raw: string, format?: Format): Tree {
	const { text, problems } = checkText(raw);
	if (problems.length > 0) return nothing(problems);
	const guarded = guardShape(text);
	if (guarded !== null) return nothing([guarded]);
	const language = (format ?? (/^\s*\{/u.test(text) ? "json" : "yaml")) === "json" ? "JSON" : "YAML";
	const lines = new LineCounter();
	const placeAt = (offset: number): Place => {
		const { line, col } = lines.linePos(offset);
		return { line: Math.max(1, line), column: Math.max(1, col) };
	};
	const documents = parsed(text, lines);
	if (documents === null)
		return nothing([{ path: "", expected: `readable ${language}`, received: "text that the parser gives up on" }]);
	const syntax = syntaxProblems(text, language, documents, placeAt);
	const [document, ...others] = documents;
	const extra = others[0]?.range[0];
	if (extra !== undefined)
		syntax.push({ path: "", expected: "one document", received: `${documents.length}`, ...placeAt(extra) });
	if (document === undefined || document.contents === null)
		return nothing(syntax.length > 0 ? syntax : [{ path: "", expected: "a scenario", received: "an empty file" }]);
	const { data, problems: faults, places } = grow(document.contents, document, placeAt);
	const placed = ({ keys, ...problem }: Found): Problem => ({ ...problem, ...nearestPlace(keys, places) });
	return { data, problems: [...syntax, ...faults], placed };
}

function nothing(problems: readonly Problem[]): Tree {
	return { data: undefined, problems, placed: ({ keys: _, ...problem }) => problem };
}

/** How a scenario is read as YAML. */
const quiet = { uniqueKeys: false, prettyErrors: false, logLevel: "silent" } as const;
export const yamlOptions = { version: "1.2", schema: "core", ...quiet } as const;

/** Every document of the text; null where the parser, which has no limit of its own, could not stand it. */
function parsed(text: string, lineCounter: LineCounter): readonly Document.Parsed[] | null {
	try {
		const documents = parseAllDocuments(text, { ...yamlOptions, lineCounter });
		return Array.isArray(documents) ? documents : [];
	} catch {
		return null;
	}
}

function syntaxProblems(
	text: string,
	language: "JSON" | "YAML",
	documents: readonly Document.Parsed[],
	placeAt: (offset: number) => Place,
): Problem[] {
	const errors = documents.flatMap((document) => document.errors).slice(0, 20);
	const problems = errors.map(({ message, pos }): Problem => {
		const received = `a fault: ${shorten(message.split("\n")[0] ?? "").replace(/[\p{Cc}]/gu, " ")}`;
		return { path: "", expected: `readable ${language}`, received, ...placeAt(pos[0]) };
	});
	if (language === "YAML" || problems.length > 0) return problems;
	try {
		JSON.parse(text);
		return [];
	} catch {
		// What the host says about it differs between hosts, so it is not repeated.
		const received = "YAML that is no JSON (a comment, a comma too many, text without quotes)";
		return [{ path: "", expected: "readable JSON", received }];
	}
}

function nearestPlace(keys: Keys, places: ReadonlyMap<string, Place>): Place | undefined {
	for (let length = keys.length; length >= 0; length--) {
		const place = places.get(pathText(keys.slice(0, length)));
		if (place !== undefined) return place;
	}
	return undefined;
}
