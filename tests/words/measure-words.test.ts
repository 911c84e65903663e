import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Difference } from "../../src/results/index.ts";
import { type MeasureName, measureFact, measureNames, measuresAsRead } from "../../src/vocabulary/index.ts";
import {
	decimalsFor,
	inSentence,
	measured,
	measureWords,
	perHorizon,
	periodWords,
	unitWords,
	verdictWords,
} from "../../src/words/index.ts";

const day = { horizonMin: 1440, currency: "EUR" };

describe("the words of measures", () => {
	test("a reader meets every measure once", () => {
		expect([...measuresAsRead].sort()).toEqual([...measureNames].sort());
	});

	test.each(["washes", "meanExudateShare"] as const)(
		"of %s neither less nor more is called better: what it is worth is for the clinician",
		(name) => {
			expect(measureFact(name).better).toBeNull();
		},
	);

	test("labels tell measures apart", () => {
		expect(new Set(measuresAsRead.map((name) => measureWords[name].label)).size).toBe(measuresAsRead.length);
	});

	test.each([
		["washes", "fewer", "more"],
		["instilledMl", "less", "more"],
		["offSuctionMin", "shorter", "longer"],
		["firstCanisterChangeMin", "earlier", "later"],
		["canisterLastsShift", "less often", "more often"],
		["cost", "lower", "higher"],
	] as const)("%s is %s or %s", (name, less, more) => {
		expect(measureWords[name]).toMatchObject({ less, more });
	});

	test("an alarm reads as one inside a sentence", () => {
		expect(inSentence("alarms.seal-leak")).toBe("alarms for seal leak");
		expect(inSentence("washes")).toBe("washes");
	});
});

describe("the numbers of measures", () => {
	test("are a day's where the horizon is a day, else of the whole time", () => {
		expect(perHorizon(1440)).toBe("a day");
		expect(perHorizon(3 * 1440)).toBe("in 3 d");
		expect(unitWords("instilledMl", day)).toBe("mL a day");
		expect(unitWords("instilledMl", { ...day, horizonMin: 2880 })).toBe("mL in 2 d");
		expect(unitWords("meanExudateShare", day)).toBe("");
		expect(unitWords("firstCanisterChangeMin", day)).toBe("min");
		expect(unitWords("cost", day)).toBe("EUR a day");
		expect(measured(11.38, "washes", day)).toBe("11.38 a day");
	});

	test("have the digits that their interval supports, else their own", () => {
		expect(decimalsFor("breaches", null)).toBe(2);
		expect(decimalsFor("breaches", 0.011)).toBe(3);
		expect(decimalsFor("breaches", 0.00001)).toBe(6);
		expect(decimalsFor("toCanisterMl", 2.4)).toBe(0);
		expect(decimalsFor("toCanisterMl", 0.04)).toBe(2);
	});

	test.each([
		[120, "2 h"],
		[210, "3.5 h"],
		[75, "1 h 15 min"],
		[50, "50 min"],
	])("a period of %i min is spoken of as %s", (minutes, words) => {
		expect(periodWords(minutes)).toBe(words);
	});
});

describe("verdicts", () => {
	const difference = (
		measure: MeasureName,
		mean: number,
		half: number | null,
		change: Partial<Difference> = {},
	): Difference => ({
		a: "short",
		b: "long",
		dressing: "thigh",
		measure,
		unit: "",
		meanA: 1 + mean,
		meanB: 1,
		mean,
		low95: half === null ? null : mean - half,
		high95: half === null ? null : mean + half,
		replications: 400,
		shareAHigher: 0.5,
		shareBHigher: 0.3,
		shareABetter: 0.3,
		variance: { paired: 1, independent: 4 },
		kind: "differs",
		verdict: "words of the result",
		...change,
	});

	test("say which way, how much and from where to where, nearest first", () => {
		expect(verdictWords(difference("breaches", -0.04, 0.011), day)).toBe("fewer: 0.04 a day (0.029 to 0.051)");
		expect(verdictWords(difference("toCanisterMl", 222.6, 2.4), day)).toBe("more: 223 mL a day (220 to 225)");
	});

	test("give no digit beyond what the interval supports, and tell its ends apart", () => {
		const numbers = (words: string) => words.match(/\d+(?:\.\d+)?/gu)?.map((text) => text) ?? [];
		fc.assert(
			fc.property(
				fc.constantFrom(...measureNames),
				fc.double({ min: -4, max: 4, noNaN: true }),
				fc.double({ min: 0.02, max: 0.95, noNaN: true }),
				fc.boolean(),
				(measure, power, share, isLess) => {
					const mean = (isLess ? -1 : 1) * 10 ** power;
					const half = Math.abs(mean) * share;
					const words = verdictWords(difference(measure, mean, half), day);
					const [own = "", near = "", far = ""] = numbers(words.replace("just over 0", "0"));
					expect(near).not.toBe(far);
					for (const text of [own, near, far]) {
						// A step of which the half-width has fewer than a hundred, that is two significant digits.
						const step = 10 ** Math.ceil(Math.log10(half / 100) + 1e-9);
						const steps = Number(text) / step;
						expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
					}
					expect(Math.abs(Number(own) - Math.abs(mean))).toBeLessThan(half / 3);
				},
			),
		);
	});

	test("without an interval say that it is the same each time", () => {
		const steady = { kind: "steady" } as const;
		expect(verdictWords(difference("washes", 5, null, steady), day)).toBe(
			"more: 5 a day, the same in nearly every replication",
		);
		expect(
			verdictWords(difference("washes", 5, null, { ...steady, variance: { paired: 0, independent: 0 } }), day),
		).toBe("more: 5 a day, the same in every replication");
	});

	test.each(["none-found", "same", "too-rare", "not-judged"] as const)(
		"%s keeps the words of the result: no direction is read into it",
		(kind) => {
			expect(verdictWords(difference("breaches", -0.04, 0.1, { kind }), day)).toBe("words of the result");
		},
	);
});
