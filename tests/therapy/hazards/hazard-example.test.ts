import { readFileSync } from "node:fs";
import { join } from "node:path";
import { JSDOM } from "jsdom";
import { afterAll, describe, expect, test, vi } from "vitest";
import type { Scenario } from "../../../src/scenario/index.ts";
import type { Condition, MeasureName } from "../../../src/vocabulary/index.ts";
import { root } from "../../source.ts";

// A hazard that exists here alone goes through the whole program, which is loaded anew, after the hazard's lines in the
// lists, and once more for whoever comes after: what other tests have loaded knows nothing of it.
vi.resetModules();
afterAll(() => {
	vi.resetModules();
});
const { LooseClip } = await import("./loose-clip.ts");
const { compareHtml, dayTables, reportHtml } = await import("../../../src/report/index.ts");
const { readScenario } = await import("../../../src/scenario/index.ts");
const {
	armsOf,
	blockCount,
	compareDrawings,
	compareResult,
	comparisonStudy,
	dayResult,
	ProjectionGathering,
	runBlocks,
	StudyGathering,
	StudyRunner,
	studyTasks,
	traceDay,
} = await import("../../../src/studies/index.ts");
const { TherapyDay, unobserved } = await import("../../../src/therapy/index.ts");

const looseClip = "clip-loose" as Condition; // the type knows the program's own conditions
const demo = readScenario(readFileSync(join(root, "scenarios", "compare-thigh.yaml"), "utf8"));
const scenario: Scenario = { ...demo, replications: 200 };
const perDay = 2.4;
/** Four standard errors of the mean of Poisson counts, over as many days. */
const slackOver = (days: number) => 4 * Math.sqrt(perDay / days);

/** The same days without the new hazard: its clips hold. */
const sound: Scenario = { ...scenario, constants: { ...scenario.constants, ["clip.rate" as "kink.rate"]: 0 } };

describe("a clip that works loose", () => {
	test("comes at its rate, but while it is loose or no dressing is on", () => {
		const day = new TherapyDay(scenario, unobserved);
		LooseClip.times = 0;
		const days = 500;
		for (let replication = 0; replication < days; replication++) day.run(replication, unobserved);
		const mean = LooseClip.times / days / (scenario.horizonMin / 1440);
		expect(mean).toBeLessThan(perDay + slackOver(days));
		// Some ten minutes pass each time until it is fastened again, and now and then the dressing is off.
		expect(mean).toBeGreaterThan(perDay * (1 - (perDay * 12) / 1440) - slackOver(days));
	});

	test("switches suction off until a nurse, called by an alarm of its own, has fastened it", () => {
		const { dressings } = traceDay(scenario, undefined, 3);
		const [{ alarms, pauses }] = dressings;
		const own = alarms.filter(({ condition }) => condition === looseClip);
		expect(own.length).toBeGreaterThan(0);
		for (const { startMin, endMin, endedBy, priority } of own) {
			expect([endedBy, priority]).toEqual(["call", "medium"]);
			expect(endMin - startMin).toBeGreaterThan(2);
			const off = pauses.filter(({ reason }) => reason === "off");
			expect(off).toContainEqual(expect.objectContaining({ startMin, endMin }));
		}
	});

	test("draws from substreams of its own: all the others stay as they are", () => {
		const trace = (of: Scenario) => traceDay(of, undefined, 3).trace;
		expect(trace(sound)).not.toEqual(trace(scenario));
		const before = traceDay(sound, undefined, 3).dressings[0];
		expect(before.alarms.filter(({ condition }) => condition === looseClip)).toEqual([]);
		const [{ startMin }] = traceDay(scenario, undefined, 3).dressings[0].alarms.filter(
			({ condition }) => condition === looseClip,
		);
		const phasesUntil = (of: Scenario) =>
			traceDay(of, undefined, 3).dressings[0].phases.filter(({ endMin }) => endMin < startMin);
		expect(phasesUntil(scenario)).toEqual(phasesUntil(sound));
	});

	test("with chance off never happens", () => {
		const { dressings } = traceDay({ ...scenario, chance: false }, undefined, 0);
		expect(dressings[0].alarms.filter(({ condition }) => condition === looseClip)).toEqual([]);
	});
});

describe("its alarm", () => {
	const gathered = new ProjectionGathering(scenario);
	for (const block of [runBlocks(scenario, 0, blockCount(scenario))]) gathered.add(block);
	const day = dayResult(scenario, gathered, "1.2.3");

	test("is projected like any other", () => {
		const alarm = day.projection.dressings[0].alarms.find(({ condition }) => condition === looseClip);
		expect(alarm?.meanPerDay).toBeGreaterThan(1.5);
		expect(alarm?.bins.some(({ probability }) => probability > 0)).toBe(true);
	});

	test("stands in the report and its tables, by its name, with its assumptions", () => {
		const { document } = new JSDOM("").window;
		const text = new JSDOM(reportHtml(day, document)).window.document.body.textContent ?? "";
		expect(text).toContain("clip loose");
		expect(day.assumptions.map(({ name }) => name)).toEqual(expect.arrayContaining(["clip.rate", "hands.clip"]));
		expect(Object.values(dayTables(day)).join("\n")).toContain("clip-loose");
	});

	test("is what regimens can be compared by", () => {
		const measure = "alarms.clip-loose" as MeasureName; // as above
		const arms = armsOf(scenario, ["short", "long"]);
		const study = comparisonStudy(arms);
		const gathering = new StudyGathering(study);
		const runner = new StudyRunner(study);
		for (const task of studyTasks(study, 0, blockCount(scenario))) gathering.add(runner.run(task));
		const result = compareResult(scenario, arms, gathering.groups(blockCount(scenario))[0], {
			measures: [measure],
			targets: [],
			restsOn: null,
			drawn: { replication: 0, typicalOf: null },
			version: "1.2.3",
		});
		const difference = result.differences.find((one) => one.measure === measure);
		// The clip knows nothing of regimens: on the same random numbers it comes loose as often under both.
		expect(Math.abs(difference?.mean ?? Number.NaN)).toBeLessThan(0.2);
		const html = compareHtml(result, compareDrawings(arms, 0, "1.2.3"), new JSDOM("").window.document);
		expect(new JSDOM(html).window.document.body.textContent).toContain("Alarms: clip loose");
	});
});
