import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Dressing, readScenario, type Scenario } from "../../src/scenario/index.ts";
import { addTo, noMoments, variance } from "../../src/statistics/index.ts";
import { totalsOf } from "../../src/studies/trace/totals.ts";
import { unobserved } from "../../src/therapy/base/observer.ts";
import { TherapyDay } from "../../src/therapy/index.ts";
import { randomDay } from "../second/random-day.ts";

/** Totals of the first dressing in replications 0 … count − 1. */
function totalsOfMany(scenario: Scenario, count: number) {
	const day = new TherapyDay(scenario, unobserved);
	return Array.from({ length: count }, (_, replication) => {
		day.run(replication, unobserved);
		return totalsOf(day.processes[0], scenario.horizonMin);
	});
}

const withRegimens = (scenario: Scenario, regimens: Dressing["regimens"]): Scenario => ({
	...scenario,
	dressings: [{ ...scenario.dressings[0], regimens }],
});

function varianceOf(values: readonly number[]): number {
	const moments = noMoments();
	for (const value of values) addTo(moments, value);
	return variance(moments);
}

describe("exudate under two regimens", () => {
	/** Any day with any happening, chance on; the second regimen is another day's. */
	const twoRegimens = fc
		.record({
			day: randomDay,
			other: randomDay,
			seed: fc.string({ minLength: 1, maxLength: 6 }),
			horizonMin: fc.constantFrom(300, 720, 1440, 2880),
		})
		.map(({ day, other, seed, horizonMin }) => {
			const first: Scenario = {
				...day,
				seed,
				horizonMin,
				chance: true,
				care: { ...day.care, turningMin: 240, dressingChange: null },
				happenings: day.happenings.filter(({ what }) => what !== "dressing-change"),
			};
			return [first, withRegimens(first, other.dressings[0].regimens)] as const;
		});

	test("is the same to 1e-9 mL in every replication: chance on, equal wound, horizon, seed and script, no dressing change", () => {
		let apart = 0;
		fc.assert(
			fc.property(twoRegimens, ([first, second]) => {
				const a = totalsOfMany(first, 3);
				const b = totalsOfMany(second, 3);
				a.forEach((one, replication) => {
					const other = b[replication];
					expect(Math.abs(one.exudateMl - other.exudateMl)).toBeLessThan(1e-9);
					if (Math.abs(one.toCanisterMl - other.toCanisterMl) > 1) apart++;
				});
			}),
			{ numRuns: 100, seed: 9, endOnFailure: true },
		);
		// and the regimens do differ in what they drain
		expect(apart).toBeGreaterThan(200);
	});
});

describe("short dwell against long dwell in the example compare-thigh.yaml, 400 replications", () => {
	const file = new URL("../../scenarios/compare-thigh.yaml", import.meta.url);
	const scenario = readScenario(readFileSync(file, "utf8"));
	const arm = (name: string, seed = scenario.seed) => {
		const patch = scenario.compare.find((one) => one.name === name);
		if (patch === undefined) throw new Error(`no regimen called ${name}`);
		const { id } = scenario.dressings[0];
		return totalsOfMany(withRegimens({ ...scenario, seed }, patch.regimens[id]), scenario.replications);
	};
	const short = arm("short");
	const long = arm("long");
	const stranger = arm("long", "another tide");
	const difference = (name: "toCanisterMl" | "exudateMl", a: typeof short, b: typeof short) =>
		a.map((one, replication) => one[name] - b[replication][name]);

	test("the wounds give off the same, to 1e-9 mL", () => {
		for (const apart of difference("exudateMl", short, long)) expect(Math.abs(apart)).toBeLessThan(1e-9);
	});

	test("for drained volume the variance of the paired difference is at least 5 times smaller than that of independent runs", () => {
		const paired = varianceOf(difference("toCanisterMl", short, long));
		const independent = varianceOf(difference("toCanisterMl", short, stranger));
		expect(independent / paired).toBeGreaterThan(5);
		// which is what the sum of both variances says without a run of its own
		const sum = varianceOf(short.map((one) => one.toCanisterMl)) + varianceOf(long.map((one) => one.toCanisterMl));
		expect(sum / paired).toBeGreaterThan(5);
	});

	test("a regimen against itself differs by exactly nought in every total", () => {
		expect(arm("again")).toEqual(short);
	});
});
