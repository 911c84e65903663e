import type * as z from "zod";
import { constantFacts } from "../../physics/index.ts";
import { type CauseName, causeNames } from "../../vocabulary/index.ts";
import { defaults } from "../meaning/defaults.ts";
import type { HiddenCause, RehearsalPlan } from "../meaning/rehearsal-plan.ts";
import { choice, count, list, name, record, text } from "../reading/leaf.ts";
import { type Found, found, type Keys, received } from "../reading/problem.ts";
import { bound, duration, volume } from "../reading/quantity.ts";
import type { Fields } from "../reading/raw.ts";
import { again, asList, asMap, idOf, idsOf, read, readMl, stranger, wrongDetails } from "../reading/raw.ts";
import { bleedVolume, breachSize, closedShare } from "./happenings.ts";

const longestShift = "24 h";
const withinShift = "from 0 min to 24 h";

const samples = {
	at: 'when it comes, such as "70 min"',
	within: 'how much later it may come, such as "40 min"',
	lasts: 'how long it lasts, such as "12 min"',
	size: 'the leak it adds, such as "0.02 L/min/mmHg"',
	share: "the share of the port it closes, such as 0.9",
	holds: 'the content at the start of the shift, such as "850 mL"',
	volume: 'a volume such as "300 mL"',
};

type Detail = keyof typeof samples;

/** What must be said of each cause, and what may. */
const detailsOf: { readonly [C in CauseName]: { readonly [must in "needs" | "may"]: readonly Detail[] } } = {
	"fill-line-kinked": { needs: ["at"], may: ["within", "lasts"] },
	"suction-line-kinked": { needs: ["at"], may: ["within", "lasts"] },
	"port-clogged": { needs: ["at", "share"], may: ["within"] },
	"canister-full": { needs: ["holds"], may: [] },
	"source-empty": { needs: ["holds"], may: [] },
	"seal-breach": { needs: ["at", "size"], may: ["within"] },
	"dressing-dislodged": { needs: ["size"], may: [] },
	"left-off": { needs: ["at"], may: ["within", "lasts"] },
	bleeding: { needs: ["at", "volume", "lasts"], may: ["within"] },
};

const hidden = record("a hidden cause", {
	cause: choice(causeNames, "what is wrong"),
	at: duration("when it comes, from the start of the shift", withinShift, "70 min").optional(),
	within: duration("it comes at a moment drawn from this long after `at`", withinShift, "40 min").optional(),
	lasts: duration("after which it is gone by itself, or a bleed is over", "from 0.1 min to 24 h", "12 min").optional(),
	size: breachSize.optional(),
	share: closedShare("share of the port that debris closes", "0.9").optional(),
	holds: volume("content of canister or source at the start of the shift", "from 0 mL to 20 L", "850 mL").optional(),
	volume: bleedVolume("300 mL").optional(),
});

const told = record("something told", {
	at: duration("when the trainee hears it, from the start of the shift", withinShift, "3 h"),
	says: text("a sentence", 500, "what the trainee hears"),
});

/** A shift to rehearse: what the trainee is told, and what is hidden. */
export const rehearsal = record("a rehearsal", {
	dressing: name("the id of a dressing", "the dressing that is rehearsed; the first where it is left out").optional(),
	brief: text("a brief", 1500, "what the trainee is told at the start"),
	transfer: duration("when the patient is moved to another bed", withinShift, "3 h").optional(),
	told: list(told, "a list of things told, each with at: and says:", 50, "things told")
		.optional()
		.describe("what the trainee hears during the shift"),
	pace: count("a pace", 1, 600, "suggested pace, times real time").optional(),
	help: choice(
		["needed", "not-needed"],
		"whether calling for help is right; left out: it is where there is bleeding",
	).optional(),
	hides: list(hidden, "a list of hidden causes, [] for none", 4, "hidden causes").describe(
		"what is wrong, unknown to the trainee; [] for none",
	),
});

type RehearsalFile = z.output<typeof rehearsal>;

const anyTime = duration("", "from 0 min to 28 d", "1 h");

/** A rehearsal is of a dressing that is there, for a shift, and each cause carries the details of its kind, no others. */
export function crossRehearsal(root: Fields): Found[] {
	if (root.rehearsal === undefined) return [];
	const plan = asMap(root.rehearsal);
	const dressings = asList(root.dressings).map(asMap);
	const hides = asList(plan.hides).map(asMap);
	const causes = hides.map(({ cause }) => cause);
	const longestMin = bound(longestShift, "min");
	const horizonMin = read(anyTime, root.horizon) ?? longestMin;
	const late = (value: unknown, keys: Keys) => {
		const atMin = read(anyTime, value);
		return atMin !== undefined && atMin >= horizonMin
			? [found(keys, "a time before the shift ends", received(value))]
			: [];
	};
	const unit = asMap((dressings[idsOf(dressings).indexOf(idOf(plan.dressing))] ?? dressings[0])?.unit);
	const faults = stranger(plan.dressing, dressings, ["rehearsal", "dressing"]);
	const aShift = `a shift of at most ${longestShift}, since there is a rehearsal`;
	if (horizonMin > longestMin) faults.push(found(["horizon"], aShift, received(root.horizon)));
	if (asList(root.happenings).length > 0)
		faults.push(found(["happenings"], "none beside a rehearsal, whose hides: says what goes wrong", "some"));
	return [
		...faults,
		...late(plan.transfer, ["rehearsal", "transfer"]),
		...asList(plan.told).flatMap((item, i) => late(asMap(item).at, ["rehearsal", "told", i, "at"])),
		...hides.flatMap((cause, i) => {
			const keys = ["rehearsal", "hides", i];
			return [
				...crossCause(cause, keys, plan.transfer !== undefined),
				...late(cause.at, [...keys, "at"]),
				...crossContent(cause, [...keys, "holds"], unit),
			];
		}),
		// A second one of its kind would not be told from the first.
		...again(causes, "each cause once", (i) => ["rehearsal", "hides", i, "cause"]),
	];
}

function crossCause(hidden: Fields, keys: Keys, moved: boolean): Found[] {
	const cause = causeNames.find((known) => known === hidden.cause);
	if (cause === undefined) return [];
	const faults = wrongDetails(hidden, cause, detailsOf[cause], samples, keys);
	const when = "when the patient is moved, since a dressing is dislodged by it";
	if (cause === "dressing-dislodged" && !moved) faults.push(found(["rehearsal", "transfer"], when, "nothing"));
	return faults;
}

/** Above this share of its size a canister would be noted as nearly full when the shift begins. */
const mostHeld = constantFacts["notice.canister"].value;

function crossContent(hidden: Fields, keys: Keys, unit: Fields): Found[] {
	const full = hidden.cause === "canister-full";
	// A key without a value counts as the size by default.
	const ml = (written: unknown) => readMl(String(written ?? defaults["dressings[].unit.canister"].write));
	const most = full ? mostHeld * ml(unit.canister) : ml(unit.source);
	if (hidden.holds === undefined || !(ml(hidden.holds) > most)) return [];
	const expected = full ? `at most ${mostHeld * 100} % of the canister's size` : "at most the size of the source";
	return [found(keys, expected, received(hidden.holds))];
}

/** The rehearsal of a sound file; the dressing it names is among `dressings`. */
export function resolveRehearsal(file: RehearsalFile, dressings: readonly { readonly id: string }[]): RehearsalPlan {
	const named = dressings.findIndex(({ id }) => id === file.dressing);
	return {
		dressing: Math.max(0, named),
		brief: file.brief,
		transferMin: file.transfer ?? null,
		told: (file.told ?? []).map(({ at, says }) => ({ atMin: at, says })).sort((a, b) => a.atMin - b.atMin),
		pace: file.pace ?? null,
		help: file.help ?? null,
		hides: file.hides.map(resolveCause),
	};
}

function resolveCause(file: RehearsalFile["hides"][number]): HiddenCause {
	const { cause, size = 0, share = 0, holds: holdsMl = 0, volume: volumeMl = 0 } = file;
	const when = { atMin: file.at ?? 0, withinMin: file.within ?? 0 };
	const lastsMin = file.lasts ?? Number.POSITIVE_INFINITY;
	switch (cause) {
		case "fill-line-kinked":
		case "suction-line-kinked":
		case "left-off":
			return { cause, ...when, lastsMin };
		case "port-clogged":
			return { cause, ...when, share };
		case "seal-breach":
			return { cause, ...when, size };
		case "dressing-dislodged":
			return { cause, size };
		case "canister-full":
		case "source-empty":
			return { cause, holdsMl };
		case "bleeding":
			return { cause, ...when, volumeMl, lastsMin };
	}
}
