import fc from "fast-check";
import type { Raw } from "../scenario/sample.ts";

/** A node of a tree and one of its keys. */
export type Place = readonly [node: Raw, key: string];

/** What is done to one place of a tree, with values of `value`. */
export const changeWith = (value: fc.Arbitrary<unknown>) =>
	fc.oneof(
		fc.record({ do: fc.constant("put" as const), value }),
		fc.record({ do: fc.constant("drop" as const) }),
		fc.record({ do: fc.constant("rename" as const), key: fc.string({ maxLength: 12 }) }),
		fc.record({ do: fc.constant("twice" as const) }),
		fc.record({ do: fc.constant("graft" as const), from: fc.nat() }),
	);
export type Change = ReturnType<typeof changeWith> extends fc.Arbitrary<infer T> ? T : never;

/** Does a change at a place; a graft comes from the place that `other` finds. */
export function bend([node, key]: Place, one: Change, other: (from: number) => Place | undefined): void {
	if (one.do === "put") node[key] = one.value;
	else if (one.do === "drop") delete node[key];
	else if (one.do === "rename") {
		node[one.key] = node[key];
		delete node[key];
	} else if (one.do === "twice" && Array.isArray(node)) node.push(structuredClone(node[Number(key)]));
	else if (one.do === "graft") {
		const [otherNode, otherKey] = other(one.from) ?? [node, key];
		node[key] = structuredClone(otherNode[otherKey]);
	}
}

/** What is done to the letters of a text: some go and one of `pieces`, or anything, comes. */
export const editWith = (pieces: readonly string[], longest: number) =>
	fc.record({
		at: fc.nat(longest),
		gone: fc.nat(6),
		put: fc.oneof(fc.string({ maxLength: 6, unit: "binary" }), fc.constantFrom(...pieces)),
	});
export type Edit = ReturnType<typeof editWith> extends fc.Arbitrary<infer T> ? T : never;

export function edited(text: string, edits: readonly Edit[]): string {
	return edits.reduce((all, { at, gone, put }) => {
		const place = at % (all.length + 1);
		return all.slice(0, place) + put + all.slice(place + gone);
	}, text);
}
