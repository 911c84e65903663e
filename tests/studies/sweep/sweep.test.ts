import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readScenario, type SweepGrid } from "../../../src/scenario/index.ts";
import {
	blockCount,
	paretoSet,
	StudyGathering,
	StudyRunner,
	type SweepAsked,
	studyTasks,
	sweepPlan,
	sweepResult,
	sweepStudy,
	traceDay,
} from "../../../src/studies/index.ts";
import { root } from "../../source.ts";

const file = (name: string) => ({
	...readScenario(readFileSync(join(root, "scenarios", name), "utf8")),
	replications: 100,
});
const thigh = file("thigh-short-dwell.yaml");
const asked: SweepAsked = {
	measures: ["washes", "meanExudateShare", "nurseMin"],
	constraints: [],
	efficient: [
		{ measure: "meanExudateShare", better: "lower" },
		{ measure: "nurseMin", better: "lower" },
	],
	curve: "dwell",
	version: "1.2.3",
};

function swept(scenario: typeof thigh, axes: SweepGrid["axes"], other: Partial<SweepAsked> = {}) {
	const plan = sweepPlan(scenario, { dressing: null, axes });
	const study = sweepStudy(plan);
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	const blocks = blockCount(scenario);
	for (const task of studyTasks(study, 0, blocks)) gathering.add(runner.run(task));
	return sweepResult(plan, gathering.groups(blocks), new Map(), { ...asked, ...other });
}

describe("a grid", () => {
	const usual = { thigh: [{ ...thigh.dressings[0].regimens[0], dwellMin: 10, suctionMin: 210 }] };
	const result = swept({ ...thigh, usual }, { dwell: [2, 5, 10], suction: [60, 120, 210], depth: [125] });

	test("has every value with every other, the last axis running fastest; axes of one value are none", () => {
		expect(result.axes.map(({ name }) => name)).toEqual(["dwell", "suction"]);
		expect(result.points.map(({ at }) => at)).toEqual([
			[2, 60],
			[2, 120],
			[2, 210],
			[5, 60],
			[5, 120],
			[5, 210],
			[10, 60],
			[10, 120],
			[10, 210],
		]);
	});

	test("marks the scenario's own regimen, which differs from itself by exactly 0, and the site's usual regimen", () => {
		expect(result.points.map(({ current }) => current).indexOf(true)).toBe(4);
		expect(result.points.map(({ usual }) => usual).indexOf(true)).toBe(8);
		for (const value of Object.values(result.points[4].measures))
			expect(value).toMatchObject({ difference: 0, differenceHalfWidth95: 0 });
		expect(result.marks.map(({ point }) => point)).toEqual([4, 8]);
	});

	test("marks nothing as usual where the scenario names no usual regimen", () => {
		const unnamed = swept(thigh, { dwell: [5, 10], suction: [120, 210] });
		expect(unnamed.points.some(({ usual: is }) => is)).toBe(false);
		expect(unnamed.marks.map(({ mark }) => mark)).toEqual(["current"]);
		// The points are those of a map with the mark.
		expect(unnamed.points[3].measures).toEqual(result.points[8].measures);
	});

	test("gives at a point what the same regimen gives as a scenario of its own", () => {
		const alone = swept(
			{
				...thigh,
				dressings: thigh.dressings.map((dressing) => ({
					...dressing,
					regimens: [{ ...dressing.regimens[0], dwellMin: 10, suctionMin: 60 }],
				})),
			},
			{ dwell: [10, 12] },
		);
		expect(alone.points[0].measures.meanExudateShare?.mean).toBe(result.points[6].measures.meanExudateShare?.mean);
	});

	test("draws its curve through the points nearest to the scenario's own regimen", () => {
		expect(result.curve).toEqual({ axis: "dwell", points: [1, 4, 7] });
	});

	test("keeps only points that meet every constraint", () => {
		const kept = swept(
			thigh,
			{ suction: [60, 120, 210] },
			{ curve: null, constraints: [{ measure: "washes", test: ">", limit: 10 }] },
		);
		expect(kept.points.map((point) => point.kept)).toEqual([true, true, false]);
		expect(kept.constraints[0].kept).toBe(2);
		expect(kept.efficient?.points).not.toContain(2);
	});
});

test("points outside common practice say why, and are run all the same", () => {
	const { points } = swept(thigh, { depth: [50, 125], fill: [50, 200] }, { curve: null });
	expect(points.map(({ outside }) => outside)).toEqual([
		["depth outside −100 to −175 mmHg"],
		[],
		["depth outside −100 to −175 mmHg", "fill above what the foam takes"],
		["fill above what the foam takes"],
	]);
	expect(points[2].measures.washes?.mean).toBeGreaterThan(0);
});

describe("when to begin", () => {
	test("the first phase begins at the clock time asked for; rounds and nights stay on the clock", () => {
		const plan = sweepPlan(thigh, { dressing: null, axes: { start: [360, 600] } });
		expect(plan.points.map(({ scenario }) => scenario.start)).toEqual(["2026-03-02T06:00", "2026-03-02T10:00"]);
		expect(plan.points[1].scenario.care).toBe(thigh.care);
	});

	test.each(["suction", "fill"] as const)(
		"two dressings out of step by 30 min that begin in %s: every later fill of the second comes 30 min after the first's",
		(begin) => {
			const [one] = thigh.dressings;
			const regimens = [{ ...one.regimens[0], begin }];
			const two = {
				...thigh,
				chance: false,
				happenings: [],
				care: { ...thigh.care, roundsClockMin: [], dressingChange: null },
				dressings: [
					{ ...one, regimens },
					{ ...one, regimens, id: "calf" },
				],
			};
			const plan = sweepPlan(two, { dressing: null, axes: { apart: [0, 30] } });
			const fills = traceDay(plan.points[1].scenario).dressings.map((day) =>
				day.phases.filter(({ phase, startMin }) => phase === "fill" && startMin > 60).map(({ startMin }) => startMin),
			);
			expect(fills[0].length).toBeGreaterThan(9);
			fills[1].forEach((at, i) => {
				expect(at - fills[0][i]).toBeCloseTo(30, 6);
			});
		},
	);
});

test("a point is efficient when no other betters it in one goal without being worse in another", () => {
	fc.assert(
		fc.property(fc.array(fc.tuple(fc.nat(9), fc.nat(9), fc.nat(9)), { minLength: 1, maxLength: 30 }), (rows) => {
			const goals = [0, 1, 2].map((column) => ({
				better: column === 1 ? ("higher" as const) : ("lower" as const),
				values: rows.map((row) => row[column]),
			}));
			const all = rows.map((_, i) => i);
			const efficient = new Set(paretoSet(goals, all));
			// Signed so that less is better in all three.
			const cost = (i: number) => [rows[i][0], -rows[i][1], rows[i][2]];
			for (const i of all) {
				const bettered = all.some(
					(other) =>
						cost(other).every((value, k) => value <= cost(i)[k]) && cost(other).some((value, k) => value < cost(i)[k]),
				);
				expect(efficient.has(i)).toBe(!bettered);
			}
			expect(efficient.size).toBeGreaterThan(0);
		}),
	);
});
