import { type Document, isAlias, isMap, isNode, isScalar, isSeq, type Node, type ParsedNode, type YAMLMap } from "yaml";
import { type Keys, type Problem, pathText, shorten } from "./problem.ts";
import { maxDepth } from "./shape-guard.ts";

export interface Place {
	readonly line: number;
	readonly column: number;
}

/** Most values of a file, aliases counted as often as they are used; a hundred dressings and a thousand happenings have 9000. */
const maxValues = 11_000;

/**
 * Turns the parser's nodes into plain data, in which maps have no prototype, and says where each value of it stands, by its
 * path; every fault becomes a problem and the rest is kept. The data are undefined where there are more values than are read.
 */
export function grow(root: ParsedNode, document: Document.Parsed, placeAt: (offset: number) => Place) {
	const problems: Problem[] = [];
	const places = new Map<string, Place>();
	let values = 0;
	let blown = false;

	const complain = (keys: Keys, expected: string, received: string, at: Place | undefined) =>
		problems.push({ path: pathText(keys), expected, received, ...at });

	const plain = (node: Node | null, keys: Keys, at: Place | undefined, open: readonly Node[]): unknown => {
		values++;
		if (blown) return null;
		if (values > maxValues || keys.length > maxDepth) {
			blown = true;
			const most = `at most ${maxValues} values, ${maxDepth} deep`;
			complain([], most, "more (an alias counts as often as it is used)", at);
			return null;
		}
		const here = at ?? (node?.range ? placeAt(node.range[0]) : undefined);
		if (here !== undefined) places.set(pathText(keys), here);
		if (node === null) return null;
		if (isAlias(node)) {
			const target = node.resolve(document);
			if (target === undefined) {
				complain(keys, "an alias of an anchor that stands before it", `*${shorten(node.source)}`, here);
				return null;
			}
			if (open.includes(target)) {
				complain(keys, "a value", "an alias of a map or list that it stands in", here);
				return null;
			}
			return plain(target, keys, here, open);
		}
		if ("tag" in node && node.tag !== undefined)
			complain(keys, "plain data", `the tag ${shorten(String(node.tag))}`, here);
		if (isScalar(node)) return scalar(node.value);
		if (isSeq(node))
			return node.items.map((item, i) => plain(isNode(item) ? item : null, [...keys, i], undefined, [...open, node]));
		return isMap(node) ? map(node, keys, [...open, node]) : null;
	};

	const map = (node: YAMLMap, keys: Keys, open: readonly Node[]): unknown => {
		const result: Record<string, unknown> = Object.create(null);
		for (const pair of node.items) {
			const key = isNode(pair.key) ? pair.key : null;
			const at = key?.range ? placeAt(key.range[0]) : undefined;
			const name = isScalar(key) ? key.value : undefined;
			if (key !== null && "tag" in key && key.tag !== undefined)
				complain(keys, "a key without a tag", `the tag ${shorten(String(key.tag))}`, at);
			if (typeof name !== "string") {
				const written =
					isScalar(key) && key.source !== undefined && key.source !== "" ? shorten(key.source) : "something else";
				const came = isScalar(key) ? `${written} (put it in quotes)` : "a list, a map or an alias as a key";
				complain(keys, "keys that are text", came, at);
			} else if (name === "__proto__") {
				complain([...keys, name], "another name", `"${name}"`, at);
			} else if (Object.hasOwn(result, name)) {
				complain([...keys, name], "each key once", "it again", at);
			} else {
				result[name] = plain(isNode(pair.value) ? pair.value : null, [...keys, name], at, open);
			}
		}
		return result;
	};

	const whole = plain(root, [], undefined, []);
	// What is left of a blown one would only raise more problems.
	return { data: blown ? undefined : whole, problems, places };
}

/** Whole numbers too long for a double and the like stay what the parser made of them: the schema says what it wanted. */
const scalar = (value: unknown): unknown => (typeof value === "bigint" ? Number(value) : value);
