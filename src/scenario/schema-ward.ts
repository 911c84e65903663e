// Longer than most: the whole form of a ward's file, so that a reader finds every key in one place.
import * as z from "zod";
import { defaults } from "./defaults.ts";
import { choice, count, name, record, text } from "./leaf.ts";
import { quantity, quantityOr, refuse } from "./quantity.ts";
import { scenarioSchema } from "./schema.ts";
import { care } from "./schema-care.ts";
import { clock } from "./schema-clock.ts";
import { dressing } from "./schema-dressing.ts";
import { duration, partialRegimen } from "./schema-regimen.ts";
import { storeKinds, weekdays } from "./ward.ts";

const day = choice(weekdays, "a day of the week");
const number = (what: string, example: string, above: string, to: string) =>
	quantity({ unit: "", what, example, above, to, description: what });
const share = number("a share, beside the other shares", "1", "0", "1000000");
const spread = quantity({
	unit: "",
	what: "a spread",
	example: "0.6",
	from: "0",
	to: "3",
	description: "lognormal sigma",
});
const pieces = (what: string, from: number) => count(what, from, 1e6, what);
const size = (description: string) =>
	quantity({
		unit: "mL",
		what: "a volume",
		example: "1000 mL",
		from: "50 mL",
		to: "20 L",
		description,
	});
const factor = quantity({
	unit: "",
	what: "a factor",
	example: "0.5",
	from: "0",
	to: "100",
	description: "times the rate of arrivals on this day of the week",
}).optional();

/** Every therapy of a ward begins with a new canister and a new source. */
const { holds: _, left: __, ...policyShape } = partialRegimen.shape;

/** `400 g` or `0.4 kg`, in grams. */
const weight = z
	.unknown()
	.transform((raw, context): number => {
		const [, digits, unit] =
			typeof raw === "string"
				? (/^(\d+(?:\.\d+)?)\s*(g|kg)$/u.exec(raw.trim()) ?? [])
				: [];
		const grams = Number(digits) * (unit === "kg" ? 1000 : 1);
		if (grams >= 0 && grams <= 1e6) return grams;
		return refuse(
			context,
			raw,
			'a weight with its unit, such as "400 g", in g, kg, up to 1000 kg',
		);
	})
	.meta({
		type: "string",
		pattern: "^\\d+(?:\\.\\d+)?\\s*(?:g|kg)$",
		examples: ["400 g"],
		description: "weight of one piece, empty, for the weight of waste",
	});

const { wound, foam, regimen, unit, age } = dressing.shape;

const kind = record("a kind of dressing", {
	id: name("an id", "short name of the kind, unlike any other"),
	share: share.prefault(defaults["ward.kinds[].share"].write),
	file: text(
		"a file",
		300,
		"scenario file that the dressing is taken from, beside this one; its care, happenings and assumptions play no part",
	).optional(),
	dressing: name(
		"the id of a dressing",
		"which dressing of that file, where it has several",
	).optional(),
	solution: text(
		"a name",
		200,
		"the solution of this kind, where it is another",
	).optional(),
	wound: wound.optional(),
	foam: foam.optional(),
	regimen: regimen.optional(),
	unit: unit.unwrap().optional().meta({
		description: "what the therapy unit takes",
	}),
	age: age.unwrap().optional(),
}).meta({
	description:
		"a kind of dressing: from a file, or written out with wound, foam, regimen",
});

export const instant = duration(
	"a time from the start",
	"0 h",
	"364 d",
	"36 h",
);

const length = z
	.union(
		[
			record("a length of therapy", {
				median: duration("median length", "1 h", "364 d", "6 d"),
				spread,
			}),
			record("a length of therapy", {
				mean: duration("mean length, exponential", "1 h", "364 d", "6 d"),
			}),
			z
				.array(
					record("a row", {
						length: duration("a length", "1 h", "364 d", "6 d"),
						share,
					}),
					{ error: "a table of lengths and shares" },
				)
				.min(1, { error: "one or more rows" })
				.max(400, { error: "at most 400 rows" }),
		],
		{
			error:
				"a map with median and spread (lognormal), one with mean (exponential), or a table of lengths and shares",
		},
	)
	.meta({ description: "how long a therapy lasts" });

const ward = record("a ward", {
	kinds: z
		.array(kind, { error: "a list of one or more kinds of dressings" })
		.min(1, { error: "a list of one or more kinds of dressings" })
		.max(50, { error: "at most 50 kinds" })
		.meta({ description: "kinds of dressings, each with its share" }),
	units: z
		.union(
			[
				z.literal("unlimited"),
				count("unlimited, or how many units", 1, 5000, "number of units"),
			],
			{ error: "unlimited, or a whole number from 1 to 5000" },
		)
		.prefault(defaults["ward.units"].write)
		.meta({ description: "therapy units; one a patient" }),
	full: choice(
		["wait", "away"],
		"what a patient does who finds no unit free: waits, or is treated elsewhere",
	).prefault(defaults["ward.full"].write),
	arrivals: record("arrivals", {
		rate: quantity({
			unit: "/d",
			what: "arrivals per day",
			example: "1.5 /d",
			above: "0 /d",
			to: "1000 /d",
			description: "patients per day, on a day of factor 1",
		}),
		weekdays: record(
			"factors",
			Object.fromEntries(weekdays.map((one) => [one, factor])) as {
				[D in (typeof weekdays)[number]]: typeof factor;
			}, // fromEntries forgets the days
		)
			.prefault({})
			.meta({ description: "factors by day of the week; 1 where left out" }),
	})
		.optional()
		.meta({ description: "who comes by chance, at Poisson times" }),
	length: length.optional(),
	census: z
		.record(
			name("the id of a kind", "a kind"),
			count("patients", 0, 5000, "patients of this kind"),
			{ error: "a map of kinds and numbers of patients" },
		)
		.prefault({})
		.meta({
			description: "patients in a bed when the simulation begins, by kind",
		}),
	beds: z
		.array(
			record("a bed", {
				id: name("an id", "name of the bed"),
				kind: name("the id of a kind", "which kind of dressing"),
				start: instant.meta({ description: "when the therapy begins" }),
				end: instant.meta({ description: "when it ends" }),
			}),
			{ error: "a list of beds" },
		)
		.max(2000, { error: "at most 2000 beds" })
		.prefault([])
		.meta({
			description:
				"named beds with the start and the end of their therapy, from the start of the scenario",
		}),
	warmUp: duration(
		"whole days that are simulated beforehand and left out of the count",
		"0 d",
		"364 d",
		"28 d",
	).prefault(defaults["ward.warmUp"].write),
}).meta({ description: "a ward over weeks" });

const item = record("an item of the stores", {
	item: choice(storeKinds, "what it is"),
	size: size("size of a canister, or of a source of solution").optional(),
	solution: text("a name", 200, "which solution it is").optional(),
	stock: z
		.union(
			[z.literal("unlimited"), count("unlimited, or pieces", 0, 1e6, "pieces")],
			{ error: "unlimited, or a whole number from 0 to 1000000" },
		)
		.meta({ description: "pieces on the shelf at the start, new" }),
	pack: pieces("pieces in a pack", 1).prefault(defaults["stores[].pack"].write),
	price: z
		.number({ error: "a price, a number of at least 0" })
		.min(0, { error: "a price, a number of at least 0" })
		.max(1e9, { error: "a price of at most 1000000000" })
		.optional()
		.meta({ description: "price of one piece" }),
	weight: weight.optional(),
	shelf: quantityOr(["unlimited"], {
		unit: "min",
		what: "a duration",
		example: "365 d",
		from: "1 h",
		to: "36500 d",
		description: "how long it keeps from its delivery",
	}).prefault(defaults["stores[].shelf"].write),
	lead: duration(
		"time from an order to its delivery, the median",
		"0 h",
		"364 d",
		"2 d",
	).prefault(defaults["stores[].lead"].write),
	leadSpread: spread
		.prefault(defaults["stores[].leadSpread"].write)
		.meta({ description: "lognormal sigma of the lead time; 0: fixed" }),
	orderDays: z
		.union(
			[
				z.literal("any"),
				z
					.array(day, { error: "a list of days such as [ mon, thu ]" })
					.min(1, { error: "one or more days" })
					.max(7, { error: "at most seven days" }),
			],
			{ error: "any, or a list of days such as [ mon, thu ]" },
		)
		.prefault(defaults["stores[].orderDays"].write)
		.meta({ description: "days on which orders go out; any: at any time" }),
	cutOff: clock
		.prefault(defaults["stores[].cutOff"].write)
		.meta({ description: "when the orders of an order day go out" }),
	review: quantityOr(["continuous"], {
		unit: "min",
		what: "a duration",
		example: "7 d",
		from: "1 h",
		to: "91 d",
		description: "every how long the shelf is looked at, or at every use",
	}).prefault(defaults["stores[].review"].write),
	reorder: pieces("the level at which an order is due", 0).optional(),
	upTo: pieces("the level that an order brings it to", 1).optional(),
	service: quantity({
		unit: "",
		what: "a service level",
		example: "99 %",
		from: "50 %",
		to: "99.99 %",
		description:
			"share of the time in which a piece should be on the shelf; the reorder point is found for it where none is given",
	}).prefault(defaults["stores[].service"].write),
	substitute: size("size that is used where this one is out").optional(),
}).meta({ description: "an item of the stores" });

const shift = record("a shift", {
	from: clock.meta({ description: "when it begins" }),
	nurses: count("nurses", 1, 1000, "nurses who can answer alarms"),
});

const shape = scenarioSchema.shape;

/** A ward file: the parts that it shares with a day are the same. */
export const wardSchema = record("a ward scenario", {
	$schema: shape.$schema,
	slackwater: shape.slackwater,
	title: shape.title,
	seed: shape.seed,
	start: shape.start,
	horizon: duration(
		"how long is simulated, in whole days",
		"1 d",
		"52 w",
		"8 w",
	).prefault(defaults["ward.horizon"].write),
	replications: count(
		"replications",
		1,
		100_000,
		"how often the weeks are simulated",
	).prefault(defaults["ward.replications"].write),
	chance: shape.chance,
	ward,
	stores: z
		.array(item, { error: "a list of items" })
		.max(100, { error: "at most 100 items" })
		.meta({ description: "what the stores hold" }),
	care: record("care", {
		...care.shape,
		nurses: z
			.union(
				[
					care.shape.nurses.unwrap(),
					z
						.array(shift, { error: "a list of shifts" })
						.min(1, { error: "one or more shifts" })
						.max(24, { error: "at most 24 shifts" }),
				],
				{
					error:
						"unlimited, a whole number from 1 to 1000, or a list of shifts with from and nurses",
				},
			)
			.prefault(defaults["care.nurses"].write)
			.meta({
				description: "nurses who can answer alarms, or a list of shifts",
			}),
	})
		.prefault({})
		.meta({ description: "who looks after them, and when" }),
	compare: z
		.record(
			name("a name", "name of the policy"),
			record("a policy", {
				...policyShape,
				canister: size("another size of canister").optional(),
				source: size("another size of source").optional(),
			}),
			{ error: "a map of names and policies" },
		)
		.prefault({})
		.meta({
			description:
				"policies to set against today's mix: each is laid over the first regimen of every kind that has a fill, or of the one it names",
		}),
	assumptions: shape.assumptions,
	prices: record("prices", {
		currency: shape.prices.unwrap().shape.currency,
		asOf: shape.prices.unwrap().shape.asOf,
	})
		.optional()
		.meta({ description: "currency and date of the prices in `stores`" }),
	solution: shape.solution,
});

export type WardFile = z.output<typeof wardSchema>;
