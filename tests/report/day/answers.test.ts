import { describe, expect, test } from "vitest";
import { answers } from "../../../src/report/day/answers/answers.ts";
import type { DressingProjection } from "../../../src/results/index.ts";
import { sentenceText } from "../../../src/words/index.ts";
import { dayResult, longWash, quietDay, spreadAround, stepDown, troubledDay } from "../../charts/fixture.ts";
import { firstParts } from "./first-parts.ts";

/** The answers of the first dressing as plain text. */
const said = (...of: Parameters<typeof firstParts>): string[] => answers(firstParts(...of)).map(sentenceText);

const change = (
	p10Min: number,
	p50Min: number,
	p90Min: number,
	probabilityWithinHorizon: number,
	windows: DressingProjection["canisterNeeds"][number]["windows"] = [],
): DressingProjection["canisterNeeds"][number] => ({
	ordinal: 1,
	p10Min,
	p50Min,
	p90Min,
	probabilityWithinHorizon,
	windows,
});

describe("the canister", () => {
	test("is said to need changing between two times, with the likeliest", () => {
		expect(
			said(quietDay(), () => ({
				canisterNeeds: [
					change(725, 795, 880, 0.98, [
						{ startMin: 754, endMin: 758, probability: 0.42 },
						{ startMin: 880, endMin: 880, probability: 0.31 },
					]),
				],
			})),
		).toContain(
			"Canister: likely to need changing between 19:05 and 21:40, likeliest between 19:34 and 19:38 (42 % of the days) or at 21:40 (31 %).",
		);
	});

	test("has no likeliest time where one window is the whole range", () => {
		expect(
			said(quietDay(), () => ({
				canisterNeeds: [change(725, 795, 880, 0.98, [{ startMin: 720, endMin: 890, probability: 0.9 }])],
			})),
		).toContain("Canister: likely to need changing between 19:05 and 21:40.");
	});

	test("names the day of a likeliest time that lies before the range's own day", () => {
		expect(
			said(quietDay(), () => ({
				canisterNeeds: [
					change(1054, 1200, 1380, 0.98, [
						{ startMin: 960, endMin: 960, probability: 0.17 },
						{ startMin: 1196, endMin: 1200, probability: 0.3 },
					]),
				],
			}))[0],
		).toBe(
			"Canister: likely to need changing Tue between 00:34 and 06:00, likeliest Mon at 23:00 (17 % of the days) or Tue between 02:56 and 03:00 (30 %).",
		);
	});

	test("is said to be due when it is, not when it has been changed", () => {
		const sentences = said(quietDay(), () => ({
			canisterChanges: [change(100, 100, 100, 1)],
			canisterNeeds: [change(90, 90, 90, 1)],
		}));
		expect(sentences).toContain("Canister: likely to need changing at 08:30.");
	});

	test("may need changing where it does in some of the days", () => {
		expect(
			said(quietDay(), () => ({
				canisterNeeds: [change(1200, 1320, 1420, 0.54, [{ startMin: 1300, endMin: 1322, probability: 0.25 }])],
			})),
		).toContain(
			"Canister: may need changing (54 %); if so, Tue between 03:00 and 06:40, likeliest between 04:40 and 05:02 (25 % of the days).",
		);
	});

	test("needs no change where hardly any day has one, and its content is said", () => {
		expect(said(quietDay(), () => ({ canisterNeeds: [change(1400, 1410, 1420, 0.004)] }))).toContain(
			"Canister: no change likely before Tue 07:00 (<1 %); 706 mL (between 635 mL and 776 mL) of its 1000 mL will be in it.",
		);
	});

	test("names the day, and how many changes there are, over weeks", () => {
		const [first] = said(longWash());
		expect(first).toBe(
			"Canister: likely to need changing Tue 3 March between 05:19 and 08:26, likeliest between 05:48 and 06:02 (40 % of the days) or at 07:00 (30 %). Over the whole time between 24 and 30 changes.",
		);
	});
});

describe("the solution", () => {
	test("is one bag, good to the end, where one is enough", () => {
		expect(said(quietDay())).toContain(
			"Solution: 550 mL in 11 fills (between 495 mL and 605 mL); have one 1000 mL bag, good until Tue 07:00.",
		);
	});

	test("is several bags where it is renewed, with the time of the first", () => {
		const sentences = said(quietDay(), (projection) => ({
			totals: { ...projection.totals, sourceChanges: { ...spreadAround(1), p90: 1 } },
			sourceChanges: [change(600, 630, 660, 0.4)],
		}));
		expect(sentences.find((sentence) => sentence.startsWith("Solution"))).toMatch(
			/have two 1000 mL bags; the first is renewed between 17:00 and 18:00 in 40 % of the days\.$/,
		);
	});

	test("of a single fill is one fill", () => {
		const result = dayResult([{ horizonMin: 180 }], { replications: 1 });
		expect(said(result).some((sentence) => sentence.includes("in 1 fill"))).toBe(true);
	});

	test("is not spoken of where nothing is filled", () => {
		const sentences = said(stepDown());
		expect(sentences.filter((sentence) => /Solution|come back/.test(sentence))).toEqual([]);
		expect(sentences.length).toBe(4);
	});
});

describe("alarms", () => {
	test("are likeliest in the window with the highest peak", () => {
		expect(
			said(troubledDay(), ({ alarms }) => ({ alarms: alarms.filter(({ condition }) => condition === "seal-leak") })),
		).toContain("An alarm is likeliest between 12:30 and 14:00: seal leak, up to 34 % in a half-hour.");
	});

	test("name a second window that is at least half as likely", () => {
		expect(
			said(troubledDay(), ({ alarms }) => ({
				alarms: alarms.map((alarm) =>
					alarm.condition === "canister-at-capacity"
						? { ...alarm, windows: [{ startMin: 600, endMin: 660, peakProbability: 0.2 }] }
						: alarm,
				),
			})),
		).toContain(
			"An alarm is likeliest between 12:30 and 14:00: seal leak, up to 34 % in a half-hour; then between 17:00 and 18:00: canister at capacity, up to 20 % in a half-hour.",
		);
	});

	test("stand out nowhere where no half-hour passes the level, and the commonest is named", () => {
		expect(said(quietDay())).toContain(
			"No time stands out for alarms: no half-hour passes 5 %. The commonest is seal leak, about 0.39 in 24 h (between 0.32 and 0.46).",
		);
	});

	test("that never came are said never to have come", () => {
		expect(said(dayResult([{}]))).toContain("No alarm came in any of 400 replications.");
	});

	test("of the one day are listed where nothing varies", () => {
		const calm = { ...troubledDay(), scenario: { ...troubledDay().scenario, chance: "off" as const } };
		expect(said(calm)).toContain(
			"Five alarms: 13:11 fill path obstructed, 13:25 seal leak, 16:20 suction absent and two more.",
		);
	});
});

describe("what hangs at the start", () => {
	/** A quiet day whose first dressing starts with so much. */
	const starting = (
		canisterHoldsMl: number,
		sourceLeftMl: number,
		change: (projection: DressingProjection) => Partial<DressingProjection> = () => ({}),
		result = quietDay(),
	): string[] => {
		const { scenario } = result;
		return said(
			{
				...result,
				scenario: {
					...scenario,
					dressings: scenario.dressings.map((dressing) => ({ ...dressing, canisterHoldsMl, sourceLeftMl })),
				},
			},
			change,
		);
	};

	test("is said to be an empty canister and a full bag", () => {
		expect(said(quietDay())).toContain("The canister is taken to be empty and the bag full at the start.");
		expect(said(stepDown())).toContain("The canister is taken to be empty at the start.");
	});

	test("is said as it is given", () => {
		expect(starting(120, 640)).toContain("The day starts with 120 mL in the canister and 640 mL left in the bag.");
		expect(starting(0, 640)).toContain("The day starts with an empty canister and 640 mL left in the bag.");
		expect(starting(120, 1000)).toContain("The day starts with 120 mL in the canister and a full bag.");
		expect(starting(120, 1000, undefined, stepDown())).toContain("The day starts with 120 mL in the canister.");
	});

	test("counts to what will be in the canister", () => {
		expect(
			starting(120, 1000, () => ({
				canisterNeeds: [change(1400, 1410, 1420, 0.004)],
				canisterAtEnd: { p10Ml: 755, p50Ml: 826, p90Ml: 896 },
			})),
		).toContain(
			"Canister: no change likely before Tue 07:00 (<1 %); 826 mL (between 755 mL and 896 mL) of its 1000 mL will be in it.",
		);
	});

	test("a bag that is part used is one that hangs, beside those to have", () => {
		const bags = (mean: number) => () => ({
			totals: { ...quietDay().projection.dressings[0].totals, sourceChanges: { ...spreadAround(mean), p90: mean } },
		});
		expect(starting(0, 640, bags(0)).join(" ")).toContain(
			"have no 1000 mL bags beside the one that hangs, with 640 mL left, which is good until Tue 07:00.",
		);
		expect(starting(0, 640, () => ({ ...bags(1)(), sourceChanges: [change(725, 795, 880, 0.98)] })).join(" ")).toMatch(
			/have one 1000 mL bag beside the one that hangs, with 640 mL left; the one that hangs is renewed between 19:05 and 21:40/u,
		);
	});
});

describe("honest words", () => {
	test("chance off has no ranges", () => {
		const [first] = said(dayResult([{}], { chance: "off", replications: 1 }));
		expect(first).toBe("Chance is off: nothing fails by itself and nothing varies, so there are no ranges.");
	});

	test("one replication has no ranges, few have rough ones, many need no excuse", () => {
		expect(said(dayResult([{}], { replications: 1 }))[0]).toBe(
			"One replication only: there are no ranges. Run more to see them.",
		);
		expect(said(dayResult([{}], { replications: 12 }))[0]).toBe("Only 12 replications: the ranges are rough.");
		expect(said(dayResult([{}], { replications: 400 }))[0]).toMatch(/^Canister/);
	});

	test("time off suction is said, or said to be next to nothing", () => {
		expect(said(troubledDay())).toContain("Off suction outside fills and dwells: 30 min (between 27 min and 33 min).");
		expect(said(quietDay())).toContain("Off suction outside fills and dwells: hardly at all.");
	});

	test("there are four to seven sentences", () => {
		for (const result of [quietDay(), troubledDay(), stepDown(), longWash(), dayResult([{}], { replications: 3 })]) {
			expect(said(result).length).toBeGreaterThanOrEqual(4);
			expect(said(result).length).toBeLessThanOrEqual(7);
		}
	});
});
