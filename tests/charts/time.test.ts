import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { thinnedCurve } from "../../src/charts/time/curve.ts";
import { timeTicks } from "../../src/charts/time/time-plot.ts";
import type { Clock } from "../../src/words/index.ts";

const clock = (horizonMin: number, startClockMin = 420): Clock => ({
	start: "2026-03-02T07:00",
	startClockMin,
	horizonMin,
});

describe("a curve is thinned without losing what matters", () => {
	const curves = fc.array(
		fc.tuple(fc.double({ min: 0, max: 5, noNaN: true }), fc.double({ min: -100, max: 100, noNaN: true })),
		{ minLength: 2, maxLength: 400 },
	);

	test("it has at most four points a bucket, in order of time, and keeps the least and the greatest value", () => {
		fc.assert(
			fc.property(curves, fc.integer({ min: 1, max: 20 }), (steps, buckets) => {
				let at = 0;
				const atMin = steps.map(([step]) => (at += step));
				const values = steps.map(([, value]) => value);
				const [from, to] = [atMin[0] ?? 0, (atMin.at(-1) ?? 0) + 1e-9];
				const thinned = thinnedCurve(atMin, values, from, to, buckets);
				expect(thinned.length).toBeLessThanOrEqual(Math.max(4 * buckets, 1));
				const times = thinned.map(([time]) => time);
				expect(times).toEqual(times.toSorted((a, b) => a - b));
				expect(Math.max(...thinned.map(([, value]) => value))).toBe(Math.max(...values));
				expect(Math.min(...thinned.map(([, value]) => value))).toBe(Math.min(...values));
			}),
		);
	});

	test("a cut through a line lies on the line, and a jump stays a jump", () => {
		expect(thinnedCurve([0, 10], [0, 100], 2, 4, 10)).toEqual([
			[2, 20],
			[4, 40],
		]);
		expect(thinnedCurve([0, 5, 5, 10], [1, 1, 9, 9], 0, 10, 10)).toEqual([
			[0, 1],
			[5, 1],
			[5, 9],
			[10, 9],
		]);
	});
});

describe("ticks of time", () => {
	test("a day from 07:00 is ticked at odd hours, shift boundaries among them, the date where it turns", () => {
		const ticks = timeTicks(0, 1440, clock(1440), 14);
		expect(ticks.map((tick) => tick.label)).toEqual([
			"07:00",
			"09:00",
			"11:00",
			"13:00",
			"15:00",
			"17:00",
			"19:00",
			"21:00",
			"23:00",
			"01:00",
			"03:00",
			"05:00",
			"07:00",
		]);
		expect(ticks.filter((tick) => tick.date !== "").map((tick) => [tick.label, tick.date])).toEqual([
			["01:00", "Tue 3 March"],
		]);
	});

	test("an hour is ticked in minutes, four weeks in days that name their month once", () => {
		expect(
			timeTicks(0, 60, clock(60), 14)
				.map((tick) => tick.label)
				.slice(0, 3),
		).toEqual(["07:00", "07:05", "07:10"]);
		const weeks = timeTicks(0, 28 * 1440, clock(28 * 1440), 16);
		expect(weeks.length).toBe(14);
		expect(weeks.map((tick) => tick.date).filter((date) => date !== "")).toEqual(["March"]);
	});

	test("from one hour to four weeks there are never more ticks than there is room", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 60, max: 28 * 1440 }),
				fc.integer({ min: 0, max: 1439 }),
				(horizonMin, startClockMin) => {
					const ticks = timeTicks(0, horizonMin, clock(horizonMin, startClockMin), 14);
					expect(ticks.length).toBeLessThanOrEqual(15);
					expect(ticks.every((tick) => tick.atMin >= -1e-6 && tick.atMin <= horizonMin + 1e-6)).toBe(true);
				},
			),
		);
	});
});
