import * as z from "zod";
import { provenances } from "../physics/constants.ts";
import type { HappeningKind } from "../vocabulary/index.ts";
import type { Frozen } from "./format.ts";

export const count = z.int().min(0);
export const atLeast0 = z.number().min(0);
export const atLeast1 = z.int().min(1);
export const share = z.number().min(0).max(1);
export const numberOrNull = z.number().nullable();
/** The same for each of three quantiles. */
export const quantiles = <S extends z.ZodType>(of: S) => ({ p10: of, p50: of, p90: of });
export const quantilesMl = <S extends z.ZodType>(of: S) => ({ p10Ml: of, p50Ml: of, p90Ml: of });
export const span = { startMin: atLeast0, endMin: atLeast0 };

export const regimenSummary = z.object({
	fromMin: atLeast0,
	begin: z.enum(["suction", "fill"]),
	/** Positive, below ambient. */
	depthMmHg: atLeast0,
	fillMl: atLeast0,
	dwellMin: numberOrNull,
	suctionMin: numberOrNull,
	/** Share of the pump's flow that is let work in a drawdown, 0…1. */
	drawdown: z.number().gt(0).max(1),
	/** Time that it takes to the set depth with the canister as at the start and a sound seal; null where the pump is let work freely before. */
	drawdownSec: numberOrNull,
});

const dressingSummary = z.object({
	id: z.string(),
	patient: z.string(),
	tissue: z.string(),
	foamVolumeMl: atLeast0,
	capacityMl: atLeast0,
	exudateMlPerDay: atLeast0,
	slough: z.string(),
	difficulty: z.string(),
	canisterMl: atLeast0,
	sourceMl: atLeast0,
	/** What the canister holds and what is left in the source at the start. */
	canisterHoldsMl: atLeast0,
	sourceLeftMl: atLeast0,
	regimens: z.array(regimenSummary),
});

/** Something that the scenario lists: planned, as a transfer is, or a failure to be looked at. */
const listedHappening = z.object({
	atMin: atLeast0,
	dressing: z.string(),
	/** Whoever reads it is promised a text, so that more kinds may come: hence the cast. */
	what: z.string() as z.ZodType<string> as z.ZodType<HappeningKind>,
	/** How long it lasts; null where it has no length of its own. */
	forMin: numberOrNull,
	planned: z.boolean(),
});

export const supply = z.object({
	/** e.g. `canister 1000 mL`, `solution 1000 mL`, `fill line`, `dressing kit`, `suction port`. */
	item: z.string(),
	p50: atLeast0,
	p90: atLeast0,
	packSize: numberOrNull,
	/** Whole packs that cover P90. */
	packs: numberOrNull,
});

export const scenarioSummary = z.object({
	title: z.string(),
	seed: z.string(),
	version: z.string(),
	start: z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/),
	/** Minutes after midnight at the start. */
	startClockMin: z.number().min(0).lt(1440),
	horizonMin: z.number().gt(0),
	replications: atLeast1,
	chance: z.enum(["on", "off"]),
	solution: z.string(),
	dressings: z.array(dressingSummary),
	roundsClockMin: z.array(atLeast0),
	/** What the scenario lists, in order of time; dressing changes listed under care among them. */
	happenings: z.array(listedHappening),
	/** Supplies of the horizon at P90, one row an item; packs are given where the scenario has pack sizes. */
	supplies: z.array(supply),
});

/** Which replication is drawn. */
export const drawn = z.object({
	/** Its number, counted from 0. */
	replication: count,
	/** It is the one nearest the median of the first so many; null where it was asked for by its number. */
	typicalOf: atLeast1.nullable(),
});

export const spread = z.object({
	mean: z.number(),
	/** Student's 95 % half-width of the mean; null below two replications. */
	halfWidth95: numberOrNull,
	...quantiles(z.number()),
	/** 95 % intervals of P10, P50 and P90 from order statistics; a bound is null where the values do not reach far enough. */
	quantiles95: z.array(z.object({ low: numberOrNull, high: numberOrNull })).optional(),
});

/** Quantiles are among the replications in which the change occurs. */
export const changeTime = z.object({
	ordinal: atLeast1,
	p10Min: atLeast0,
	p50Min: atLeast0,
	p90Min: atLeast0,
	probabilityWithinHorizon: share,
});

const caution = z.object({
	/** e.g. `planning-only`, `depth-outside-range`, `fill-above-capacity`, `off-suction`, `not-returned`. */
	code: z.string(),
	text: z.string(),
	/** The dressing it concerns; absent for the day as a whole. */
	dressing: z.string().optional(),
});

const assumption = z.object({
	/** A name of section 11 of the model, or the path of a defaulted value of the scenario. */
	name: z.string(),
	value: z.union([z.number(), z.string()]),
	unit: z.string(),
	provenance: z.enum(provenances),
	source: z.string(),
	meaning: z.string(),
	/** True where the scenario did not give it. */
	defaulted: z.boolean(),
});

/** How every result ends. */
export const restingOn = { cautions: z.array(caution), assumptions: z.array(assumption) };

export type RegimenSummary = Frozen<z.infer<typeof regimenSummary>>;
export type DressingSummary = Frozen<z.infer<typeof dressingSummary>>;
export type ListedHappening = Frozen<z.infer<typeof listedHappening>>;
export type Supply = Frozen<z.infer<typeof supply>>;
export type ScenarioSummary = Frozen<z.infer<typeof scenarioSummary>>;
export type Drawn = Frozen<z.infer<typeof drawn>>;
export type Spread = Frozen<z.infer<typeof spread>>;
export type ChangeTime = Frozen<z.infer<typeof changeTime>>;
export type Caution = Frozen<z.infer<typeof caution>>;
export type Assumption = Frozen<z.infer<typeof assumption>>;
