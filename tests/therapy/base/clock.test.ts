import { describe, expect, test } from "vitest";
import { clockOf, isNight, nextClock } from "../../../src/therapy/base/clock.ts";
import { orderMoment, weekdayAt } from "../../../src/ward/order-moment.ts";

const never = Number.POSITIVE_INFINITY;

describe("the clock", () => {
	test("runs on over midnights, and back over them", () => {
		expect([0, 1439, 1440, 3000, -1, -1441].map(clockOf)).toEqual([0, 1439, 0, 120, 1439, 1439]);
	});

	test("it is night from 19:00, and day from 07:00", () => {
		const at = (hours: number, minutes = 0) => isNight(60 * hours + minutes);
		expect([at(6, 59), at(7), at(12), at(18, 59)]).toEqual([true, false, false, false]);
		expect([at(19), at(23, 59), at(0), at(48 + 6), at(48 + 8)]).toEqual([true, true, true, true, false]);
	});

	test("the next round is the soonest of its hours, now if it is one", () => {
		// A day that begins at 09:00 with rounds at 06:00, 14:00 and 22:00.
		const rounds = [360, 840, 1320];
		const next = (from: number) => nextClock(from, 540, rounds);
		expect([0, 300, 300.5, 781, 1261, 1740, 1741].map(next)).toEqual([300, 300, 780, 1260, 1740, 1740, 2220]);
		expect(nextClock(0, 540, [])).toBe(never);
		expect(nextClock(-10, 540, [540])).toBe(0);
	});
});

describe("when orders go out", () => {
	// Time 0 is Thursday at 10:00.
	const clock = { startClockMin: 600, startWeekday: 3 };

	test("the week runs on from the day it began with, and back", () => {
		const at = [-601, -600, 0, 839, 840, 840 + 3 * 1440, 7 * 1440];
		expect(at.map((time) => weekdayAt(time, clock))).toEqual([2, 3, 3, 3, 4, 0, 3]);
		expect(weekdayAt(-30 * 1440, clock)).toBe(1);
	});

	test("at once where any day will do", () => {
		expect(orderMoment(17.5, { orderDays: null, cutOffClockMin: 0 }, clock)).toBe(17.5);
	});

	test("else at the next cut-off of an order day, at that very minute too", () => {
		// Monday and Thursday at 12:00: Thursday's is at minute 120, Monday's four days later.
		const item = { orderDays: [0, 3], cutOffClockMin: 720 };
		const next = (from: number) => orderMoment(from, item, clock);
		const monday = 120 + 4 * 1440;
		expect([0, 120, 121, monday, monday + 1].map(next)).toEqual([120, 120, monday, monday, monday + 3 * 1440]);
		// A cut-off that has passed when time begins comes tomorrow.
		expect(orderMoment(0, { orderDays: [4], cutOffClockMin: 540 }, clock)).toBe(1380);
	});
});
