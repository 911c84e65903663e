import type * as z from "zod";
import { type HappeningKind, happenings as kinds } from "../../vocabulary/index.ts";
import type { Happening } from "../meaning/scenario.ts";
import { choice, list, name, record } from "../reading/leaf.ts";
import type { Found } from "../reading/problem.ts";
import { duration, quantity, rule, share, volume } from "../reading/quantity.ts";
import { asList, asMap, type Fields, stranger, wrongDetails } from "../reading/raw.ts";

/** What must be said of some kinds, beside when and of which dressing. */
const details: { readonly [K in HappeningKind]?: readonly (keyof typeof samples)[] } = {
	breach: ["size"],
	clog: ["share"],
	off: ["for"],
	bleed: ["volume", "for"],
};
const needsOf = (what: HappeningKind) => details[what] ?? [];

const samples = {
	size: 'the leak it adds, such as "0.02 L/min/mmHg"',
	share: "the share of the port it closes, such as 0.6",
	for: 'how long, such as "30 min"',
	volume: 'a volume such as "120 mL"',
};

export const breachSize = quantity(
	rule(
		"L/min/mmHg",
		"a leak",
		"above 0 L/min/mmHg and up to 10 L/min/mmHg",
		"0.02 L/min/mmHg",
		"leak that a breach adds",
	),
);
export const closedShare = (description: string, example: string) => share(description, "above 0 and up to 1", example);
export const bleedVolume = (example: string) => volume("volume of a bleed", "above 0 mL and up to 10 L", example);

const happening = record("a happening", {
	at: duration("when, from the start of the scenario", "from 0 min to 28 d", "5 h"),
	dressing: name("the id of a dressing", "the dressing that it befalls"),
	what: choice(kinds, "what happens"),
	size: breachSize.optional(),
	share: closedShare("share of the port that a clog closes", "0.6").optional(),
	for: duration("how long the unit is off, or a bleed lasts", "from 0.1 min to 28 d", "30 min").optional(),
	volume: bleedVolume("120 mL").optional(),
}).meta({
	allOf: kinds.map((what) => ({
		if: { properties: { what: { const: what } }, required: ["what"] },
		// biome-ignore lint/suspicious/noThenProperty: a key of JSON Schema
		then: { required: needsOf(what) },
	})),
});

export const happenings = list(happening, "a list of happenings", 1000, "happenings")
	.prefault([])
	.describe("what is made to happen, beside what chance brings");

/** Every happening befalls a dressing that is there and carries the details of its kind, no others. */
export function crossHappenings(happenings: unknown, dressings: readonly Fields[]): Found[] {
	return asList(happenings).flatMap((item, i) => {
		const happening = asMap(item);
		const keys = ["happenings", i];
		const unknown = dressings.length === 0 ? [] : stranger(happening.dressing, dressings, [...keys, "dressing"]);
		const what = kinds.find((known) => known === happening.what);
		if (what === undefined) return unknown;
		return [...unknown, ...wrongDetails(happening, what, { needs: needsOf(what), may: [] }, samples, keys)];
	});
}

export function resolveHappening(file: z.output<typeof happening>): Happening {
	const { at: atMin, dressing, what, size = 0, share = 0, for: forMin = 0, volume: volumeMl = 0 } = file;
	switch (what) {
		case "breach":
			return { atMin, dressing, what, size };
		case "clog":
			return { atMin, dressing, what, share };
		case "off":
			return { atMin, dressing, what, forMin };
		case "bleed":
			return { atMin, dressing, what, volumeMl, forMin };
		default:
			return { atMin, dressing, what };
	}
}
