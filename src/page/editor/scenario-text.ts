import { Document, isCollection, isScalar, isSeq, parseDocument } from "yaml";
import type { Keys } from "../../scenario/reading/problem.ts";
import { yamlOptions } from "../../scenario/reading/tree.ts";

/** A scenario's text as data; undefined where it cannot be read as YAML or JSON at all. */
export function dataOf(text: string): unknown {
	try {
		return parsed(text)?.toJS({ maxAliasCount: 1000 });
	} catch {
		return undefined; // more aliases than anybody writes
	}
}

/**
 * The text with another value at `keys`, or without one where `value` is undefined. Remarks and the order of keys stay; a
 * map that is left empty goes too. null where the text cannot be read.
 */
export function withValue(text: string, keys: Keys, value: unknown): string | null {
	const document = parsed(text);
	if (document === null) return null;
	const changed = put(document, keys, value) ? document : rebuilt(document, keys, value);
	if (changed === null) return null;
	return isJson(text) ? `${JSON.stringify(changed.toJS(), null, 2)}\n` : changed.toString({ lineWidth: 0 });
}

const isJson = (text: string) => /^\s*\{/u.test(text);

function parsed(text: string): Document | null {
	try {
		const document = parseDocument(text, yamlOptions);
		return document.errors.length === 0 && isCollection(document.contents) ? document : null;
	} catch {
		return null; // the parser has no limit of its own
	}
}

/** False where something stands in the way: an alias, or a value where a map is needed. */
function put(document: Document, keys: Keys, value: unknown): boolean {
	try {
		if (value !== undefined) {
			// How the old value was quoted says nothing of the new one.
			const old = document.getIn(keys, true);
			if (isScalar(old)) old.type = undefined;
			document.setIn(keys, value);
		} else if (document.hasIn(keys)) remove(document, keys);
		return true;
	} catch {
		return false;
	}
}

function remove(document: Document, keys: Keys): void {
	document.deleteIn(keys);
	const above = keys.slice(0, -1);
	// A list's item stays, if empty, so that those after it keep their places.
	const parent = typeof above.at(-1) === "string" ? document.getIn(above, true) : null;
	if (isCollection(parent) && !isSeq(parent) && parent.items.length === 0) remove(document, above);
}

/** The same data written anew, without aliases that stand in the way; remarks are lost. */
function rebuilt(document: Document, keys: Keys, value: unknown): Document | null {
	const plain = new Document(withoutNothing(document.toJS()), { aliasDuplicateObjects: false });
	return put(plain, keys, value) ? plain : null;
}

/** Without the keys that hold nothing, in which nothing can be put. */
function withoutNothing(data: unknown): unknown {
	if (Array.isArray(data)) return data.map(withoutNothing);
	if (typeof data !== "object" || data === null) return data;
	return Object.fromEntries(
		Object.entries(data)
			.filter(([, value]) => value !== null)
			.map(([key, value]) => [key, withoutNothing(value)]),
	);
}
