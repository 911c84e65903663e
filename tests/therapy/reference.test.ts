import { describe, expect, test } from "vitest";
import type { Happening } from "../../src/scenario/index.ts";
import { traceDay } from "../../src/studies/trace/trace-day.ts";
import { longDwell, reference, withDressing } from "./example.ts";

const of = (phases: readonly { phase: string; startMin: number; endMin: number }[], phase: string) =>
	phases.filter((p) => p.phase === phase);
const scripted = (...happenings: Happening[]) => traceDay({ ...reference, happenings }).dressings[0];

describe("reference figures of the model, chance off", () => {
	test("5 min every 2 h: 11 fills, 550 mL, first fill after the first suction period", () => {
		const day = traceDay(reference).dressings[0];
		expect(day.totals.fills).toBe(11);
		expect(day.totals.instilledMl).toBeCloseTo(550, 9);
		expect(of(day.phases, "fill")[0].startMin).toBe(120);
		const drain = of(day.phases, "drain")[0];
		expect(drain.startMin).toBeCloseTo(125.8333, 3);
		expect(drain.endMin - drain.startMin).toBeCloseTo(0.51, 2);
		expect(day.totals.toCanisterMl).toBeCloseTo(705.47, 2);
		expect(day.totals.meanExudateShare).toBeCloseTo(0.625, 3);
		expect(day.alarms).toEqual([]);
	});
	test("10 min every 3.5 h: 6 fills, 300 mL", () => {
		const day = traceDay(withDressing({ regimens: [longDwell] })).dressings[0];
		expect(day.totals.fills).toBe(6);
		expect(day.totals.instilledMl).toBeCloseTo(300, 9);
		expect(of(day.phases, "fill")[0].startMin).toBe(210);
		expect(of(day.phases, "drain")[0].startMin).toBeCloseTo(220.8333, 3);
		expect(day.totals.meanExudateShare).toBeCloseTo(0.759, 3);
	});
	test("a breach of 0.025 at 200 min is a seal leak from 201 to 215", () => {
		const day = scripted({ atMin: 200, dressing: "thigh", what: "breach", size: 0.025 });
		expect(day.alarms.map((a) => [a.condition, a.startMin, a.endMin])).toEqual([["seal-leak", 201, 215]]);
	});
	test("a kink of the suction line at 300 min is obstructed from 303 to 308", () => {
		const day = scripted({ atMin: 300, dressing: "thigh", what: "kink-suction" });
		expect(day.alarms.map((a) => [a.condition, a.startMin, a.endMin])).toEqual([["suction-path-obstructed", 303, 308]]);
	});
	test("a kink of the fill line at 100 min stays unnoticed until the fill", () => {
		const day = scripted({ atMin: 100, dressing: "thigh", what: "kink-fill" });
		expect(day.alarms.map((a) => [a.condition, a.startMin, a.endMin])).toEqual([
			["fill-path-obstructed", 120.5, 125.5],
		]);
		expect(of(day.phases, "dwell")[0].startMin).toBeCloseTo(126.3333, 3);
	});
	test("a source of 230 mL is empty in the fifth fill", () => {
		const day = traceDay(withDressing({ sourceMl: 230 })).dressings[0];
		expect(day.alarms[0].condition).toBe("source-empty");
		expect(day.alarms[0].startMin).toBeCloseTo(623.8333, 3);
		expect(day.sourceChanges[0].atMin).toBeCloseTo(630.8333, 3);
	});
});
