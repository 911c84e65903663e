import { describe, expect, test } from "vitest";
import { exponential } from "../../../src/engine/index.ts";
import type { Dressing } from "../../../src/scenario/index.ts";
import { Outflow } from "../../../src/therapy/hazards/outflow.ts";
import { Bench } from "../bench.ts";
import { thigh } from "../example.ts";

const fistula: Dressing = { ...thigh, outflow: { totalMlPerDay: 480, burstsPerDay: 12 } };
function made(chance: boolean, spec: Dressing) {
	const bench = new Bench({ chance, spec });
	return { bench, outflow: new Outflow(bench) };
}

describe("bursts of an outflow", () => {
	test("with chance off are evenly spaced and equal, the first after half a spacing", () => {
		const { outflow } = made(false, fistula);
		expect(outflow.spacingMin).toBe(120);
		expect(outflow.untilBurst(true)).toBe(60);
		expect(outflow.untilBurst(false)).toBe(120);
		expect(outflow.burstMl()).toBe(40);
	});

	test("with chance on come as a Poisson process, their volumes exponential", () => {
		const { bench, outflow } = made(true, fistula);
		const [times, volumes] = [bench.substream("outflow.times"), bench.substream("outflow.volumes")];
		for (const first of [true, false, false]) {
			expect(outflow.untilBurst(first)).toBe(120 * exponential(times));
			expect(outflow.burstMl()).toBe(40 * exponential(volumes));
		}
	});

	test("are none without an outflow, or with one that has none", () => {
		for (const dressing of [thigh, { ...thigh, outflow: { totalMlPerDay: 480, burstsPerDay: 0 } }]) {
			const { outflow } = made(false, dressing);
			expect(outflow.spacingMin).toBe(Number.POSITIVE_INFINITY);
			expect(outflow.burstMl()).toBe(0);
		}
	});

	test("too small to reckon with are none", () => {
		const drops = (totalMlPerDay: number) =>
			made(false, { ...thigh, outflow: { totalMlPerDay, burstsPerDay: 1 } }).outflow.burstMl();
		expect(drops(0.9e-9)).toBe(0);
		expect(drops(1.1e-9)).toBe(1.1e-9);
	});

	test("reach the dressing when they come, and the alarm of a large output is raised by one that is large", () => {
		const { bench, outflow } = made(false, { ...thigh, outflow: { totalMlPerDay: 1200, burstsPerDay: 4 } });
		outflow.begin();
		bench.sim.run(179.9);
		expect(bench.liquid.exudate).toBe(0);
		bench.sim.run(180.1);
		expect(bench.liquid.exudate).toBe(300);
		expect(bench.alarms.stands("large-output")).toBe(true);
		bench.sim.run(540.1);
		expect(bench.liquid.exudate).toBe(600);
	});
});
