import * as z from "zod";
import { provenances } from "../physics/constants.ts";
import { acts, causeNames, places, revelations, shiftEnds, totalNames, troubleEnds } from "../vocabulary/index.ts";
import { dressingDay } from "./day.ts";
import { canonicalJson, each, type Frozen } from "./format.ts";
import { atLeast0, share, span } from "./parts.ts";

const text = z.string();
const minutesOrNull = atLeast0.nullable();

/**
 * How likely each kind of cause is, likeliest first, and that nothing is wrong now. A bleed that has stopped is still one:
 * it counts until a clinician has it.
 */
const likelihoods = z.object({
	causes: z.array(z.object({ cause: z.enum(causeNames), probability: share })),
	nothing: share,
	/** Number of equally likely courses that this rests on: with few of them the probabilities are coarse. */
	courses: z.number().min(1),
});

/** A cause with what became of it; null for what did not come about. */
const causeCourse = z.object({
	cause: z.enum(causeNames),
	words: text,
	onsetMin: minutesOrNull,
	/** The first alarm that it raised. */
	signMin: minutesOrNull,
	noticedMin: minutesOrNull,
	foundMin: minutesOrNull,
	foundAt: z.enum(places).nullable(),
	endMin: minutesOrNull,
	endedBy: z.enum(troubleEnds).nullable(),
	/** From its onset. */
	minutesToNotice: minutesOrNull,
	minutesToFind: minutesOrNull,
	minutesToMend: minutesOrNull,
});

/** What went on where the wound bled. */
const bleeding = z.object({
	/** Minutes that the therapy ran while it bled, and washes that began meanwhile. */
	therapyMin: atLeast0,
	washes: z.int().min(0),
	/** Minutes that it ran from when fresh blood was found until the end; null: none was found. */
	therapyAfterFoundMin: minutesOrNull,
	/** The therapy was stopped by hand, in the bleed or after. */
	stopped: z.boolean(),
});

/** A look or an act, with why it was not needed ("" where it was) and, after a look, what could be believed. */
const loggedEntry = z.object({
	kind: z.enum(["look", "act"]),
	what: z.enum([...places, ...acts]),
	...span,
	/** Its beginning on the clock, and the same with its end. */
	clock: text,
	span: text,
	answer: text,
	needless: text,
	/** A union: its keys stand by name in the text. */
	belief: z.union([likelihoods, z.null()]),
	/** The same in words; "" where there is none. */
	believed: text,
});

/** One look of an orderly search: what was believed before it, what it cost and what came of it. */
const searchStep = z.object({
	place: z.enum(places),
	startMin: atLeast0,
	minutes: atLeast0,
	/** Probability that this look would show a cause. */
	chance: share,
	code: z.int().min(0).max(3),
	before: likelihoods,
	after: likelihoods,
});

/** An act that was done, with its time. */
const deed = z.object({ act: z.enum(acts), ...span });

/** How somebody who searches would have fared in the same shift. */
const searchStage = z.object({
	/** When the search began, and whether an alarm had called for it (else it was the first round after the cause). */
	startMin: atLeast0,
	sign: z.boolean(),
	steps: z.array(searchStep),
	deeds: z.array(deed),
	/** When no alarm stood any more, or a clinician had taken over; null: not within the shift. */
	mendedMin: minutesOrNull,
});

const { id, phases, alarms, curve } = dressingDay.shape;

/** What a rehearsal came to. */
export const debriefFormat = z
	.object({
		format: z.literal("slackwater/debrief@1"),
		case: z.object({
			title: text,
			brief: text,
			seed: text,
			start: text,
			startClockMin: atLeast0,
			horizonMin: atLeast0,
			endedMin: atLeast0,
			ended: z.enum(shiftEnds),
			revealed: z.array(z.enum(revelations)),
		}),
		/** The day in sentences. */
		facts: z.array(text),
		causes: z.array(causeCourse),
		help: z.object({
			needed: z.boolean(),
			calledMin: minutesOrNull,
			cameMin: minutesOrNull,
			/** Minutes from when it was needed until it was called. */
			afterMin: z.number().nullable().describe("Negative where help was called before it was needed."),
		}),
		/** null: it did not bleed. A union: its keys stand by name in the text. */
		bleeding: z.union([bleeding, z.null()]),
		offSuction: z.object({
			/** The most within any 24 h. */
			minutes: atLeast0,
			limitMin: atLeast0,
			spells: z.array(z.object(span)),
		}),
		log: z.array(loggedEntry),
		/** What orderly searches would have been in the same shift, each from an alarm on, or from a round where none came. */
		search: z.object({
			stages: z.array(searchStage),
			sentences: z.array(text),
			/** How all that is said of likelihood is to be read. */
			note: text,
		}),
		day: z.object({
			id,
			regimen: z.object({ depthMmHg: atLeast0, fillMl: atLeast0 }),
			phases,
			alarms,
			curve,
			totals: each([...totalNames].sort(), z.number()),
		}),
		assumptions: z.array(
			z.object({ name: text, value: z.number(), unit: text, provenance: z.enum(provenances), source: text }),
		),
		cautions: z.array(text),
	})
	.meta({
		$id: "urn:slackwater:debrief:1",
		title: "slackwater/debrief@1",
		description:
			"What a rehearsal came to. Minutes count from the start of the shift, volumes are mL, depth is positive below ambient.",
	});

export type Debrief = Frozen<z.infer<typeof debriefFormat>>;
export type Likelihoods = Frozen<z.infer<typeof likelihoods>>;
export type CauseCourse = Frozen<z.infer<typeof causeCourse>>;
export type LoggedEntry = Frozen<z.infer<typeof loggedEntry>>;
export type SearchStep = Frozen<z.infer<typeof searchStep>>;
export type SearchStage = Frozen<z.infer<typeof searchStage>>;
export type Deed = Frozen<z.infer<typeof deed>>;

export const debriefJson = (debrief: Debrief): string => canonicalJson(debrief, debriefFormat);
