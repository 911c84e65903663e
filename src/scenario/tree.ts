import {
	type Document,
	isAlias,
	isMap,
	isNode,
	isScalar,
	isSeq,
	LineCounter,
	type Node,
	type ParsedNode,
	parseAllDocuments,
	type YAMLMap,
} from "yaml";
import { type Keys, pathText, shorten } from "./path.ts";
import type { Problem } from "./problem.ts";
import { guardShape, maxDepth } from "./shape-guard.ts";

export type Format = "yaml" | "json";

interface Place {
	readonly line: number;
	readonly column: number;
}

/** Plain data of a file, and where each value of it stands. Maps have no prototype. */
export interface Tree {
	/** undefined where the text could not be read as data at all. */
	readonly data: unknown;
	readonly problems: readonly Problem[];
	/** Place of a value, or of the nearest map or list around it. */
	placeOf(keys: Keys): Place | undefined;
}

/** Most values of a file, aliases counted as often as they are used; a hundred dressings and a thousand happenings have 9000. */
const maxValues = 11_000;

/** Reads YAML or JSON (which is read as the YAML that it is, then held to JSON's own rules). Never throws. */
export function readTree(text: string, format: Format): Tree {
	const guarded = guardShape(text);
	if (guarded !== null) return nothing([guarded]);
	const lines = new LineCounter();
	let documents: readonly Document.Parsed[];
	try {
		const parsed = parseAllDocuments(text, {
			lineCounter: lines,
			uniqueKeys: false,
			prettyErrors: false,
			logLevel: "silent",
			version: "1.2",
			schema: "core",
		});
		documents = Array.isArray(parsed) ? parsed : [];
	} catch {
		// The parser has no limit of its own; whatever it could not stand is not a scenario.
		return nothing([
			{
				path: "",
				expected: `readable ${format === "json" ? "JSON" : "YAML"}`,
				received: "text that the parser gives up on",
			},
		]);
	}
	const syntax = syntaxProblems(text, format, documents, lines);
	const [document, ...others] = documents;
	const extra = others[0]?.range[0];
	if (extra !== undefined)
		syntax.push({
			path: "",
			expected: "one document",
			received: `${documents.length}`,
			...place(lines, extra),
		});
	if (document === undefined || document.contents === null)
		return nothing(
			syntax.length > 0
				? syntax
				: [{ path: "", expected: "a scenario", received: "an empty file" }],
		);
	const grown = grow(document.contents, document, lines);
	return { ...grown, problems: [...syntax, ...grown.problems] };
}

const nothing = (problems: readonly Problem[]): Tree => ({
	data: undefined,
	problems,
	placeOf: () => undefined,
});

function place(lines: LineCounter, offset: number): Place {
	const { line, col } = lines.linePos(offset);
	return { line: Math.max(1, line), column: Math.max(1, col) };
}

function syntaxProblems(
	text: string,
	format: Format,
	documents: readonly Document.Parsed[],
	lines: LineCounter,
): Problem[] {
	const problems = documents
		.flatMap((document) => document.errors)
		.slice(0, 20)
		.map(
			(error): Problem => ({
				path: "",
				expected: `readable ${format === "json" ? "JSON" : "YAML"}`,
				received: `a fault: ${shorten(error.message.split("\n")[0] ?? "").replace(/[\p{Cc}]/gu, " ")}`,
				...place(lines, error.pos[0]),
			}),
		);
	if (format !== "json" || problems.length > 0) return problems;
	try {
		JSON.parse(text);
		return [];
	} catch {
		// What the host says about it differs between hosts, so it is not repeated.
		return [
			{
				path: "",
				expected: "readable JSON",
				received:
					"YAML that is no JSON (a comment, a comma too many, text without quotes)",
			},
		];
	}
}

/** Turns the parser's nodes into plain data; every fault becomes a problem and the rest is kept. */
function grow(
	root: ParsedNode,
	document: Document.Parsed,
	lines: LineCounter,
): Tree {
	const problems: Problem[] = [];
	const places = new Map<string, Place>();
	let values = 0;
	let blown = false;

	const complain = (
		keys: Keys,
		expected: string,
		received: string,
		at: Place | undefined,
	) => problems.push({ path: pathText(keys), expected, received, ...at });

	const plain = (
		node: Node | null,
		keys: Keys,
		at: Place | undefined,
		open: readonly Node[],
	): unknown => {
		values++;
		if (blown) return null;
		if (values > maxValues || keys.length > maxDepth) {
			blown = true;
			complain(
				[],
				`at most ${maxValues} values, ${maxDepth} deep`,
				"more (an alias counts as often as it is used)",
				at,
			);
			return null;
		}
		const here = at ?? (node?.range ? place(lines, node.range[0]) : undefined);
		if (here !== undefined) places.set(pathText(keys), here);
		if (node === null) return null;
		if (isAlias(node)) {
			const target = node.resolve(document);
			if (target === undefined) {
				complain(
					keys,
					"an alias of an anchor that stands before it",
					`*${shorten(node.source)}`,
					here,
				);
				return null;
			}
			if (open.includes(target)) {
				complain(
					keys,
					"a value",
					"an alias of a map or list that it stands in",
					here,
				);
				return null;
			}
			return plain(target, keys, here, open);
		}
		if ("tag" in node && node.tag !== undefined)
			complain(
				keys,
				"plain data",
				`the tag ${shorten(String(node.tag))}`,
				here,
			);
		if (isScalar(node)) return scalar(node.value);
		if (isSeq(node))
			return node.items.map((item, i) =>
				plain(isNode(item) ? item : null, [...keys, i], undefined, [
					...open,
					node,
				]),
			);
		return isMap(node) ? map(node, keys, [...open, node]) : null;
	};

	const map = (node: YAMLMap, keys: Keys, open: readonly Node[]): unknown => {
		const result: Record<string, unknown> = Object.create(null);
		for (const pair of node.items) {
			const key = isNode(pair.key) ? pair.key : null;
			const at = key?.range ? place(lines, key.range[0]) : undefined;
			const name = isScalar(key) ? key.value : undefined;
			if (key !== null && "tag" in key && key.tag !== undefined)
				complain(
					keys,
					"a key without a tag",
					`the tag ${shorten(String(key.tag))}`,
					at,
				);
			if (typeof name !== "string") {
				const written =
					isScalar(key) && key.source !== undefined && key.source !== ""
						? shorten(key.source)
						: "something else";
				complain(
					keys,
					"keys that are text",
					isScalar(key)
						? `${written} (put it in quotes)`
						: "a list, a map or an alias as a key",
					at,
				);
			} else if (name === "__proto__") {
				complain([...keys, name], "another name", `"${name}"`, at);
			} else if (Object.hasOwn(result, name)) {
				complain([...keys, name], "each key once", "it again", at);
			} else {
				result[name] = plain(
					isNode(pair.value) ? pair.value : null,
					[...keys, name],
					at,
					open,
				);
			}
		}
		return result;
	};

	const whole = plain(root, [], undefined, []);
	const data = blown ? undefined : whole; // what is left of it would only raise more problems
	const placeOf = (keys: Keys): Place | undefined => {
		for (let length = keys.length; length >= 0; length--) {
			const found = places.get(pathText(keys.slice(0, length)));
			if (found !== undefined) return found;
		}
		return undefined;
	};
	return { data, problems, placeOf };
}

/** Whole numbers too long for a double and the like stay what the parser made of them: the schema says what it wanted. */
const scalar = (value: unknown): unknown =>
	typeof value === "bigint" ? Number(value) : value;
