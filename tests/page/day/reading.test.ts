import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readingsAt, valueAt } from "../../../src/page/day/reading.ts";
import { readScenario } from "../../../src/scenario/index.ts";
import { dayResult, ProjectionGathering, runBlocks } from "../../../src/studies/index.ts";
import { scenario } from "../../cli/program.ts";

const read = { ...readScenario(readFileSync(scenario("scripted-failures"), "utf8")), replications: 50 };
const gathering = new ProjectionGathering(read);
gathering.add(runBlocks(read, 0, 1));
const result = dayResult(read, gathering, "0");
const [day] = result.dressings;
const [dressing] = result.scenario.dressings;
const [projection] = result.projection.dressings;
const at = (atMin: number) =>
	Object.fromEntries(
		readingsAt(atMin, { clock: result.scenario, dressing, day, projection }).map(({ lane, words }) => [lane, words]),
	);

test("a curve is read straight between its rows, and after a jump where it has jumped", () => {
	const curve = {
		atMin: [0, 10, 10, 20],
		depthMmHg: [0, 100, 50, 50],
		liquidMl: [0, 0, 0, 0],
		canisterMl: [0, 0, 0, 0],
		sourceMl: [0, 0, 0, 0],
	};
	expect(valueAt(curve, "depthMmHg", 5)).toBe(50);
	expect(valueAt(curve, "depthMmHg", 10)).toBe(50);
	expect(valueAt(curve, "depthMmHg", 25)).toBe(50);
});

test("at every start of a phase the cursor reads that phase", () => {
	for (const { phase, startMin, endMin } of day.phases)
		expect(at((startMin + endMin) / 2).phase).toContain(phase === "change" ? "dressing change" : phase);
});

test("an alarm is read while it stands and not when it has ended", () => {
	expect(day.alarms.length).toBeGreaterThan(0);
	for (const { startMin, endMin } of day.alarms) expect(at((startMin + endMin) / 2).alarms).not.toBe("none stands");
	const quiet = day.phases
		.map(({ startMin }) => startMin)
		.find((min) => day.alarms.every(({ startMin, endMin }) => min < startMin || min >= endMin));
	expect(at(quiet ?? 0).alarms).toBe("none stands");
});
