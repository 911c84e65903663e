import * as z from "zod";
import { choice, count, name, record, text } from "./leaf.ts";
import { quantity } from "./quantity.ts";
import type { CauseName } from "./rehearsal-plan.ts";
import { breachSize } from "./schema-happening.ts";
import { duration } from "./schema-regimen.ts";

/** Which keys a hidden cause takes beside `cause`: those it needs, and those it may have. */
export const causeDetails = {
	"fill-line-kinked": { needs: ["at"], may: ["within", "lasts"] },
	"suction-line-kinked": { needs: ["at"], may: ["within", "lasts"] },
	"port-clogged": { needs: ["at", "share"], may: ["within"] },
	"canister-full": { needs: ["holds"], may: [] },
	"source-empty": { needs: ["holds"], may: [] },
	"seal-breach": { needs: ["at", "size"], may: ["within"] },
	"dressing-dislodged": { needs: ["size"], may: [] },
	"left-off": { needs: ["at"], may: ["within", "lasts"] },
	bleeding: { needs: ["at", "volume", "lasts"], may: ["within"] },
} as const satisfies Record<
	CauseName,
	{ readonly needs: readonly string[]; readonly may: readonly string[] }
>;

export const causeNames = Object.keys(causeDetails) as [
	CauseName,
	...CauseName[],
]; // keys forgets the names

/** Most causes that one rehearsal hides. */
const mostCauses = 4;

const hidden = record("a hidden cause", {
	cause: choice(causeNames, "what is wrong"),
	at: duration(
		"when it comes, from the start of the shift",
		"0 min",
		"24 h",
		"70 min",
	).optional(),
	within: duration(
		"it comes at a moment drawn from this long after `at`",
		"0 min",
		"24 h",
		"40 min",
	).optional(),
	lasts: duration(
		"after which it is gone by itself, or a bleed is over",
		"0.1 min",
		"24 h",
		"12 min",
	).optional(),
	size: breachSize.optional(),
	share: quantity({
		unit: "",
		what: "a share",
		example: "0.9",
		above: "0",
		to: "1",
		description: "share of the port that debris closes",
	}).optional(),
	holds: quantity({
		unit: "mL",
		what: "a volume",
		example: "850 mL",
		from: "0 mL",
		to: "20 L",
		description: "content of canister or source at the start of the shift",
	}).optional(),
	volume: quantity({
		unit: "mL",
		what: "a volume",
		example: "300 mL",
		above: "0 mL",
		to: "10 L",
		description: "volume of a bleed",
	}).optional(),
});

const told = record("something told", {
	at: duration(
		"when the trainee hears it, from the start of the shift",
		"0 min",
		"24 h",
		"3 h",
	),
	says: text("a sentence", 500, "what the trainee hears"),
});

/** A shift to rehearse: what the trainee is told, and what is hidden. */
export const rehearsal = record("a rehearsal", {
	dressing: name(
		"the id of a dressing",
		"the dressing that is rehearsed; the first where it is left out",
	).optional(),
	brief: text("a brief", 1500, "what the trainee is told at the start"),
	transfer: duration(
		"when the patient is moved to another bed",
		"0 min",
		"24 h",
		"3 h",
	).optional(),
	told: z
		.array(told, { error: "a list of things told, each with at: and says:" })
		.max(50, { error: "at most 50 things told" })
		.optional()
		.meta({ description: "what the trainee hears during the shift" }),
	pace: count("a pace", 1, 600, "suggested pace, times real time").optional(),
	help: choice(
		["needed", "not-needed"],
		"whether calling for help is right; left out: it is where there is bleeding",
	).optional(),
	hides: z
		.array(hidden, { error: "a list of hidden causes, [] for none" })
		.max(mostCauses, { error: `at most ${mostCauses} hidden causes` })
		.meta({
			description: "what is wrong, unknown to the trainee; [] for none",
		}),
});
