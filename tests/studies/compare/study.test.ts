import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readScenario, type Scenario } from "../../../src/scenario/index.ts";
import { addTo, mergeInto, noMoments } from "../../../src/statistics/index.ts";
import { VectorMoments } from "../../../src/statistics/vector-moments.ts";
import {
	armsOf,
	blockCount,
	compareResult,
	comparisonStudy,
	ProjectionGathering,
	runBlocks,
	StudyGathering,
	StudyRunner,
	studyTasks,
} from "../../../src/studies/index.ts";
import { mainMeasures, measureNames } from "../../../src/vocabulary/index.ts";
import { root } from "../../source.ts";

const file = (name: string) => readScenario(readFileSync(join(root, "scenarios", name), "utf8"));
const demo: Scenario = { ...file("compare-thigh.yaml"), replications: 220 };
const asked = {
	measures: mainMeasures,
	targets: [],
	restsOn: null,
	drawn: { replication: 0, typicalOf: null },
	version: "1.2.3",
};

function compared(scenario: Scenario, between: readonly string[]) {
	const arms = armsOf(scenario, between);
	const study = comparisonStudy(arms);
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	for (const task of studyTasks(study, 0, blockCount(scenario))) gathering.add(runner.run(task));
	return compareResult(scenario, arms, gathering.groups(blockCount(scenario))[0], asked);
}

describe("moments of many values at once", () => {
	test("are those of each value alone, merged in the same blocks", () => {
		fc.assert(
			fc.property(
				fc.array(fc.array(fc.tuple(fc.double(finite), fc.double(finite)), { minLength: 1, maxLength: 8 }), {
					maxLength: 5,
				}),
				(blocks) => {
					const together = new VectorMoments(2);
					const alone = [noMoments(), noMoments()];
					for (const block of blocks) {
						const part = new VectorMoments(2);
						const parts = [noMoments(), noMoments()];
						for (const pair of block) {
							part.add(Float64Array.from(pair));
							pair.forEach((value, i) => {
								addTo(parts[i], value);
							});
						}
						together.merge(part.parts());
						parts.forEach((moments, i) => {
							mergeInto(alone[i], moments);
						});
					}
					expect([together.at(0), together.at(1)]).toEqual(alone);
				},
			),
		);
	});
	const finite = { noNaN: true, min: -1e6, max: 1e6 } as const;
});

describe("regimens on the same random numbers", () => {
	const result = compared(demo, ["short", "long", "again"]);
	const of = (a: string, b: string) => result.differences.filter((one) => one.a === a && one.b === b);

	test("regimens that are equal, or differ in name only, give differences of exactly 0", () => {
		const equal = of("short", "again");
		expect(equal.length).toBeGreaterThan(30);
		for (const one of equal) {
			expect(Object.is(one.mean, 0)).toBe(true);
			expect([one.shareAHigher, one.shareBHigher]).toEqual([0, 0]);
			expect([one.low95, one.high95]).toEqual([0, 0]);
			expect(["same", "not-judged"]).toContain(one.kind);
		}
	});

	test("a plain note says that they are equal", () => {
		expect(result.cautions.map((caution) => caution.text)).toContain(
			"Regimen again has the settings of short: they do not differ in anything.",
		);
	});

	test("what one regimen gives against another is the other way round what the other gives against it", () => {
		const [there, back] = [of("short", "long"), of("long", "again")];
		there.forEach((one, i) => {
			expect(back[i].mean).toBeCloseTo(-one.mean, 9);
			expect(back[i].shareAHigher).toBe(one.shareBHigher);
		});
	});

	test("means and quantiles of a regimen are those of its own day", () => {
		const [arm] = armsOf(demo, ["long"]);
		const gathering = new ProjectionGathering(arm.scenario);
		gathering.add(runBlocks(arm.scenario, 0, blockCount(arm.scenario)));
		const [own] = gathering.projection().dressings;
		const [dressing] = result.regimens[1].dressings;
		for (const [name, spread] of Object.entries(own.totals)) {
			const { mean, p10, p50, p90 } = dressing.totals[name as keyof typeof own.totals]; // keys forget their names
			expect({ mean, p10, p50, p90 }).toEqual({ mean: spread.mean, p10: spread.p10, p50: spread.p50, p90: spread.p90 });
		}
	});

	test("no verdict is given on clogging while its rates are the defaults", () => {
		for (const one of result.differences)
			if (["portsReplaced", "alarms.suction-path-obstructed"].includes(one.measure))
				expect(one.kind).toBe("not-judged");
	});

	test("with rates of the site's own there is one", () => {
		const given: Scenario = { ...demo, overridden: ["debris.perDrain", "debris.perDay", "clump.chance", "clump.mean"] };
		expect(compared(given, ["short", "long"]).differences.filter((one) => one.kind === "not-judged")).toEqual([]);
	});

	test("pairing makes the drained volume at least five times surer than independent runs", () => {
		const drained = of("short", "long").find((one) => one.measure === "toCanisterMl");
		expect(drained).toBeDefined();
		if (drained === undefined) return;
		expect(drained.variance.independent / drained.variance.paired).toBeGreaterThan(5);
	});

	test("exudate is the same to 1e-9 mL, and so is said to be the same", () => {
		const exudate = of("short", "long").find((one) => one.measure === "exudateMl");
		expect(exudate).toMatchObject({ mean: 0, kind: "same" });
	});
});

describe("parts of a study", () => {
	const study = comparisonStudy(armsOf(demo, ["short", "long"]));
	const tasks = studyTasks(study, 0, blockCount(demo)).flatMap((task) =>
		Array.from({ length: task.last - task.first }, (_, i) => ({
			...task,
			first: task.first + i,
			last: task.first + i + 1,
		})),
	);
	const parts = tasks.map((task) => new StudyRunner(study).run(task));
	const gathered = (order: readonly number[]) => {
		const gathering = new StudyGathering(study);
		for (const place of order) gathering.add(parts[place]);
		return JSON.stringify(
			compareResult(demo, armsOf(demo, ["short", "long"]), gathering.groups(tasks.length)[0], asked),
		);
	};

	test("give the same bytes in whatever order they come", () => {
		const rising = tasks.map((_, place) => place);
		const whole = JSON.stringify(compared(demo, ["short", "long"]));
		expect(gathered(rising)).toBe(whole);
		fc.assert(
			fc.property(fc.shuffledSubarray(rising, { minLength: rising.length }), (order) => {
				expect(gathered(order)).toBe(whole);
			}),
			{ numRuns: 5 },
		);
	});

	test("one that is missing or comes twice is told", () => {
		const gathering = new StudyGathering(study);
		gathering.add(parts[0]);
		expect(() => gathering.add(parts[0])).toThrow("block 0 of group 0 came twice");
		expect(() => gathering.groups(tasks.length)).toThrow(`block 1 of ${tasks.length} of group 0 is missing`);
	});
});

test("every measure of one dressing has a place among the values", () => {
	expect(new Set(measureNames).size).toBe(measureNames.length);
});
