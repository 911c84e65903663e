import type { DayResult } from "../../src/analysis/day-result.ts";
import {
	canisterChart,
	heatStrip,
	sparkline,
	type WaterLineData,
	waterLineChart,
} from "../../src/charts/index.ts";
import type { Example } from "./example.ts";
import {
	dayResult,
	longWash,
	pairedDay,
	quietDay,
	stepDown,
	troubledDay,
} from "./fixture.ts";

/** The first dressing of a result, in the parts that charts take. */
export function parts(result: DayResult) {
	const [dressing, day, projection] = [
		result.scenario.dressings[0],
		result.dressings[0],
		result.projection.dressings[0],
	];
	if (dressing === undefined || day === undefined || projection === undefined)
		throw new Error("a result without a dressing");
	return { dressing, day, projection };
}

export const waterLineData = (result: DayResult): WaterLineData => ({
	title: result.scenario.title,
	clock: result.scenario,
	replications: result.projection.replications,
	roundShare: 0.8,
	...parts(result),
});

export const oneCycle = (): DayResult =>
	dayResult([{ horizonMin: 180 }], {
		title: "One cycle",
		replications: 1,
		chance: "off",
	});

const firstHour = (): DayResult =>
	dayResult([{ horizonMin: 60, suctionMin: 20 }], {
		title: "The first hour",
		replications: 1,
	});

/** A day whose first two hours hold a leak after the first drain, and another alarm later. */
export const leakEarly = (): DayResult =>
	dayResult(
		[
			{
				fillMl: 100,
				suctionMin: 20,
				alarms: [
					{
						condition: "seal-leak",
						priority: "medium",
						startMin: 28,
						endMin: 45,
						endedBy: "call",
					},
					{
						condition: "source-empty",
						priority: "medium",
						startMin: 300,
						endMin: 305,
						endedBy: "call",
					},
				],
			},
		],
		{ title: "The first two hours: 100 mL every 20 min", replications: 1 },
	);

export const quietHours = (): DayResult =>
	dayResult([{}], {
		title: "The first two hours: 50 mL every 2 h",
		replications: 1,
	});

/** Two days on the same span and the same heights. */
function firstHours(
	which: () => DayResult,
	other: () => DayResult,
): Example["draw"] {
	return (document, options) =>
		waterLineChart(
			{
				...waterLineData(which()),
				spanMin: 120,
				beside: [parts(other())],
			},
			document,
			options,
		);
}

const strip =
	(result: () => DayResult): Example["draw"] =>
	(document, options) =>
		heatStrip(
			{
				title: "When an alarm is likely",
				clock: result().scenario,
				alarms: parts(result()).projection.alarms,
				level: 0.05,
			},
			document,
			options,
		);

const waterLine = (
	name: string,
	result: () => DayResult,
): { name: string; draw: Example["draw"] } => ({
	name,
	draw: (document, options) =>
		waterLineChart(waterLineData(result()), document, options),
});

/** The charts of a day, as they stand in the gallery. */
export const dayExamples: readonly Example[] = [
	waterLine("water-line-one-cycle", oneCycle),
	waterLine("water-line-first-hour", firstHour),
	waterLine("water-line-quiet", quietDay),
	waterLine("water-line-troubled", troubledDay),
	waterLine("water-line-no-fill", stepDown),
	{
		name: "water-line-two-hours-long",
		draw: firstHours(quietHours, leakEarly),
	},
	{
		name: "water-line-two-hours-short",
		draw: firstHours(leakEarly, quietHours),
	},
	{ name: "heat-strip-day", draw: strip(troubledDay) },
	{ name: "heat-strip-weeks", draw: strip(longWash) },
	{
		name: "canister",
		draw: (document, options) => {
			const result = troubledDay();
			const { dressing, projection } = parts(result);
			return canisterChart(
				{
					title: "Canister of the thigh",
					clock: result.scenario,
					canisterMl: dressing.canisterMl,
					roundShare: 0.8,
					band: projection.canisterLevel,
					changes: projection.canisterChanges,
				},
				document,
				options,
			);
		},
	},
	{
		name: "sparkline",
		draw: (document, options) =>
			sparkline(
				{ day: parts(pairedDay()).day, horizonMin: 1440 },
				document,
				options,
			),
	},
];
