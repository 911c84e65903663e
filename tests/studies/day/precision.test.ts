import { describe, expect, test } from "vitest";
import type { PrecisionReached, Projection } from "../../../src/results/index.ts";
import type { Scenario } from "../../../src/scenario/index.ts";
import {
	blockCount,
	dayResult,
	mostReplications,
	ProjectionGathering,
	replicationsFor,
	replicationsForTargets,
	runBlocks,
} from "../../../src/studies/index.ts";
import { precisionCautions, targetCautions } from "../../../src/studies/kit/precision.ts";
import { isTotalName } from "../../../src/vocabulary/index.ts";
import { reference } from "../../therapy/example.ts";

function gather(scenario: Scenario): ProjectionGathering {
	const gathering = new ProjectionGathering(scenario);
	gathering.add(runBlocks(scenario, 0, blockCount(scenario)));
	return gathering;
}

const chancy = { ...reference, chance: true, replications: 200 };
const target = (halfWidth: number) => [{ total: "toCanisterMl", halfWidth }] as const;

describe("precision", () => {
	test("a target that is met asks for no more replications", () => {
		const projection = gather(chancy).projection();
		expect(replicationsFor(projection, target(1000))).toBe(200);
		expect(replicationsFor(projection, [])).toBe(200);
	});
	test("the replications it asks for reach the target", () => {
		const first = gather(chancy).projection();
		const half = first.dressings[0].totals.toCanisterMl.halfWidth95 ?? 0;
		const replications = replicationsFor(first, target(half / 3));
		expect(replications).toBeGreaterThan(1800);
		const next = gather({ ...chancy, replications }).projection();
		expect(next.dressings[0].totals.toCanisterMl.halfWidth95).toBeLessThan((half / 3) * 1.1);
	});
	test("it stops at a stated number, and the result says what was not reached", () => {
		const gathering = gather(chancy);
		expect(replicationsFor(gathering.projection(), target(1e-9))).toBe(mostReplications);
		const result = dayResult(chancy, gathering, "0", target(1e-9));
		expect(result.cautions.map(({ code }) => code)).toContain("precision-not-reached");
	});
	test("with chance off every half-width is 0 and every target is met", () => {
		const projection = gather({ ...reference, replications: 50 }).projection();
		expect(replicationsFor(projection, target(1e-9))).toBe(50);
	});
});

describe("precision of means", () => {
	/** As much of a projection as is asked for: the half-widths of one total of each bed. */
	const projected = (replications: number, ...halves: (number | null)[]) =>
		({
			replications,
			dressings: halves.map((halfWidth95, i) => ({ id: `bed ${i + 1}`, totals: { toCanisterMl: { halfWidth95 } } })),
		}) as unknown as Projection;

	test("asks for the square of what the widest of all beds is too wide by, and a tenth to spare", () => {
		expect(replicationsFor(projected(101, 0.5, 4, 1), target(1))).toBe(1778);
		expect(replicationsFor(projected(405, 0.5, 1.5), target(0.5))).toBe(4010);
		expect(replicationsFor(projected(400, 1, 0.9), target(1))).toBe(400);
	});

	test("asks for twice as many and a tenth where there is no half-width yet, and never for more than may be run", () => {
		expect(replicationsFor(projected(1, null), target(1))).toBe(3);
		expect(replicationsFor(projected(400, 90), target(0.1))).toBe(mostReplications);
		expect(replicationsFor(projected(2 * mostReplications, 90), target(0.1))).toBe(2 * mostReplications);
	});

	test("says of each bed that falls short of it by how much", () => {
		expect(precisionCautions(projected(400, 1, 1.23456, 0.9), target(1))).toEqual([
			{
				code: "precision-not-reached",
				text: "After 400 replications the half-width of toCanisterMl is 1.23, not the 1 asked for.",
				dressing: "bed 2",
			},
		]);
	});
});

describe("precision of paired differences", () => {
	const one = (halfWidth: number | null, target = 0.1): PrecisionReached => ({
		a: "short",
		b: "long",
		dressing: "bed 1",
		measure: "breaches",
		target,
		halfWidth,
		reached: halfWidth !== null && halfWidth <= target,
	});

	test("asks for none where all are met, to the very target", () => {
		expect(replicationsForTargets([], 400)).toBe(400);
		expect(replicationsForTargets([one(0.1), one(0.03)], 400)).toBe(400);
	});

	test("asks for the square of what the widest is too wide by, and a tenth to spare", () => {
		const times3 = replicationsForTargets([one(0.5, 0.5), one(0.75, 0.25)], 405);
		expect(times3).toBe(4010);
		const times4 = replicationsForTargets([one(1, 0.25), one(0.75, 0.25)], 101);
		expect(times4).toBe(1778);
	});

	test("asks for twice as many and a tenth where there is no interval yet", () => {
		expect(replicationsForTargets([one(null)], 1000)).toBeCloseTo(2200, -1);
	});

	test("never asks for more than the stated number, nor for fewer than have been run", () => {
		expect(replicationsForTargets([one(90)], 400)).toBe(mostReplications);
		expect(replicationsForTargets([one(90)], 2 * mostReplications)).toBe(2 * mostReplications);
	});

	test("says of each that is not reached how well it is known", () => {
		const cautions = targetCautions([one(0.1), one(0.123456), one(null, 0.2)], 400);
		expect(cautions).toEqual([
			{
				code: "precision-not-reached",
				text: "After 400 replications the difference of short and long in breaches is known to 0.123, not to the 0.1 asked for.",
				dressing: "bed 1",
			},
			{
				code: "precision-not-reached",
				text: "After 400 replications the difference of short and long in breaches is too rare for an interval, not to the 0.2 asked for.",
				dressing: "bed 1",
			},
		]);
	});
});

test("a total is known by its name, and by no other", () => {
	expect(isTotalName("toCanisterMl")).toBe(true);
	expect(isTotalName("toString")).toBe(false);
});
