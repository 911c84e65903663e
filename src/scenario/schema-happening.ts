import { choice, name, record } from "./leaf.ts";
import { quantity } from "./quantity.ts";
import { duration } from "./schema-regimen.ts";

/** Which keys a happening takes beside at, dressing and what: all of them are needed. */
export const details = {
	transfer: [],
	turn: [],
	breach: ["size"],
	clog: ["share"],
	"kink-fill": [],
	"kink-suction": [],
	off: ["for"],
	bleed: ["volume", "for"],
	"canister-change": [],
	"source-change": [],
	"dressing-change": [],
} as const satisfies Record<
	string,
	readonly ("size" | "share" | "for" | "volume")[]
>;

export type What = keyof typeof details;
export const whats = Object.keys(details) as [What, ...What[]]; // keys forgets the names it lists

export const breachSize = quantity({
	unit: "L/min/mmHg",
	what: "a leak",
	example: "0.02 L/min/mmHg",
	above: "0 L/min/mmHg",
	to: "10 L/min/mmHg",
	description: "leak that a breach adds",
});

export const happening = record("a happening", {
	at: duration("when, from the start of the scenario", "0 min", "28 d", "5 h"),
	dressing: name("the id of a dressing", "the dressing that it befalls"),
	what: choice(whats, "what happens"),
	size: breachSize.optional(),
	share: quantity({
		unit: "",
		what: "a share",
		example: "0.6",
		above: "0",
		to: "1",
		description: "share of the port that a clog closes",
	}).optional(),
	for: duration(
		"how long the unit is off, or a bleed lasts",
		"0.1 min",
		"28 d",
		"30 min",
	).optional(),
	volume: quantity({
		unit: "mL",
		what: "a volume",
		example: "120 mL",
		above: "0 mL",
		to: "10 L",
		description: "volume of a bleed",
	}).optional(),
}).meta({
	allOf: Object.entries(details).map(([what, required]) => ({
		if: { properties: { what: { const: what } }, required: ["what"] },
		// biome-ignore lint/suspicious/noThenProperty: a key of JSON Schema
		then: { required },
	})),
});
