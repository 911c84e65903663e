import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { isFragile } from "../../../src/report/compare/pairs/difference-rows.ts";
import { readScenario } from "../../../src/scenario/index.ts";
import {
	armsOf,
	blockCount,
	StudyGathering,
	StudyRunner,
	sensitivityOf,
	sensitivityStudy,
	studyTasks,
} from "../../../src/studies/index.ts";
import { root } from "../../source.ts";

const scenario = {
	...readScenario(readFileSync(join(root, "scenarios", "compare-thigh.yaml"), "utf8")),
	horizonMin: 7 * 1440,
	replications: 100,
};
const arms = armsOf(scenario, ["short", "suction-alone"]);

/** What becomes of every difference under some of the assumptions alone. */
function restingOn(names: readonly string[]) {
	const whole = sensitivityStudy(arms);
	const rows = whole.rows.filter(({ variation }) => names.includes(variation.name));
	const wanted = [0, ...rows.flatMap(({ groups }) => groups)].filter((group) => group !== null);
	const study = { ...whole.study, groups: wanted.map((group) => whole.study.groups[group] ?? []) };
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	const blocks = blockCount(scenario);
	for (const task of studyTasks(study, 0, blocks)) gathering.add(runner.run(task));
	return sensitivityOf(
		arms,
		{
			study: whole.study,
			rows: rows.map((row) => ({
				...row,
				groups: row.groups.map((group) => (group === null ? null : wanted.indexOf(group))),
			})),
		},
		gathering.groups(blocks),
	);
}

const found = restingOn(["kink.rate", "foam.retained"]);
const effect = (name: string, measure: string) => {
	const one = found.rows.find((row) => row.name === name)?.effects.find((each) => each.measure === measure);
	if (one === undefined) throw new Error(`no ${measure} under ${name}`);
	return one;
};

describe("a verdict that hangs on one assumed cause", () => {
	test("stands at half and at twice its rate, and is lost without it", () => {
		const blocked = effect("kink.rate", "alarms.fill-path-obstructed");
		// Only a regimen with fills can find its fill line kinked, and nothing but kinks blocks one.
		expect(blocked.base).toBeGreaterThan(0.1);
		expect(blocked.half).toBeGreaterThan(0);
		expect(blocked.twice).toBeGreaterThan(blocked.base);
		expect(blocked).toMatchObject({ turns: false, without: 0, hangs: true });
	});

	test("is told from one that other things carry, too", () => {
		expect(effect("kink.rate", "washes")).toMatchObject({ hangs: false });
		expect(effect("kink.rate", "washes").without).toBeGreaterThan(0);
	});

	test("is not sought for a number that is no cause", () => {
		expect(effect("foam.retained", "alarms.fill-path-obstructed")).toMatchObject({ without: null, hangs: false });
	});

	test("is marked as one that rests on assumed numbers", () => {
		const difference = {
			a: "short",
			b: "suction-alone",
			dressing: "thigh",
			unit: "",
			meanA: 0.3,
			meanB: 0,
			mean: 0.3,
			low95: 0.2,
			high95: 0.4,
			replications: 100,
			shareAHigher: 0.3,
			shareBHigher: 0,
			shareABetter: 0,
			variance: { paired: 1, independent: 1 },
			kind: "differs",
			verdict: "",
		} as const;
		const marked = (measure: "alarms.fill-path-obstructed" | "washes") => isFragile({ ...difference, measure }, found);
		expect(marked("alarms.fill-path-obstructed")).toBe(true);
		expect(marked("washes")).toBe(false);
	});

	test("costs little: causes are few among the assumptions", () => {
		const { rows } = sensitivityStudy(arms);
		const runs = (place: number) => rows.filter(({ groups }) => groups[place] !== null).length;
		expect(runs(2)).toBeGreaterThan(5);
		expect(runs(2)).toBeLessThan(0.15 * (1 + runs(0) + runs(1)));
		// A site that gives a rate of its own has measured it.
		const given = armsOf({ ...scenario, overridden: ["kink.rate"] }, ["short", "long"]);
		expect(sensitivityStudy(given).rows.find(({ variation }) => variation.name === "kink.rate")?.groups[2]).toBeNull();
	});
});
