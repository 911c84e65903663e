import * as z from "zod";
import { assumptions } from "./assumptions.ts";
import { defaults } from "./defaults.ts";
import { count, name, record, text } from "./leaf.ts";
import { refuse } from "./quantity.ts";
import { care } from "./schema-care.ts";
import { dressing, maxDressings } from "./schema-dressing.ts";
import { happening } from "./schema-happening.ts";
import { duration, partialRegimen, usualRegimen } from "./schema-regimen.ts";
import { rehearsal } from "./schema-rehearsal.ts";
import { sweep } from "./schema-sweep.ts";

/** True for a day of the calendar and a minute of that day. */
function exists(year: number, month: number, day: number): boolean {
	const date = new Date(Date.UTC(year, month - 1, day));
	return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

const start = z
	.unknown()
	.transform((raw, context): string => {
		const form = "a local date and time such as 2026-03-02T07:00";
		const [, year, month, day] =
			typeof raw === "string"
				? (/^(\d{4})-(\d{2})-(\d{2})T(?:[01]\d|2[0-3]):[0-5]\d$/u.exec(raw) ??
					[])
				: [];
		if (typeof raw !== "string" || year === undefined) {
			const zone =
				typeof raw === "string" &&
				/(?:Z|[+-]\d{2}:?\d{2})$/u.test(raw) &&
				raw.includes("T");
			return refuse(context, raw, zone ? `${form}, without a zone` : form);
		}
		if (Number(year) < 1900 || Number(year) > 2199)
			return refuse(context, raw, "a year from 1900 to 2199");
		if (!exists(Number(year), Number(month), Number(day)))
			return refuse(context, raw, "a date that exists");
		return raw;
	})
	.meta({
		type: "string",
		pattern: "^\\d{4}-\\d{2}-\\d{2}T(?:[01]\\d|2[0-3]):[0-5]\\d$",
		examples: ["2026-03-02T07:00"],
		description: "wall-clock start, local time without a zone",
	});

const chance = z
	.unknown()
	.transform((raw, context): boolean => {
		if (raw === "on" || raw === true) return true;
		if (raw === "off" || raw === false) return false;
		return refuse(context, raw, "on or off");
	})
	.meta({
		enum: ["on", "off", true, false],
		description: "off: nothing fails by itself and nothing varies",
	});

const price = z
	.number({ error: "a price, a number of at least 0" })
	.min(0, { error: "a price, a number of at least 0" })
	.max(1e9, { error: "a price of at most 1000000000" })
	.meta({ description: "price of one piece" })
	.optional();

const asOf = z
	.unknown()
	.transform((raw, context): string => {
		const value = Number.isSafeInteger(raw) ? String(raw) : raw;
		const [, year, month = "01", day = "01"] =
			typeof value === "string"
				? (/^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/u.exec(value) ?? [])
				: [];
		if (
			typeof value !== "string" ||
			year === undefined ||
			!exists(Number(year), Number(month), Number(day))
		)
			return refuse(context, raw, "the date of the prices, such as 2026-01");
		return value;
	})
	.meta({
		anyOf: [
			{ type: "string", pattern: "^\\d{4}(?:-\\d{2}(?:-\\d{2})?)?$" },
			{ type: "integer" },
		],
		description: "when the prices held",
		examples: ["2026-01"],
	});

const pieces = count(
	"pieces in a pack",
	1,
	10_000,
	"pieces in a pack",
).optional();

/** A scenario file: what stands in it and what may be left out. Rules that join several values are in `cross.ts`. */
export const scenarioSchema = record("a scenario", {
	$schema: z
		.string({ error: "where the JSON Schema is" })
		.max(1000, { error: "where the JSON Schema is" })
		.optional()
		.meta({
			description:
				"where an editor finds this schema, for a JSON file, which cannot say so in a comment",
		}),
	slackwater: z
		.literal(1, { error: "the version of the format, 1" })
		.meta({ description: "version of the format" }),
	title: text("a title", 200, "what the scenario is, one line"),
	seed: text(
		"a seed",
		200,
		"any text; the same seed gives the same day",
	).prefault(defaults.seed.write),
	start: start.prefault(defaults.start.write),
	horizon: duration("how long is simulated", "1 min", "28 d", "24 h").prefault(
		defaults.horizon.write,
	),
	replications: count(
		"replications",
		1,
		1_000_000,
		"how often the day is simulated",
	).prefault(defaults.replications.write),
	chance: chance.prefault(defaults.chance.write),
	dressings: z
		.array(dressing, { error: "a list of one or more dressings" })
		.min(1, { error: "a list of one or more dressings" })
		.max(maxDressings, { error: `at most ${maxDressings} dressings` })
		.meta({ description: "the dressings, one therapy unit each" }),
	care: care
		.prefault({})
		.meta({ description: "who looks after them, and when" }),
	happenings: z
		.array(happening, { error: "a list of happenings" })
		.max(1000, { error: "at most 1000 happenings" })
		.prefault([])
		.meta({ description: "what is made to happen, beside what chance brings" }),
	rehearsal: rehearsal
		.optional()
		.meta({ description: "a shift to rehearse, in which something is hidden" }),
	compare: z
		.record(name("a name", "name of the regimen"), partialRegimen, {
			error: "a map of names and partial regimens",
		})
		.prefault({})
		.meta({
			description:
				"regimens to set against each other: each is laid over the first regimen of every dressing, or of the one it names",
		}),
	usual: usualRegimen.optional().meta({
		description:
			"the regimen that the site runs most, laid over the scenario's own: maps of `sweep` mark it; where it is left out they mark none",
	}),
	sweep: sweep.optional().meta({
		description:
			"the grid that `sweep` runs: values of one setting or more, every one with every other",
	}),
	home: record("a way home", {
		from: duration("when the patient goes home", "0 h", "28 d", "96 h"),
		for: duration(
			"how long supplies are sent along for",
			"12 h",
			"28 d",
			"3 d",
		),
	})
		.optional()
		.meta({
			description:
				"discharge, for what is to be sent home; the days at home lie within the horizon",
		}),
	assumptions: assumptions
		.prefault({})
		.meta({ description: "constants of the model, by name" }),
	prices: record("prices", {
		currency: z
			.string({ error: "a currency such as EUR" })
			.regex(/^[A-Z]{3}$/u, {
				error: "a currency of three capitals, such as EUR",
			})
			.meta({ description: "currency, three capitals (ISO 4217)" }),
		asOf,
		canister: price,
		source: price,
		kit: price,
		line: price,
		port: price,
	})
		.optional()
		.meta({
			description:
				"prices of one piece each, for the cost of a regimen and of supplies",
		}),
	solution: record("a solution", {
		name: text("a name", 200, "what is filled in").prefault(
			defaults["solution.name"].write,
		),
		hang: duration(
			"how long an opened source may hang",
			"30 min",
			"28 d",
			"24 h",
		).optional(),
	})
		.prefault({})
		.meta({
			description:
				"the solution, for the order list and for how long it may hang",
		}),
	packs: record("packs", {
		canister: pieces,
		source: pieces,
		kit: pieces,
		line: pieces,
	})
		.prefault({})
		.meta({ description: "pieces in a pack, by item" }),
});

export type ScenarioFile = z.output<typeof scenarioSchema>;
