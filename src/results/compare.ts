import * as z from "zod";
import { measuresAsRead, totalsAsRead } from "../vocabulary/index.ts";
import type { TracedDayResult } from "./day.ts";
import { canonicalJson, each, type Frozen } from "./format.ts";
import {
	atLeast0,
	atLeast1,
	drawn,
	numberOrNull,
	regimenSummary,
	restingOn,
	scenarioSummary,
	share,
	spread,
} from "./parts.ts";

const measure = z.enum(measuresAsRead);

const regimenResult = z.strictObject({
	name: z.string(),
	/** The regimen that the first dressing which it changes begins with; where it changes none, the first dressing of all. */
	regimen: regimenSummary,
	/** Dressings that begin with `regimen`; the others have their own, under `dressings`. */
	regimenOf: z.array(z.string()),
	/** Every dressing, then `all` where there are several: its settings are those that every dressing has, else null (and no regimens). */
	dressings: z.array(
		z.strictObject({
			id: z.string(),
			/** What it begins with: the first of `regimens`. */
			regimen: regimenSummary.nullable(),
			canisterMl: atLeast0.nullable(),
			sourceMl: atLeast0.nullable(),
			/** What they hold at the start. */
			canisterHoldsMl: atLeast0.nullable(),
			sourceLeftMl: atLeast0.nullable(),
			regimens: z.array(regimenSummary),
			totals: each(totalsAsRead, spread).strict(),
			/** Every measure, the totals again among them. */
			measures: each(measuresAsRead, spread).partial().strict(),
		}),
	),
});

/** What a pair of regimens differs in: `dressing` is the id of one, or `all`. */
const pair = { a: z.string(), b: z.string(), dressing: z.string(), measure };

/** How a pair differs in one measure. */
const verdictKind = z.enum([
	"differs", // the interval of the mean difference leaves nought out
	"none-found", // it does not
	"same", // nought in every replication
	"steady", // the same difference in all replications but few: its mean is not in doubt, but no interval is given
	"too-rare", // too few replications differ for an interval that holds
	"not-judged", // rests on rates that nobody has measured
]);

const difference = z.strictObject({
	...pair,
	/** `mL`, `min`, `` for a count, `share` for 0…1, or a currency. */
	unit: z.string(),
	meanA: z.number(),
	meanB: z.number(),
	/** a − b. */
	mean: z.number(),
	/** 95 % interval of the mean difference; null where none would hold. */
	low95: numberOrNull,
	high95: numberOrNull,
	replications: atLeast1,
	/** Share of replications in which a has more, and in which b has; the rest are equal. */
	shareAHigher: share,
	shareBHigher: share,
	/** Share of replications in which a does better; null where more is neither better nor worse. */
	shareABetter: share.nullable(),
	/** Variance of the difference within a replication: as it was, and as it would be for independent runs. */
	variance: z.strictObject({ paired: atLeast0, independent: atLeast0 }),
	kind: verdictKind,
	/** In words: `fewer: 0.04 (0.03 to 0.05)`, `no difference found at 0.1`. */
	verdict: z.string(),
});

/** One assumption at half and at twice its value (a cause without it, too), under the same random numbers. */
const restsOnRow = z.strictObject({
	name: z.string(),
	meaning: z.string(),
	value: z.number(),
	unit: z.string(),
	provenance: z.string(),
	/** Mean difference a − b of each dressing and measure; null where that setting cannot be run. */
	effects: z.array(
		z.strictObject({
			dressing: z.string(),
			measure,
			base: z.number(),
			half: numberOrNull,
			twice: numberOrNull,
			/** Without it: at 0, where it is an assumed rate or chance of something that goes wrong; else null. */
			without: numberOrNull,
			/** True where the verdict at half or twice is of another direction than that of the comparison: a difference that is lost, found or turned round. */
			turns: z.boolean(),
			/** As it stands the interval holds nought, at half or at twice it does not. */
			appears: z.boolean(),
			/** True where the verdict hangs on this one cause: without it the difference is lost or turned round, and at least half of it gone. */
			hangs: z.boolean(),
		}),
	),
});

const restsOn = z.strictObject({
	a: z.string(),
	b: z.string(),
	replications: atLeast1,
	rows: z.array(restsOnRow),
	/** Assumptions that were left out, and why. */
	leftOut: z.array(z.strictObject({ name: z.string(), why: z.string() })),
});

const precisionReached = z.strictObject({
	...pair,
	target: z.number().gt(0),
	/** Half the width of the interval; null where none is given. */
	halfWidth: numberOrNull,
	reached: z.boolean(),
});

/** What `compare --json` prints. */
export const compareFormat = z
	.strictObject({
		format: z.literal("slackwater/compare@1"),
		/** The scenario that the regimens are laid over. */
		scenario: scenarioSummary,
		replications: atLeast1,
		/** The day that is drawn of every regimen. */
		trace: drawn,
		/** Currency of `cost`; null where the scenario has no prices. */
		currency: z.string().nullable(),
		/** What the reader asked for, in order; every measure stands in `differences`. */
		measures: z.array(measure),
		regimens: z.array(regimenResult),
		/** Every pair of regimens, every dressing (and `all`, where there are several), every measure. */
		differences: z.array(difference),
		/** What the answer rests on: assumptions at half and at twice their value, for the first two regimens; null where it was not asked for. */
		restsOn: restsOn.nullable(),
		precision: z.array(precisionReached),
		...restingOn,
	})
	.meta({
		$id: "urn:slackwater:compare:1",
		title: "slackwater/compare@1",
		description:
			"Regimens of one scenario against each other on the same random numbers. Means and differences (a − b) are per horizon, volumes are mL, times min.",
	});

export type CompareResult = Frozen<z.infer<typeof compareFormat>>;
export type RegimenResult = Frozen<z.infer<typeof regimenResult>>;
export type VerdictKind = z.infer<typeof verdictKind>;
export type Difference = Frozen<z.infer<typeof difference>>;
export type RestsOn = Frozen<z.infer<typeof restsOn>>;
export type RestsOnRow = Frozen<z.infer<typeof restsOnRow>>;
export type PrecisionReached = Frozen<z.infer<typeof precisionReached>>;

export const compareJson = (result: CompareResult): string => canonicalJson(result, compareFormat);

/** What the report draws beside the numbers; not printed as JSON. */
export interface CompareDrawings {
	/** The traced day of each regimen (replication 0, the same patient), in the order of `regimens`. */
	readonly days: readonly TracedDayResult[];
	/** The first two hours of the first two regimens, on the first day in which they part there; null where nothing asks for them. */
	readonly firstHours: {
		readonly replication: number;
		readonly spanMin: number;
		/** Places in `regimens` of the two that are drawn. */
		readonly regimens: readonly number[];
		readonly days: readonly TracedDayResult[];
		/** Share of replications in which a leak comes in these hours, by regimen. */
		readonly leakShare: readonly number[];
	} | null;
}
