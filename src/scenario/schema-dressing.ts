import * as z from "zod";
import { readQuantity } from "../physics/index.ts";
import { defaults } from "./defaults.ts";
import { choice, name, record } from "./leaf.ts";
import { judge, type QuantityRule, quantity, refuse } from "./quantity.ts";
import {
	canisterHolds,
	canisterSize,
	duration,
	regimen,
	regimenItem,
	regimenShape,
	sourceLeft,
	sourceSize,
} from "./schema-regimen.ts";

const area = (description: string) =>
	quantity({
		unit: "cm2",
		what: "an area",
		example: "180 cm2",
		above: "0 cm2",
		to: "20000 cm2",
		description,
	});
const perDay: QuantityRule = {
	unit: "mL/d",
	what: "wound output",
	example: "160 mL/d",
	from: "0 mL/d",
	to: "20000 mL/d",
};
const perArea: QuantityRule = {
	unit: "mL/cm2/d",
	what: "wound output per area",
	example: "0.9 mL/cm2/d",
	from: "0 mL/cm2/d",
	to: "100 mL/cm2/d",
};

/** Exudate as mL per day outright, or per area of the wound. */
const exudate = z
	.unknown()
	.transform(
		(
			raw,
			context,
		): { readonly mlPerDay: number } | { readonly mlPerCm2PerDay: number } => {
			const outright = typeof raw !== "string" || readsAs(raw, perDay.unit);
			const judged = outright ? judge(raw, perDay) : judge(raw, perArea);
			if (judged.ok)
				return outright
					? { mlPerDay: judged.value }
					: { mlPerCm2PerDay: judged.value };
			const both =
				typeof raw !== "string" || !(outright || readsAs(raw, perArea.unit));
			const expected = both
				? 'wound output with its unit, such as "0.9 mL/cm2/d" or "160 mL/d"'
				: judged.expected;
			const other = outright ? judged : judge(raw, perDay);
			const spelled =
				judged.suggestion ?? (other.ok ? undefined : other.suggestion);
			return refuse(context, raw, expected, spelled);
		},
	)
	.meta({
		type: "string",
		pattern: "^\\s*(?:\\d+(?:\\.\\d+)?|\\.\\d+)\\s*[^\\s\\d.,][^,]*$",
		examples: ["0.9 mL/cm2/d", "160 mL/d"],
		description:
			"exudate of the wound: per area (mL/cm2/d, then `area` is needed) or outright (mL/d)",
	});

const readsAs = (text: string, unit: string) => readQuantity(text, unit).ok;

const outflow = z
	.union(
		[
			z.literal("none"),
			record("outflow", {
				total: quantity({
					unit: "mL/d",
					what: "output per day",
					example: "400 mL/d",
					above: "0 mL/d",
					to: "20000 mL/d",
					description: "mean total per day",
				}),
				bursts: quantity({
					unit: "/d",
					what: "bursts per day",
					example: "12 /d",
					from: "0.1 /d",
					to: "1440 /d",
					description: "mean number per day",
				}),
			}),
		],
		{ error: "none, or a map with the keys total, bursts" },
	)
	.meta({ description: "output of a fistula in the wound, in bursts" });

const wound = record("a wound", {
	tissue: choice(
		["soft-tissue", "necrotic-soft-tissue", "open-abdomen", "exposed-organ"],
		"what lies in the wound; decides which depths carry a caution",
	),
	area: area("area of the wound bed").optional(),
	exudate,
	slough: choice(
		["clean", "ordinary", "heavy"],
		"how much debris the wound sheds",
	).prefault(defaults["dressings[].wound.slough"].write),
	difficulty: choice(
		["easy", "ordinary", "awkward"],
		"how hard the drape is to seal",
	).prefault(defaults["dressings[].wound.difficulty"].write),
	outflow: outflow.prefault(defaults["dressings[].wound.outflow"].write),
}).meta({ description: "the wound under the dressing" });

export const maxDressings = 100;

export const dressing = record("a dressing", {
	id: name("an id", "short name of the dressing, unlike any other"),
	patient: name(
		"an id",
		"who wears it; dressings of one patient are turned together",
	).prefault(defaults["dressings[].patient"].write),
	wound,
	foam: z
		.array(
			record("a piece of foam", {
				area: area("area of the piece"),
				thickness: quantity({
					unit: "cm",
					what: "a thickness",
					example: "1.0 cm",
					above: "0 cm",
					to: "30 cm",
					description: "thickness of the piece",
				}),
			}),
			{ error: "a list of one or more pieces of foam" },
		)
		.min(1, { error: "a list of one or more pieces of foam" })
		.max(50, { error: "at most 50 pieces of foam" })
		.meta({
			description:
				"pieces of foam in the dressing; their volume is area × thickness",
		}),
	regimen: z
		.union(
			[
				regimen,
				z
					.array(regimenItem, { error: "a list of regimens" })
					.min(1, { error: "one or more regimens" })
					.max(50, { error: "at most 50 regimens" }),
			],
			{
				error: `a regimen, a map with the keys ${Object.keys(regimenShape).join(", ")}, or a list of such maps with from:`,
			},
		)
		.meta({
			description:
				"the regimen, or a list of regimens that take over at stated times",
		}),
	unit: record("a therapy unit", {
		canister: canisterSize.prefault(
			defaults["dressings[].unit.canister"].write,
		),
		holds: canisterHolds.prefault(defaults["dressings[].unit.holds"].write),
		source: sourceSize.prefault(defaults["dressings[].unit.source"].write),
		left: sourceLeft.optional(),
	})
		.prefault({})
		.meta({
			description:
				"what the therapy unit takes, and what hangs on it at the start",
		}),
	age: duration(
		"age of the dressing at the start",
		"0 h",
		"28 d",
		"12 h",
	).prefault(defaults["dressings[].age"].write),
});
