import fc from "fast-check";
import { stringify } from "yaml";
import { rawScenario } from "../scenario/arbitrary.ts";
import type { Raw } from "../scenario/sample.ts";
import { bend, changeWith, edited, editWith, type Place } from "./bend.ts";

/** Scalars of the format's grammar, at and past the edges of what is meant. */
const scalar = fc.oneof(
	fc
		.tuple(
			fc.oneof(fc.double(), fc.integer({ min: -10, max: 5000 }), fc.constantFrom(0, -0, 1e-300, 1e300, 2 ** 53)),
			fc.constantFrom(
				...["min", "h", "d", "s", "mL", "L", "cL", "mmHg", "kPa", "cmH2O"],
				...["cm2", "mm2", "cm", "mL/d", "mL/cm2/d", "L/min/mmHg", "/h", "/d", "%"],
				...["", "parsec", "mL mL", "min/min", "\u0000", "\u202e"],
			),
		)
		.map(([value, unit]) => `${value} ${unit}`),
	fc.constantFrom(
		...["none", "suggested", "unlimited", "suction", "fill", "on", "off", "~", ""],
		...["07:00", "24:00", "7:0", "2026-02-30T07:00", "2026-03-02T07:00Z"],
		...["<script>alert(1)</script>", "=1+1", "../../x", "__proto__", "constructor"],
	),
	fc.double(),
	fc.boolean(),
	fc.constant(null),
	fc.string({ maxLength: 40, unit: "binary" }),
);
const value = fc.oneof(
	{ weight: 6, arbitrary: scalar },
	{ weight: 1, arbitrary: fc.array(scalar, { maxLength: 4 }) },
	{ weight: 1, arbitrary: fc.dictionary(fc.string({ maxLength: 8 }), scalar) },
	{ weight: 1, arbitrary: fc.jsonValue({ maxDepth: 4 }) },
);

/** Every place of a tree: the node it hangs on and its key there. */
function places(node: Raw): Place[] {
	if (typeof node !== "object" || node === null) return [];
	return Object.keys(node).flatMap((key) => [[node, key] as Place, ...places(node[key])]);
}

const change = changeWith(value);

const edit = editWith(
	[
		...["&a ", "*a", "\n", "  ", "- ", ": ", "{", "]", "!!map ", "|", ">", "'"],
		...['"', "%", "---\n", "\t", "?", "<<: *a", "!!binary ", "\u0000", "\uFEFF"],
	],
	4000,
);

/** The text of a scenario file: sound, bent in a few places of its tree, bent in its letters, or both. */
export const scenarioText: fc.Arbitrary<string> = fc
	.record({
		raw: rawScenario,
		changes: fc.array(fc.tuple(fc.nat(), change), { maxLength: 4 }),
		form: fc.constantFrom<"block" | "flow" | "json">("block", "flow", "json"),
		edits: fc.oneof(
			{ weight: 2, arbitrary: fc.constant([]) },
			{ weight: 1, arbitrary: fc.array(edit, { maxLength: 3 }) },
		),
	})
	.map(({ raw, changes, form, edits }) => {
		const tree: Raw = structuredClone(raw);
		for (const [at, one] of changes) {
			const all = places(tree);
			if (all.length === 0) break;
			bend(all[at % all.length], one, (from) => all[from % all.length]);
		}
		const text = form === "json" ? JSON.stringify(tree) : stringify(tree, { collectionStyle: form });
		return edited(text, edits);
	});
