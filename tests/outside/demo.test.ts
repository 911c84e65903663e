import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Dressing, readScenario, type Scenario } from "../../src/scenario/index.ts";
import { addTo, halfWidth, noMoments } from "../../src/statistics/index.ts";
import { totalsOf } from "../../src/studies/trace/totals.ts";
import { traceDay } from "../../src/studies/trace/trace-day.ts";
import { unobserved } from "../../src/therapy/base/observer.ts";
import { TherapyDay } from "../../src/therapy/index.ts";

// Facts of the trade in the example scenarios as they are: common practice, no source, every one of them.

const example = (name: string): Scenario =>
	readScenario(readFileSync(new URL(`../../scenarios/${name}`, import.meta.url), "utf8"));

const withRegimens = (scenario: Scenario, regimens: Dressing["regimens"]): Scenario => ({
	...scenario,
	dressings: [{ ...scenario.dressings[0], regimens }],
});

/** One total of the first dressing, in every replication that the scenario asks for. */
function each(scenario: Scenario, name: "breaches" | "washes" | "alarms"): number[] {
	const day = new TherapyDay(scenario, unobserved);
	return Array.from({ length: scenario.replications }, (_, replication) => {
		day.run(replication, unobserved);
		return totalsOf(day.processes[0], scenario.horizonMin)[name];
	});
}

/** The 95 % interval of the paired difference high − low lies above 0. */
function expectAbove(high: readonly number[], low: readonly number[]): void {
	const moments = noMoments();
	high.forEach((value, replication) => {
		addTo(moments, value - low[replication]);
	});
	expect(moments.mean - (halfWidth(moments) ?? Number.NaN)).toBeGreaterThan(0);
}

describe("compare-thigh.yaml: dwell and leaks (common practice, no source)", () => {
	const scenario = example("compare-thigh.yaml");
	const arm = (name: string) => {
		const patch = scenario.compare.find((one) => one.name === name);
		if (patch === undefined) throw new Error(`no regimen called ${name}`);
		return withRegimens(scenario, patch.regimens[scenario.dressings[0].id]);
	};

	test("the shorter dwell, though more often, has fewer breaches of the seal", () => {
		const [short, long] = [arm("short"), arm("long")];
		expectAbove(each(short, "washes"), each(long, "washes"));
		expectAbove(each(long, "breaches"), each(short, "breaches"));
	});
});

describe("transfer-begin-fill.yaml and transfer-begin-suction.yaml (common practice, no source)", () => {
	const [fill, suction] = [example("transfer-begin-fill.yaml"), example("transfer-begin-suction.yaml")];

	test("beginning in suction has fewer breaches of the seal when a transfer comes soon", () => {
		expectAbove(each(fill, "breaches"), each(suction, "breaches"));
	});

	test("within the quarter of an hour of the transfer alone as well", () => {
		const soon = (scenario: Scenario) => each({ ...scenario, horizonMin: 15 }, "breaches");
		expectAbove(soon(fill), soon(suction));
	});
});

describe("thigh-short-dwell.yaml: depth and drains (common practice, no source)", () => {
	const scenario = { ...example("thigh-short-dwell.yaml"), chance: false };
	/** Minutes of each drain of the day at a depth, mmHg below ambient. */
	const drains = (depthMmHg: number) => {
		const [regimen] = scenario.dressings[0].regimens;
		return traceDay(withRegimens(scenario, [{ ...regimen, depthMmHg }]))
			.dressings[0].phases.filter(({ phase }) => phase === "drain")
			.map(({ startMin, endMin }) => endMin - startMin);
	};

	test.each([
		[50, 75],
		[75, 100],
		[100, 125],
		[125, 150],
		[150, 175],
	])("every drain at −%d mmHg is slower than at −%d", (shallow, deep) => {
		const [slower, quicker] = [drains(shallow), drains(deep)];
		expect(slower).toHaveLength(quicker.length);
		expect(slower.length).toBeGreaterThan(5);
		slower.forEach((minutes, i) => {
			expect(minutes).toBeGreaterThan(quicker[i]);
		});
	});
});
