import { describe, expect, test } from "vitest";
import type { Scenario } from "../../src/scenario/index.ts";
import { traceDay } from "../../src/studies/index.ts";
import { longDwell, reference, thigh } from "../therapy/example.ts";

const chancy: Scenario = {
	...reference,
	chance: true,
	horizonMin: 4320,
	care: { ...reference.care, turningMin: 240, roundsClockMin: [420, 1140] },
};
const seeds = ["a", "b", "c", "d", "e", "f", "g", "h"];

describe("common random numbers", () => {
	test("a second dressing changes nothing of the first", () => {
		for (const seed of seeds) {
			const alone = traceDay({ ...chancy, seed }).dressings[0];
			const other = { ...thigh, id: "calf", foamVolumeMl: 100 };
			const both = traceDay({ ...chancy, seed, dressings: [thigh, other] });
			expect(both.dressings[0]).toEqual(alone);
			expect(both.dressings[1].totals.exudateMl).not.toBe(alone.totals.exudateMl);
		}
	});
	test("a second regimen sees the same exudate, to 1e-9 mL", () => {
		for (const seed of seeds) {
			const short = traceDay({ ...chancy, seed }).dressings[0].totals;
			const other = [{ ...thigh, regimens: [longDwell] }];
			const long = traceDay({ ...chancy, seed, dressings: other }).dressings[0].totals;
			expect(Math.abs(short.exudateMl - long.exudateMl)).toBeLessThan(1e-9);
			expect(short.instilledMl).not.toBe(long.instilledMl);
		}
	});
	test("drawdown speed changes no total by more than 1 mL, chance off", () => {
		const totals = [0.05, 0.15, 0.5].map(
			(drawdown) =>
				traceDay({ ...reference, dressings: [{ ...thigh, regimens: [{ ...thigh.regimens[0], drawdown }] }] })
					.dressings[0].totals,
		);
		for (const name of ["instilledMl", "toCanisterMl", "exudateMl"] as const)
			for (const other of totals) expect(Math.abs(other[name] - totals[0][name])).toBeLessThan(1);
	});
});
