import fc from "fast-check";
import type { Scenario } from "../../src/scenario/index.ts";
import { totalsOf } from "../../src/studies/trace/totals.ts";
import { unobserved } from "../../src/therapy/base/observer.ts";
import { type DressingProcess, type Observer, TherapyDay } from "../../src/therapy/index.ts";
import { shortDwell, withDressing } from "../therapy/example.ts";

/** A day with nothing but one regimen on one dressing: chance off, no rounds, no turning, nothing scripted. */
export interface SteadyDay {
	readonly begin: "suction" | "fill";
	readonly depthMmHg: number;
	/** Share of the pump's flow. */
	readonly drawdown: number;
	readonly fillMl: number;
	readonly dwellMin: number;
	readonly suctionMin: number;
	readonly exudateMlPerDay: number;
	readonly foamVolumeMl: number;
	readonly canisterMl: number;
	readonly horizonMin: number;
	readonly startClockMin: number;
}

/** Numbers of no special place between two ends, so that no two boundaries fall together by arithmetic. */
export const between = (least: number, most: number) =>
	fc.integer({ min: 0, max: 1_000_000 }).map((n) => least + ((most - least) * (n + Math.SQRT1_2)) / 1_000_001);

/** Suction leaves a share of 0.08 in a foam that takes 0.34 of its volume, mL. */
export const retainedMl = (day: SteadyDay) => 0.08 * 0.34 * day.foamVolumeMl;

/** Fill, dwell and suction period, min; a fill runs at 60 mL/min. */
export const cycleMin = (day: SteadyDay) => day.fillMl / 60 + day.dwellMin + day.suctionMin;

/** More than ever comes into the dressing, mL. */
export const mostMl = (day: SteadyDay) =>
	(day.exudateMlPerDay * day.horizonMin) / 1440 + (Math.floor(day.horizonMin / cycleMin(day)) + 1) * day.fillMl;

/**
 * A steady day whose drains end within the suction period, whose exudate stays below a large output (200 mL in an hour)
 * and whose canister takes all that can come: no alarm is raised and no fill is withheld.
 */
export const steadyDay: fc.Arbitrary<SteadyDay> = fc
	.record({
		begin: fc.constantFrom<SteadyDay["begin"]>("suction", "fill"),
		depthMmHg: between(50, 175),
		drawdown: fc.constantFrom(0.05, 0.15, 0.5),
		fillMl: fc.oneof(between(5, 120), between(1, 10)),
		dwellMin: between(1, 30),
		suctionMin: between(20, 300),
		exudateMlPerDay: fc.oneof(between(3, 400), between(400, 3000)),
		foamVolumeMl: between(60, 400),
		horizonMin: between(300, 2880),
		startClockMin: fc.integer({ min: 0, max: 1439 }),
		spareMl: between(50, 1000),
	})
	.map(({ spareMl, ...day }) => ({ ...day, canisterMl: mostMl({ ...day, canisterMl: 0 }) + spareMl }));

/** The day as a scenario; its source is never exhausted. */
export function scenarioOf(day: SteadyDay): Scenario {
	const { begin, depthMmHg, drawdown, fillMl, dwellMin, suctionMin } = day;
	const { exudateMlPerDay, foamVolumeMl, canisterMl } = day;
	return withDressing(
		{
			exudateMlPerDay,
			foamVolumeMl,
			canisterMl,
			sourceMl: 1e6,
			regimens: [{ ...shortDwell, begin, depthMmHg, drawdown, fillMl, dwellMin, suctionMin }],
		},
		{ horizonMin: day.horizonMin, startClockMin: day.startClockMin },
	);
}

/** Runs replication 0 of a scenario; its first dressing at the end. */
export function ranOnce(scenario: Scenario, observer: Observer = unobserved): DressingProcess {
	const day = new TherapyDay(scenario, observer);
	day.run(0, observer);
	return day.processes[0];
}

/** Totals of the first dressing in replication 0. */
export const totalsOfDay = (scenario: Scenario) => totalsOf(ranOnce(scenario), scenario.horizonMin);

/** Minutes at which the first canister of the first dressing is at capacity, and is changed; Infinity: never. */
export function firstCanister(scenario: Scenario): { readonly fullAtMin: number; readonly changedAtMin: number } {
	let fullAtMin = Number.POSITIVE_INFINITY;
	let changedAtMin = Number.POSITIVE_INFINITY;
	ranOnce(scenario, {
		...unobserved,
		alarmStarts(_, condition, at) {
			if (condition === "canister-at-capacity") fullAtMin = Math.min(fullAtMin, at);
		},
		canisterChange(_, _reason, at) {
			changedAtMin = Math.min(changedAtMin, at);
		},
	});
	return { fullAtMin, changedAtMin };
}
