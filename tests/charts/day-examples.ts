import { canisterChart, heatStrip, sparkline, type WaterLineData, waterLineChart } from "../../src/charts/index.ts";
import type { DayResult } from "../../src/results/index.ts";
import { type Example, examplesOf } from "./example.ts";
import { dayResult, longWash, pairedDay, quietDay, stepDown, troubledDay } from "./fixture.ts";

/** The first dressing of a result, in the parts that charts take. */
function parts(result: DayResult) {
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
	dayResult([{ horizonMin: 180 }], { title: "One cycle", replications: 1, chance: "off" });

const firstHour = (): DayResult =>
	dayResult([{ horizonMin: 60, suctionMin: 20 }], { title: "The first hour", replications: 1 });

/** A day whose first two hours hold a leak after the first drain, and another alarm later. */
export const leakEarly = (): DayResult =>
	dayResult(
		[
			{
				fillMl: 100,
				suctionMin: 20,
				alarms: [
					{ condition: "seal-leak", priority: "medium", startMin: 28, endMin: 45, endedBy: "call" },
					{ condition: "source-empty", priority: "medium", startMin: 300, endMin: 305, endedBy: "call" },
				],
			},
		],
		{ title: "The first two hours: 100 mL every 20 min", replications: 1 },
	);

export const quietHours = (): DayResult =>
	dayResult([{}], { title: "The first two hours: 50 mL every 2 h", replications: 1 });

/** Two hours of a day, on the heights that another needs. */
export const twoHours = (which: DayResult, other: DayResult): WaterLineData => ({
	...waterLineData(which),
	spanMin: 120,
	beside: [parts(other)],
});

const strip = (result: DayResult) => ({
	title: "When an alarm is likely",
	clock: result.scenario,
	alarms: parts(result).projection.alarms,
	level: 0.05,
});

function canister(result: DayResult) {
	const { dressing, projection } = parts(result);
	return {
		title: "Canister of the thigh",
		clock: result.scenario,
		canisterMl: dressing.canisterMl,
		roundShare: 0.8,
		band: projection.canisterLevel,
		changes: projection.canisterChanges,
	};
}

/** The charts of a day, as they stand in the gallery. */
export const dayExamples: readonly Example[] = [
	...examplesOf(waterLineChart, {
		"water-line-one-cycle": waterLineData(oneCycle()),
		"water-line-first-hour": waterLineData(firstHour()),
		"water-line-quiet": waterLineData(quietDay()),
		"water-line-troubled": waterLineData(troubledDay()),
		"water-line-no-fill": waterLineData(stepDown()),
		"water-line-two-hours-long": twoHours(quietHours(), leakEarly()),
		"water-line-two-hours-short": twoHours(leakEarly(), quietHours()),
	}),
	...examplesOf(heatStrip, { "heat-strip-day": strip(troubledDay()), "heat-strip-weeks": strip(longWash()) }),
	...examplesOf(canisterChart, { canister: canister(troubledDay()) }),
	...examplesOf(sparkline, { sparkline: { day: parts(pairedDay()).day, horizonMin: 1440 } }),
];
