import fc from "fast-check";
import { constantsWith } from "../../src/physics/index.ts";
import type { Dressing, Happening, Regimen, Scenario } from "../../src/scenario/index.ts";
import { reference, shortDwell, thigh } from "../therapy/example.ts";

const tenths = (least: number, most: number) => fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);

const moment = tenths(0, 1400).map((min) => min + 0.0071);

const regimen: fc.Arbitrary<Regimen> = fc
	.record({
		begin: fc.constantFrom<"suction" | "fill">("suction", "suction", "fill"),
		depthMmHg: fc.constantFrom(50, 75, 100, 125, 150, 175),
		fillMl: fc.constantFrom(0, 20, 35, 50, 50, 60, 90, 120),
		dwellMin: tenths(1, 30),
		suctionMin: tenths(20, 300).map((min) => min + 0.0137), // off the grid: no two events by mere arithmetic at one instant
		drawdown: fc.constantFrom(0.005, 0.02, 0.05, 0.15, 0.15, 0.5, 1),
	})
	.map((r) => ({
		...shortDwell,
		...r,
		dwellMin: r.fillMl === 0 ? 0 : r.dwellMin,
		suctionMin: r.fillMl === 0 ? Number.POSITIVE_INFINITY : r.suctionMin,
	}));

const regimens: fc.Arbitrary<Regimen[]> = fc.oneof(
	{ weight: 3, arbitrary: regimen.map((r) => [r]) },
	{
		weight: 1,
		arbitrary: fc.tuple(regimen, regimen, tenths(200, 1200)).map(([a, b, fromMin]) => [a, { ...b, fromMin }]),
	},
);

const dressing: fc.Arbitrary<Dressing> = fc
	.record({
		exudateMlPerDay: fc.constantFrom(3.1, 41, 162, 403, 1207, 2951),
		slough: fc.constantFrom<"clean" | "ordinary" | "heavy">("clean", "ordinary", "heavy"),
		difficulty: fc.constantFrom<"easy" | "ordinary" | "awkward">("easy", "ordinary", "awkward"),
		outflow: fc.constantFrom(null, null, null, { totalMlPerDay: 400, burstsPerDay: 12 }),
		foamVolumeMl: fc.constantFrom(60, 150, 240, 400),
		canisterMl: fc.constantFrom(300, 500, 1000),
		sourceMl: fc.constantFrom(130, 230, 500, 1000),
		/** Shares of the sizes. */
		holds: fc.constantFrom(0, 0, 0.23, 0.61, 0.87, 0.93),
		left: fc.constantFrom(null, null, 0, 0.07, 0.42, 0.77),
		ageMin: fc.constantFrom(0, 0, 600, 2000),
		regimens,
	})
	.map(({ holds, left, ...d }) => ({
		...thigh,
		...d,
		canisterHoldsMl: holds * d.canisterMl,
		sourceLeftMl: left === null ? null : left * d.sourceMl,
	}));

const happening: fc.Arbitrary<Happening> = fc.oneof(
	fc.record({
		atMin: moment,
		dressing: fc.constant("thigh"),
		what: fc.constantFrom(
			"kink-fill" as const,
			"kink-suction" as const,
			"canister-change" as const,
			"source-change" as const,
			"dressing-change" as const,
		),
	}),
	fc.record({
		atMin: moment,
		dressing: fc.constant("thigh"),
		what: fc.constant("breach" as const),
		size: fc.constantFrom(0.002, 0.01, 0.02, 0.05, 0.1),
	}),
	fc.record({
		atMin: moment,
		dressing: fc.constant("thigh"),
		what: fc.constant("clog" as const),
		share: fc.constantFrom(0.3, 0.6, 0.8, 0.9, 1),
	}),
	fc.record({
		atMin: moment,
		dressing: fc.constant("thigh"),
		what: fc.constant("off" as const),
		forMin: tenths(1, 60),
	}),
	fc.record({
		atMin: moment,
		dressing: fc.constant("thigh"),
		what: fc.constant("bleed" as const),
		volumeMl: fc.constantFrom(50, 200, 400),
		forMin: fc.constantFrom(5, 20, 60),
	}),
);

/** A day of one dressing with anything that may be scripted. Chance is off unless laid over. */
export const randomDay: fc.Arbitrary<Scenario> = fc
	.record({
		dressing,
		happenings: fc.array(happening, { maxLength: 5 }),
		roundsClockMin: fc.constantFrom([], [180, 420, 660, 900, 1140, 1380], [420, 1140]),
		nurses: fc.constantFrom(null, null, 1),
		everyMin: fc.constantFrom(null, null, 2880, 600),
	})
	.map(({ dressing: one, happenings, roundsClockMin, nurses, everyMin }) => ({
		...reference,
		dressings: [one],
		happenings,
		constants: constantsWith(),
		care: { ...reference.care, roundsClockMin, nurses, dressingChange: everyMin === null ? null : { everyMin } },
	}));
