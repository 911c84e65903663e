import { describe, expect, test } from "vitest";
import { constantsWith } from "../../src/physics/index.ts";
import type { Projection, Spread } from "../../src/results/index.ts";
import type { Happening, Scenario } from "../../src/scenario/index.ts";
import { usualDepth } from "../../src/scenario/meaning/practice.ts";
import { ProjectionGathering, runBlocks } from "../../src/studies/index.ts";
import { traceDay } from "../../src/studies/trace/trace-day.ts";
import { readChanged } from "../scenario/sample.ts";
import { longDwell, reference, shortDwell, thigh, withDressing } from "../therapy/example.ts";

// Facts of the trade: common practice, no source, every one of them.

function project(scenario: Scenario): Projection {
	const gathered = new ProjectionGathering(scenario);
	gathered.add(runBlocks(scenario, 0, Math.ceil(scenario.replications / 50)));
	return gathered.projection();
}

/** The first lies above the second by more than both half-widths. */
function expectAbove(high: Spread, low: Spread): void {
	const width = (spread: Spread) => spread.halfWidth95 ?? Number.NaN;
	expect(high.mean - low.mean).toBeGreaterThan(width(high) + width(low));
}

const transferAt = (atMin: number): Happening => ({ atMin, dressing: "thigh", what: "transfer" });

describe("programmes in use (common practice, no source)", () => {
	test("10 min every 3.5 h and 5 min every 2 h make 6 and 11 fills a day", () => {
		const fills = (regimen: typeof longDwell) =>
			traceDay(withDressing({ regimens: [regimen] })).dressings[0].totals.fills;
		expect(fills(longDwell)).toBe(6);
		expect(fills(shortDwell)).toBe(11);
	});

	test("a dwell of a minute, of tens of minutes, and a suction period of hours are read", () => {
		for (const [dwell, suction] of [
			["1 min", "1 h"],
			["30 min", "6 h"],
			["60 min", "12 h"],
		]) {
			const { regimens } = readChanged((raw) => {
				Object.assign(raw.dressings[0].regimen, { dwell, suction });
			}).dressings[0];
			expect(regimens[0].dwellMin).toBe(Number.parseInt(dwell, 10));
			expect(regimens[0].suctionMin).toBe(60 * Number.parseInt(suction, 10));
		}
	});

	test.each([
		["1.0 cm", 60],
		["1.6 cm", 100],
	])("a medium dressing with %s of foam is offered about %d mL", (thickness, usual) => {
		const { regimens } = readChanged((raw) => {
			raw.dressings[0].foam = [{ area: "240 cm2", thickness }];
			raw.dressings[0].regimen.fill = "suggested";
		}).dressings[0];
		expect(Math.abs(regimens[0].fillMl / usual - 1)).toBeLessThan(0.15);
	});

	test("−150 and −175 mmHg suit big necrotising wounds, −50 and −75 the abdomen and exposed organs", () => {
		const suits = (tissue: keyof typeof usualDepth, depth: number) =>
			depth >= usualDepth[tissue].least && depth <= usualDepth[tissue].most;
		for (const depth of [150, 175]) {
			expect(suits("necrotic-soft-tissue", depth)).toBe(true);
			expect(suits("open-abdomen", depth)).toBe(false);
			expect(suits("exposed-organ", depth)).toBe(false);
		}
		expect(suits("soft-tissue", 175)).toBe(false);
		for (const depth of [50, 75]) {
			expect(suits("open-abdomen", depth)).toBe(true);
			expect(suits("exposed-organ", depth)).toBe(true);
			expect(suits("necrotic-soft-tissue", depth)).toBe(false);
		}
	});
});

describe("dwell and leaks (common practice, no source)", () => {
	test("the shorter dwell leaks less and washes more often", () => {
		const many: Partial<Scenario> = { chance: true, replications: 800 };
		const totals = (regimen: typeof longDwell) =>
			project(withDressing({ regimens: [regimen] }, many)).dressings[0].totals;
		const [short, long] = [totals(shortDwell), totals(longDwell)];
		expectAbove(long.breaches, short.breaches);
		expectAbove(short.washes, long.washes);
	});
});

describe("leaving the operating room (common practice, no source)", () => {
	const twins = (begin: "suction" | "fill", rest: Partial<Scenario> = {}) =>
		withDressing({ regimens: [{ ...longDwell, begin }] }, { chance: true, happenings: [transferAt(4)], ...rest });

	test("beginning in suction gives fewer leaks when a transfer comes soon", () => {
		const breaches = (begin: "suction" | "fill") =>
			project(twins(begin, { horizonMin: 720, replications: 500 })).dressings[0].totals.breaches;
		expectAbove(breaches("fill"), breaches("suction"));
	});

	test("a leak of a wet transfer shows only when suction returns", () => {
		const { phases, alarms, totals } = traceDay(
			twins("fill", {
				horizonMin: 60,
				constants: constantsWith({ "transfer.wet": 1, "breach.sizeMedian": 0.05, "breach.sizeSigma": 0 }),
			}),
		).dressings[0];
		const dwell = phases.find((phase) => phase.phase === "dwell");
		expect(dwell?.startMin).toBeLessThan(4);
		expect(totals.breaches).toBeGreaterThanOrEqual(1);
		expect(alarms[0].condition).toBe("seal-leak");
		expect(dwell?.endMin).toBeGreaterThan(4);
		expect(alarms[0].startMin).toBeGreaterThan(dwell?.endMin ?? 60);
	});

	test.each([
		["short", shortDwell],
		["long", longDwell],
	])("beginning in suction, the first fill comes after the whole first period: %s", (_, regimen) => {
		const { phases } = traceDay(withDressing({ regimens: [regimen] })).dressings[0];
		const fill = phases.find((phase) => phase.phase === "fill");
		expect(fill?.startMin).toBe(regimen.suctionMin);
	});
});

describe("frequent causes of alarms (common practice, no source)", () => {
	const scripted = (...happenings: Happening[]) => traceDay({ ...reference, happenings }).dressings[0];

	test("a kinked fill line is an alarm of the fill path", () => {
		const day = scripted({ atMin: 60, dressing: "thigh", what: "kink-fill" });
		expect(day.alarms.map((alarm) => alarm.condition)).toEqual(["fill-path-obstructed"]);
		expect(day.totals.portsReplaced).toBe(0);
	});

	test("a full canister is one of the canister, and is changed", () => {
		const day = traceDay(withDressing({ canisterMl: 400 })).dressings[0];
		expect(day.alarms[0].condition).toBe("canister-at-capacity");
		expect(day.canisterChanges[0].reason).toBe("at-capacity");
	});

	test("a port clogged by debris is one of the suction path, and gets a new port", () => {
		const day = scripted({ atMin: 60, dressing: "thigh", what: "clog", share: 1 });
		expect(day.alarms[0].condition).toBe("suction-path-obstructed");
		expect(day.totals.portsReplaced).toBe(1);
	});
});

describe("several units on one patient (common practice, no source)", () => {
	const calf = { ...thigh, id: "calf", regimens: [{ ...longDwell, begin: "fill" as const }] };
	const both: Scenario = { ...reference, dressings: [thigh, calf] };

	test("need not be in step: each goes by its own clock", () => {
		const starts = traceDay(both).dressings.map((day) =>
			day.phases.filter((phase) => phase.phase === "fill").map((phase) => phase.startMin),
		);
		expect(starts[0]).toEqual(
			traceDay(reference)
				.dressings[0].phases.filter((phase) => phase.phase === "fill")
				.map((phase) => phase.startMin),
		);
		expect(starts[0].filter((at) => starts[1].includes(at))).toEqual([]);
	});

	test("share no luck: the day of one is the same with and without the other", () => {
		const alone = traceDay({ ...reference, chance: true }).dressings[0];
		const together = traceDay({ ...both, chance: true }).dressings;
		expect(together[0]).toEqual(alone);
		expect(together[1].totals.exudateMl).not.toBeCloseTo(together[0].totals.exudateMl, 3);
	});
});

describe("speed of the drawdown (common practice, no source)", () => {
	test("changes no volume: totals are equal to 1 mL with chance off", () => {
		const volumes = (drawdown: number) => {
			const { totals } = traceDay(withDressing({ regimens: [{ ...shortDwell, drawdown }] })).dressings[0];
			return [
				totals.fills,
				totals.instilledMl,
				totals.exudateMl,
				totals.toCanisterMl,
				totals.inDressingMl,
				totals.weptMl,
			];
		};
		const standard = volumes(0.15);
		for (const other of [volumes(0.05), volumes(0.5)])
			other.forEach((value, i) => {
				expect(Math.abs(value - standard[i])).toBeLessThan(1);
			});
		// and yet the speed is another
		const drain = (drawdown: number) => {
			const { phases } = traceDay(withDressing({ regimens: [{ ...shortDwell, drawdown }] })).dressings[0];
			const first = phases.find((phase) => phase.phase === "drain");
			return (first?.endMin ?? 0) - (first?.startMin ?? 0);
		};
		expect(drain(0.05)).toBeGreaterThan(1.5 * drain(0.5));
	});
});
