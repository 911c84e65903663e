import * as z from "zod";
import { minutesADay, weekdays } from "../../../vocabulary/index.ts";
import { byDefault } from "../../meaning/defaults.ts";
import type { TherapyLength, WardScenario } from "../../meaning/ward.ts";
import { choice, count, countOrUnlimited, list, name, record } from "../../reading/leaf.ts";
import { type Found, found, received, valueAt } from "../../reading/problem.ts";
import { duration, quantity, rule, sigma } from "../../reading/quantity.ts";
import { again, asList, asMap, type Fields, idsOf, read } from "../../reading/raw.ts";
import { kinds, strangerKind, weight } from "./kinds.ts";

const factor = quantity(
	rule("", "a factor", "from 0 to 100", "0.5", "times the rate of arrivals on this day of the week"),
).optional();

const factors = Object.fromEntries(weekdays.map((day) => [day, factor])) as {
	[D in (typeof weekdays)[number]]: typeof factor; // fromEntries forgets the days
};

const arrivals = record("arrivals", {
	rate: quantity(
		rule("/d", "arrivals per day", "above 0 /d and up to 1000 /d", "1.5 /d", "patients per day, on a day of factor 1"),
	),
	weekdays: record("factors", factors).prefault({}).describe("factors by day of the week; 1 where left out"),
})
	.optional()
	.describe("who comes by chance, at Poisson times");

const stay = (description: string) => duration(description, "from 1 h to 364 d", "6 d");

const therapyLength = z
	.union(
		[
			record("a length of therapy", { median: stay("median length"), spread: sigma("lognormal sigma") }),
			record("a length of therapy", { mean: stay("mean length, exponential") }),
			list(record("a row", { length: stay("a length"), share: weight }), "a table of lengths and shares", 400, "rows", {
				least: "one or more rows",
			}),
		],
		{
			error: "a map with median and spread (lognormal), one with mean (exponential), or a table of lengths and shares",
		},
	)
	.describe("how long a therapy lasts");

const fromStart = duration("a time from the start", "from 0 h to 364 d", "36 h");

const bed = record("a bed", {
	id: name("an id", "name of the bed"),
	kind: name("the id of a kind", "which kind of dressing"),
	start: fromStart.describe("when the therapy begins"),
	end: fromStart.describe("when it ends"),
});

const full = choice(["wait", "away"], "what a patient does who finds no unit free: waits, or is treated elsewhere");
const warmUp = duration(
	"whole days that are simulated beforehand and left out of the count",
	"from 0 d to 364 d",
	"28 d",
);

/** Kinds of dressings, and who wears them when. */
export const ward = record("a ward", {
	kinds,
	units: byDefault(countOrUnlimited("how many units", 1, 5000, "number of units"), "ward.units").describe(
		"therapy units; one a patient",
	),
	full: byDefault(full, "ward.full"),
	arrivals,
	length: therapyLength.optional(),
	census: z
		.record(name("the id of a kind", "a kind"), count("patients", 0, 5000, "patients of this kind"), {
			error: "a map of kinds and numbers of patients",
		})
		.prefault({})
		.describe("patients in a bed when the simulation begins, by kind"),
	beds: list(bed, "a list of beds", 2000, "beds")
		.prefault([])
		.describe("named beds with the start and the end of their therapy, from the start of the scenario"),
	warmUp: byDefault(warmUp, "ward.warmUp"),
}).describe("a ward over weeks");

/** Patients have kinds that are there, units and a length of therapy; beds a name of their own and an end after the start. */
export function crossPatients(ward: Fields, kinds: readonly Fields[]): Found[] {
	const census = Object.entries(asMap(ward.census));
	const beds = asList(ward.beds).map(asMap);
	const patients = census.reduce((sum, [, count]) => sum + (typeof count === "number" ? count : 0), 0);
	const faults = [
		...census.flatMap(([id]) => strangerKind(id, kinds, ["ward", "census", id])),
		...again(idsOf(beds), "an id unlike any other", (i) => ["ward", "beds", i, "id"]),
		...beds.flatMap(({ kind }, i) => strangerKind(kind, kinds, ["ward", "beds", i, "kind"])),
		...beds.flatMap((bed, i) => {
			const [startMin, endMin] = [bed.start, bed.end].map((time) => read(fromStart, time));
			return startMin !== undefined && endMin !== undefined && endMin <= startMin
				? [found(["ward", "beds", i, "end"], `a time after the start, ${received(bed.start)}`, received(bed.end))]
				: [];
		}),
	];
	if (typeof ward.units === "number" && patients > ward.units)
		faults.push(found(["ward", "census"], `at most ${ward.units} patients, one a unit`, `${patients} of them`));
	const drawn = ward.arrivals !== undefined || patients > 0;
	const lasts = "how long a therapy lasts, since patients come by chance or are there";
	if (drawn && ward.length === undefined) faults.push(found(["ward", "length"], lasts, "nothing"));
	if (!drawn && beds.length === 0) faults.push(found(["ward"], "arrivals, a census or beds", "none of them"));
	return faults;
}

/** What is counted by the day lasts whole days. */
export const wholeDays = (root: Fields): Found[] =>
	[["horizon"], ["ward", "warmUp"]].flatMap((keys) => {
		const written = valueAt(root, keys);
		const minutes = read(fromStart, written);
		return minutes !== undefined && minutes % minutesADay !== 0 ? [found(keys, "whole days", received(written))] : [];
	});

type Patients = Pick<WardScenario, "units" | "full" | "arrivals" | "length" | "census" | "beds" | "warmUpMin">;

export function resolvePatients(file: z.output<typeof ward>): Patients {
	const { units, full, arrivals, length, census, beds, warmUp } = file;
	const ids = file.kinds.map(({ id }) => id);
	return {
		warmUpMin: warmUp,
		units: units === "unlimited" ? null : units,
		full,
		arrivals:
			arrivals === undefined
				? null
				: { perDay: arrivals.rate, factors: weekdays.map((day) => arrivals.weekdays[day] ?? 1) },
		length: length === undefined ? null : resolveLength(length),
		census: ids.map((id) => census[id] ?? 0),
		beds: beds.map(({ id, kind, start, end }) => ({ id, kind: ids.indexOf(kind), startMin: start, endMin: end })),
	};
}

function resolveLength(length: z.output<typeof therapyLength>): TherapyLength {
	if (Array.isArray(length))
		return { form: "table", rows: length.map(({ length, share }) => ({ lengthMin: length, share })) };
	return "mean" in length
		? { form: "exponential", meanMin: length.mean }
		: { form: "lognormal", medianMin: length.median, spread: length.spread };
}
