import { describe, expect, test } from "vitest";
import {
	type Clock,
	clockTime,
	counted,
	depthWords,
	durationWords,
	figureWords,
	fullDate,
	percentWords,
	plainNumber,
	rangeWords,
	shiftsBetween,
	threeFigures,
	timeRange,
	timeSpan,
	volumeWords,
} from "../../src/words/index.ts";

const day: Clock = { start: "2026-03-02T07:00", startClockMin: 420, horizonMin: 1440 };
const month: Clock = { ...day, horizonMin: 28 * 1440 };

describe("clock times", () => {
	test.each([
		[0, "07:00"],
		[440, "14:20"],
		[125.833, "09:06"],
		[1019.6, "Tue 00:00"],
		[1150, "Tue 02:10"],
	])("%d min after 07:00 is %s on a day's chart", (atMin, words) => {
		expect(clockTime(atMin, day)).toBe(words);
	});

	test.each([
		[440, "Mon 2 March 14:20"],
		[1150, "Tue 3 March 02:10"],
		[27 * 1440, "Sun 29 March 07:00"],
		[30 * 1440, "Wed 1 April 07:00"],
	])("%d min is %s where the horizon is weeks", (atMin, words) => {
		expect(clockTime(atMin, month)).toBe(words);
	});

	test("a leap day and a turn of the year are named rightly", () => {
		expect(clockTime(1440, { start: "2028-02-28T07:00", startClockMin: 420, horizonMin: 4320 })).toBe(
			"Tue 29 February 07:00",
		);
		expect(fullDate(1, { start: "2026-12-31T23:30", startClockMin: 1410, horizonMin: 60 })).toBe("Fri 1 January 2027");
	});

	test("a range says its day once", () => {
		expect(timeRange(725, 880, day)).toBe("between 19:05 and 21:40");
		expect(timeRange(965, 1090, day)).toBe("between 23:05 and Tue 01:10");
		expect(timeRange(1085, 1180, day)).toBe("Tue between 01:05 and 02:40");
		expect(timeRange(720, 720.2, day)).toBe("at 19:00");
		expect(timeSpan(119, 129, month)).toBe("Mon 2 March 08:59 to 09:09");
		expect(timeSpan(1010, 1030, day)).toBe("23:50 to Tue 00:10");
	});
});

describe("durations", () => {
	test.each([
		[0, "0 s"],
		[0.51, "31 s"],
		[0.995, "1 min"],
		[5, "5 min"],
		[5.83, "5.8 min"],
		[9.96, "10 min"],
		[17.3, "17 min"],
		[59.7, "1 h"],
		[120, "2 h"],
		[150, "2 h 30 min"],
		[2880, "2 d"],
		[4560, "3 d 4 h"],
		[-5, "−5 min"],
	])("%d min is %s", (minutes, words) => {
		expect(durationWords(minutes)).toBe(words);
	});
});

describe("quantities", () => {
	test("volumes carry the digits that matter", () => {
		expect([0.04, 4.26, 9.96, 550.4, 12_360].map(volumeWords)).toEqual(["0 mL", "4.3 mL", "10 mL", "550 mL", "12.4 L"]);
	});

	test("a depth is written signed, with a true minus", () => {
		expect(depthWords(125)).toBe("−125 mmHg");
		expect(depthWords(0)).toBe("0 mmHg");
	});

	test("zero has no sign and no trailing zeros stay", () => {
		expect(plainNumber(-0.001, 2)).toBe("0");
		expect(plainNumber(-3.2, 2)).toBe("−3.2");
		expect(plainNumber(2.5, 3)).toBe("2.5");
	});

	test("one is one and the rest are many", () => {
		expect([1, 0, 11, 2.5].map((count) => counted(count, "fill"))).toEqual([
			"1 fill",
			"0 fills",
			"11 fills",
			"2.5 fills",
		]);
	});

	test("probabilities keep certain and impossible apart from nearly so", () => {
		expect([0, 0.003, 0.184, 0.996, 1].map(percentWords)).toEqual(["0 %", "<1 %", "18 %", ">99 %", "100 %"]);
	});

	test("a range of one value is a value", () => {
		expect(rangeWords(4, 12, (value) => plainNumber(value, 0), "mL")).toBe("between 4 and 12 mL");
		expect(rangeWords(9.1, 9.2, (value) => plainNumber(value, 0), "mL")).toBe("9 mL");
	});
});

test("three figures are shown of the largest number, and no unit stands alone", () => {
	expect([[0], [0.0123], [1.5, 0.2], [42], [1234]].map(threeFigures)).toEqual([0, 4, 2, 1, 0]);
	expect(figureWords(-0.04, 2, "a day")).toBe("−0.04 a day");
	expect(figureWords(Number.NaN, 2, "a day")).toBe("none");
});

test("night is from 19:00 to 07:00, wherever a scenario starts", () => {
	expect(shiftsBetween(0, 1440, day)).toEqual([
		{ shift: "day", startMin: 0, endMin: 720 },
		{ shift: "night", startMin: 720, endMin: 1440 },
	]);
	expect(shiftsBetween(0, 600, { ...day, startClockMin: 120, horizonMin: 600 })).toEqual([
		{ shift: "night", startMin: 0, endMin: 300 },
		{ shift: "day", startMin: 300, endMin: 600 },
	]);
});
