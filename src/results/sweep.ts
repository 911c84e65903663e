import * as z from "zod";
import { avoidedTimes, axisNames, measuresAsRead } from "../vocabulary/index.ts";
import { canonicalJson, each, type Frozen } from "./format.ts";
import { atLeast0, atLeast1, changeTime, count, numberOrNull, restingOn, scenarioSummary, share } from "./parts.ts";

const measure = z.enum(measuresAsRead);
const axisName = z.enum(axisNames);

const sweepAxis = z.strictObject({
	name: axisName,
	/** `min`, `mL`, `mmHg` (positive, below ambient), `clock` (minutes after midnight). */
	unit: z.string(),
	values: z.array(z.number()),
	/** The scenario's own value; it need not be among `values`. */
	current: z.number(),
});

const sweepValue = z.strictObject({
	mean: z.number(),
	halfWidth95: numberOrNull,
	/** Mean of this point less that of the scenario's own regimen, paired, and its half-width. */
	difference: z.number(),
	differenceHalfWidth95: numberOrNull,
});

/** Values of one point, the dressings together or the one that is varied. */
const sweepValues = z.object({ measures: each(measuresAsRead, sweepValue).partial().strict() });

const sweepClock = z.strictObject({
	/** Minutes from the start of the scenario. */
	canisterChanges: z.array(changeTime.omit({ ordinal: true })),
	/** Probability that an alarm of any condition that calls starts in the half-hour, from the start of the scenario. */
	alarmBins: z.array(share),
});

const sweepPoint = z.strictObject({
	/** Value on each axis, in the order of `axes`. */
	at: z.array(z.number()),
	/** True for the scenario's own regimen. */
	current: z.boolean(),
	/** True for the site's usual one, where the scenario names it. */
	usual: z.boolean(),
	/** Why it lies outside common practice, or is more than the foam takes; empty where it does not. */
	outside: z.array(z.string()),
	kept: z.boolean(),
	...sweepValues.shape,
	/** With the axis `start`: when the canister is likely to be changed, and the likely alarms, for the chart of beginnings. */
	clock: sweepClock.nullable(),
});

const sweepSettings = z.strictObject({
	depthMmHg: atLeast0,
	fillMl: atLeast0,
	dwellMin: numberOrNull,
	suctionMin: numberOrNull,
});

const sweepMark = z.strictObject({
	mark: z.enum(["current", "usual"]),
	/** Regimen in words of settings; of the first dressing that is varied where they have not all the same. */
	regimen: sweepSettings,
	/** Each dressing's own where they have not all the same; else none. */
	dressings: z.array(z.strictObject({ id: z.string(), ...sweepSettings.shape })),
	/** Place in `points`; null where it is not on the grid. */
	point: count.nullable(),
	...sweepValues.shape,
});

/** What `sweep --json` prints. */
export const sweepFormat = z
	.strictObject({
		format: z.literal("slackwater/sweep@1"),
		scenario: scenarioSummary,
		/** Replications at every point, the same random numbers at each. */
		replications: atLeast1,
		currency: z.string().nullable(),
		/** The dressing that is varied; `all` where it is every one of several. */
		dressing: z.string(),
		/** Axes with two values or more, in the order of `AxisName`. */
		axes: z.array(sweepAxis),
		/** What the maps show, in the order asked for. */
		measures: z.array(measure),
		/** The grid, the last axis running fastest. */
		points: z.array(sweepPoint),
		/** The scenario's own regimen, and the trade's usual one; they need not lie on the grid. */
		marks: z.array(sweepMark),
		constraints: z.array(
			z.strictObject({
				measure,
				test: z.enum(["<", "<=", ">", ">="]),
				limit: z.number(),
				/** Points that keep it. */
				kept: count,
			}),
		),
		efficient: z
			.strictObject({
				measures: z.array(z.strictObject({ measure, better: z.enum(["lower", "higher"]) })),
				/** Places in `points` of those that no other kept point betters in one measure without being worse in another. */
				points: z.array(count),
			})
			.nullable(),
		curve: z
			.strictObject({
				axis: axisName,
				/** Places in `points` along the axis, the other axes at the value nearest to the scenario's own. */
				points: z.array(count),
			})
			.nullable(),
		/** Stretches of the day that the ward keeps clear where it can, minutes after midnight. */
		avoid: each(avoidedTimes, z.array(z.object({ fromMin: atLeast0, toMin: atLeast0 }))),
		...restingOn,
	})
	.meta({
		$id: "urn:slackwater:sweep:1",
		title: "slackwater/sweep@1",
		description:
			"A grid of regimens, the same random numbers at every point. Means are per horizon, differences are from the scenario's own regimen; volumes are mL, times min, depths mmHg below ambient.",
	});

export type SweepResult = Frozen<z.infer<typeof sweepFormat>>;
export type SweepAxis = Frozen<z.infer<typeof sweepAxis>>;
export type SweepValue = Frozen<z.infer<typeof sweepValue>>;
export type SweepValues = Frozen<z.infer<typeof sweepValues>>;
export type SweepClock = Frozen<z.infer<typeof sweepClock>>;
export type SweepPoint = Frozen<z.infer<typeof sweepPoint>>;
export type SweepSettings = Frozen<z.infer<typeof sweepSettings>>;
export type SweepMark = Frozen<z.infer<typeof sweepMark>>;

export const sweepJson = (result: SweepResult): string => canonicalJson(result, sweepFormat);
