import * as z from "zod";
import {
	canisterReasons,
	conditions,
	endings,
	notices,
	pauseReasons,
	phases,
	priorities,
	sourceReasons,
	totalNames,
} from "../vocabulary/index.ts";
import { canonicalJson, each, type Frozen } from "./format.ts";
import {
	atLeast0,
	atLeast1,
	changeTime,
	count,
	drawn,
	numberOrNull,
	quantilesMl,
	restingOn,
	type ScenarioSummary,
	scenarioSummary,
	share,
	span,
	spread,
	supply,
} from "./parts.ts";

/** The curve of the day, for charts: columns of equal length, straight lines between rows (a jump is two rows at one time). */
const dayCurve = z.object({
	atMin: z.array(atLeast0),
	/** Positive, below ambient. */
	depthMmHg: z.array(z.number()),
	liquidMl: z.array(z.number()),
	canisterMl: z.array(z.number()),
	sourceMl: z.array(z.number()),
});

/** One day of one dressing, as it was traced. */
export const dressingDay = z.object({
	id: z.string(),
	phases: z.array(z.object({ phase: z.enum(phases), ...span })),
	pauses: z.array(z.object({ reason: z.enum(pauseReasons), ...span })),
	notices: z.array(z.object({ notice: z.enum(notices), atMin: atLeast0 })),
	alarms: z.array(
		z.object({ condition: z.enum(conditions), priority: z.enum(priorities), ...span, endedBy: z.enum(endings) }),
	),
	canisterChanges: z.array(z.object({ atMin: atLeast0, reason: z.enum(canisterReasons) })),
	sourceChanges: z.array(z.object({ atMin: atLeast0, reason: z.enum(sourceReasons), wastedMl: atLeast0 })),
	dressingChanges: z.array(z.object(span)),
	/** Later regimens, by their place in the dressing's list, as they took over: `fromMin` is their time, `atMin` when the running period let them. */
	takeovers: z.array(z.object({ regimen: count, fromMin: atLeast0, atMin: atLeast0 })),
	totals: each(totalNames, z.number()),
	curve: dayCurve,
});

/** The undisturbed day of one dressing: what is asked for and planned, with nothing left to chance. */
const schedule = dressingDay.omit({ id: true, notices: true, totals: true, curve: true });

/** A dressing of `day --json`: the drawn day, and the undisturbed one. */
const drawnDressing = dressingDay.extend({ schedule });

/** A stretch of time in which something is likely to come, and in how great a share of all days it does. */
const likelyTime = z.object({ ...span, probability: share });

const roundLevel = z.object({ atMin: atLeast0, ...quantilesMl(z.number()) });
const levelBand = z.object({ stepMin: z.number().gt(0), ...quantilesMl(z.array(z.number())) });

const perDay = { meanPerDay: atLeast0, halfWidth95: numberOrNull };

const alarmProjection = z.object({
	condition: z.enum(conditions),
	/** Alarms that start per 24 h. */
	...perDay,
	/** Those that chance brings, without what the scenario lists. */
	byChance: z.object(perDay),
	/**
	 * Half-hours from the start; probability that at least one such alarm starts in it, with its Wilson 95 % interval;
	 * `chance` is that of one that nothing listed brings.
	 */
	bins: z.array(z.object({ ...span, probability: share, low: share, high: share, chance: share })),
	/** Runs of bins whose `chance` is above the level (5 % by default). */
	windows: z.array(z.object({ ...span, peakProbability: share })),
});

const dressingProjection = z.object({
	id: z.string(),
	/** Per horizon. */
	totals: each(totalNames, spread),
	canisterChanges: z.array(changeTime),
	/** When a canister is at capacity or a round would change it, with the windows in which that is likeliest; listed changes are none. */
	canisterNeeds: z.array(changeTime.extend({ windows: z.array(likelyTime) })),
	/** When fills begin. */
	fills: z.array(changeTime),
	/** Content of the canister just before each round. */
	rounds: z.array(roundLevel),
	/** The same for the renewals of the source. */
	sourceChanges: z.array(changeTime),
	alarms: z.array(alarmProjection),
	/** What is in the canister at the horizon. */
	canisterAtEnd: z.object(quantilesMl(z.number())),
	/** Canister content over time (all replications), at equal steps from the start, for the band chart. */
	canisterLevel: levelBand,
});

const projection = z.object({ replications: atLeast1, dressings: z.array(dressingProjection) });

/** What is used in the first days at home: changes from the discharge on, and a canister and a source to begin with. */
const homeSupplies = z.object({ fromMin: atLeast0, forMin: atLeast0, supplies: z.array(supply) });

/** What `day --json` prints. */
export const dayFormat = z
	.object({
		format: z.literal("slackwater/day@1"),
		scenario: scenarioSummary,
		trace: drawn.extend({ events: count, hash: z.string() }),
		dressings: z.array(drawnDressing),
		projection,
		/** What to send home; null where the scenario names no discharge. A union: its keys stand by name in the text. */
		home: z.union([z.null(), homeSupplies]),
		...restingOn,
	})
	.meta({
		$id: "urn:slackwater:day:1",
		title: "slackwater/day@1",
		description: "What a day and its replications gave. Minutes count from the start of the scenario, volumes are mL.",
	});

export type DayResult = Frozen<z.infer<typeof dayFormat>>;
export type DayCurve = Frozen<z.infer<typeof dayCurve>>;
export type DressingDay = Frozen<z.infer<typeof dressingDay>>;
export type Totals = DressingDay["totals"];
export type Schedule = Frozen<z.infer<typeof schedule>>;
export type DrawnDressing = Frozen<z.infer<typeof drawnDressing>>;
export type LikelyTime = Frozen<z.infer<typeof likelyTime>>;
export type RoundLevel = Frozen<z.infer<typeof roundLevel>>;
export type LevelBand = Frozen<z.infer<typeof levelBand>>;
export type AlarmProjection = Frozen<z.infer<typeof alarmProjection>>;
export type DressingProjection = Frozen<z.infer<typeof dressingProjection>>;
export type Projection = Frozen<z.infer<typeof projection>>;
export type HomeSupplies = Frozen<z.infer<typeof homeSupplies>>;

/** One day as it was drawn, for a chart. */
export type TracedDayResult = { readonly scenario: ScenarioSummary; readonly dressings: readonly DressingDay[] };

export const dayJson = (result: DayResult): string => canonicalJson(result, dayFormat);
