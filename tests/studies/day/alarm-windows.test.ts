import { describe, expect, test } from "vitest";
import { alarmWindows, likelyLevel } from "../../../src/studies/day/alarm-windows.ts";

/** Half-hours of the given probabilities from the start of the day. */
const halfHours = (...probabilities: number[]) =>
	probabilities.map((probability, i) => ({
		startMin: 30 * i,
		endMin: 30 * (i + 1),
		// What the scenario lists counts among all, not by chance.
		probability: Math.min(1, probability + 0.2),
		chance: probability,
		low: 0,
		high: 1,
	}));

describe("likely windows of an alarm", () => {
	test("are runs of half-hours whose chance is above the level, each with its peak", () => {
		expect(alarmWindows(halfHours(0.06, 0.2, 0.1, 0.01, 0, 0.07, 0.04))).toEqual([
			{ startMin: 0, endMin: 90, peakProbability: 0.2 },
			{ startMin: 150, endMin: 180, peakProbability: 0.07 },
		]);
	});

	test("need more than the level, one in twenty by default", () => {
		expect(likelyLevel).toBe(0.05);
		expect(alarmWindows(halfHours(0.05, 0.05))).toEqual([]);
		expect(alarmWindows(halfHours(0.05, 0.0501)).length).toBe(1);
		expect(alarmWindows(halfHours(0.05, 0.05), 0.01)).toEqual([{ startMin: 0, endMin: 60, peakProbability: 0.05 }]);
	});

	test("may span the whole day, its cut last half-hour too, and may be none", () => {
		expect(alarmWindows([])).toEqual([]);
		expect(alarmWindows(halfHours(0, 0, 0))).toEqual([]);
		const day = halfHours(...new Array(24).fill(0.5));
		day[23].endMin = 707;
		expect(alarmWindows(day)).toEqual([{ startMin: 0, endMin: 707, peakProbability: 0.5 }]);
	});

	test("do not join across half-hours that are not neighbours", () => {
		const [first, , third] = halfHours(0.3, 0, 0.4);
		expect(alarmWindows([first, third]).length).toBe(2);
	});

	test("leave the bins as they were", () => {
		const bins = halfHours(0.3, 0.4);
		alarmWindows(bins);
		expect(bins).toEqual(halfHours(0.3, 0.4));
	});
});
