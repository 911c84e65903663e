import { describe, expect, test } from "vitest";
import {
	blockCount,
	dayResult,
	mostReplications,
	ProjectionGathering,
	replicationsFor,
	runBlocks,
} from "../../src/analysis/index.ts";
import type { Scenario } from "../../src/scenario/index.ts";
import { reference } from "../therapy/example.ts";

function gather(scenario: Scenario): ProjectionGathering {
	const gathering = new ProjectionGathering(scenario);
	gathering.add(runBlocks(scenario, 0, blockCount(scenario)));
	return gathering;
}

const chancy = { ...reference, chance: true, replications: 200 };
const target = (halfWidth: number) =>
	[{ total: "toCanisterMl", halfWidth }] as const;

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
		expect(next.dressings[0].totals.toCanisterMl.halfWidth95).toBeLessThan(
			(half / 3) * 1.1,
		);
	});
	test("it stops at a stated number, and the result says what was not reached", () => {
		const gathering = gather(chancy);
		expect(replicationsFor(gathering.projection(), target(1e-9))).toBe(
			mostReplications,
		);
		const result = dayResult(chancy, gathering, "0", target(1e-9));
		expect(result.cautions.map(({ code }) => code)).toContain(
			"precision-not-reached",
		);
	});
	test("with chance off every half-width is 0 and every target is met", () => {
		const projection = gather({ ...reference, replications: 50 }).projection();
		expect(replicationsFor(projection, target(1e-9))).toBe(50);
	});
});
