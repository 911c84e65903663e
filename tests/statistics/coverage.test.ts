import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readScenario } from "../../src/scenario/index.ts";
import { VectorMoments } from "../../src/statistics/vector-moments.ts";
import { armsOf, compareResult, comparisonStudy, StudyGathering, StudyRunner } from "../../src/studies/index.ts";
import { type MeasureName, measureNames } from "../../src/vocabulary/index.ts";
import { root } from "../source.ts";

/**
 * Do the intervals hold what they promise? Many studies of 100 replications, each with its 95 % intervals, against the means
 * of one long run from another seed. With LONG set: 400 studies against 200,000 replications, and the table of all measures
 * that stands in tests/benchmarks/README.md.
 */
const long = process.env.LONG !== undefined;
const [studies, truthReplications] = long ? [400, 200_000] : [60, 6_000];
const replications = 100;
const blocksOfStudy = 2;
const base = { ...readScenario(readFileSync(join(root, "scenarios", "compare-thigh.yaml"), "utf8")), replications };

/** Mean differences of the long run, and how well it knows them. */
function longRun(): VectorMoments {
	const scenario = { ...base, seed: "truth", replications: truthReplications };
	const runner = new StudyRunner({ ...comparisonStudy(armsOf(scenario, ["short", "long"])), detailed: false });
	const truth = new VectorMoments(measureNames.length);
	for (let first = 0; first < truthReplications / 50; first++)
		truth.merge(runner.run({ group: 0, first, last: first + 1 }).blocks[0].pairs[0]);
	return truth;
}

test("the 95 % interval of a paired difference holds the value of a long run as often as it says, wherever one is given", () => {
	const truth = longRun();
	const given = new Map<MeasureName, number>();
	const held = new Map<MeasureName, number>();
	const count = (map: Map<MeasureName, number>, measure: MeasureName) => map.set(measure, (map.get(measure) ?? 0) + 1);
	for (let study = 0; study < studies; study++) {
		const scenario = { ...base, seed: `study ${study}` };
		const arms = armsOf(scenario, ["short", "long"]);
		const plan = comparisonStudy(arms);
		const gathering = new StudyGathering(plan);
		gathering.add(new StudyRunner(plan).run({ group: 0, first: 0, last: blocksOfStudy }));
		const { differences } = compareResult(scenario, arms, gathering.groups(blocksOfStudy)[0], {
			measures: [],
			targets: [],
			restsOn: null,
			drawn: { replication: 0, typicalOf: null },
			version: "",
		});
		differences.forEach(({ measure, low95, high95 }, place) => {
			if (low95 === null || high95 === null) return;
			count(given, measure);
			const mean = truth.mean[place];
			if (low95 - 1e-9 <= mean && mean <= high95 + 1e-9) count(held, measure);
		});
	}
	const coverage = (measure: MeasureName) => (held.get(measure) ?? 0) / (given.get(measure) ?? 0);
	if (long)
		for (const measure of measureNames)
			console.log(
				`${measure.padEnd(32)} given in ${String(given.get(measure) ?? 0).padStart(3)} of ${studies}, holds in ${(100 * coverage(measure)).toFixed(1)} %`,
			);
	// 400 studies know a coverage of 95 % to 1.1 %, 60 studies to 2.8 %: three of these to either side for the short run.
	const least = long ? 0.93 : 0.86;
	for (const measure of ["toCanisterMl", "meanExudateShare", "alarms"] as const) {
		expect(given.get(measure)).toBeGreaterThan(studies * 0.7);
		expect(coverage(measure)).toBeGreaterThanOrEqual(least);
		expect(coverage(measure)).toBeLessThanOrEqual(long ? 0.97 : 1);
	}
	// Wherever an interval is given often enough to be judged, it holds.
	for (const [measure, often] of given)
		if (often > studies / 4)
			expect({ measure, coverage: coverage(measure) >= least - 0.01 }).toEqual({ measure, coverage: true });
});
