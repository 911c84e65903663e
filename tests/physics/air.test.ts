import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	canHold,
	depthAfter,
	depthIntegral,
	equilibriumDepth,
	leakFlow,
	pumpFlow,
	timeConstant,
	timeToDepth,
} from "../../src/physics/index.ts";

interface Air {
	readonly air: number;
	readonly flow: number;
	readonly maxDepth: number;
	readonly leak: number;
}

const ambient = 760;

/** dp/dt = (Patm/Vair)·(Q(p) − C·p). */
const rate = ({ air, flow, maxDepth, leak }: Air, depth: number) =>
	(ambient / air) * (flow - (flow * depth) / maxDepth - leak * depth);

/** Depth and its integral after `minutes`, by the classical Runge–Kutta rule in `steps` steps. */
function integrated(law: Air, from: number, minutes: number, steps = 4000) {
	const h = minutes / steps;
	let [depth, integral] = [from, 0];
	for (let i = 0; i < steps; i++) {
		const k1 = rate(law, depth);
		const k2 = rate(law, depth + (h / 2) * k1);
		const k3 = rate(law, depth + (h / 2) * k2);
		const k4 = rate(law, depth + h * k3);
		integral += h * depth + (h * h * (k1 + k2 + k3)) / 6;
		depth += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
	}
	return { depth, integral };
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const laws = fc.record({
	air: between(0.02, 2),
	flow: fc.oneof(fc.constant(0), between(0.1, 10)),
	maxDepth: between(150, 760),
	leak: between(1e-4, 0.05),
});
const depths = between(0, 200);

const approach = (law: Air) => ({
	towards: law.flow === 0 ? 0 : equilibriumDepth(law.flow, law.maxDepth, law.leak),
	tau: timeConstant(law.air, ambient, law.flow, law.maxDepth, law.leak),
});

describe("air under the drape", () => {
	test("depth and its integral follow the differential equation, pump running or stopped", () => {
		fc.assert(
			fc.property(laws, depths, between(0.01, 6), (law, from, constants) => {
				const { towards, tau } = approach(law);
				const minutes = constants * tau;
				const numeric = integrated(law, from, minutes);
				expect(Math.abs(depthAfter(minutes, from, towards, tau) - numeric.depth)).toBeLessThan(1e-8);
				expect(
					Math.abs(depthIntegral(minutes, from, towards, tau) - numeric.integral) / Math.max(minutes, 1),
				).toBeLessThan(1e-7);
			}),
			{ numRuns: 200, seed: 760 },
		);
	});

	test("time and depth are each other's inverse", () => {
		fc.assert(
			fc.property(laws, depths, between(0.01, 0.99), (law, from, share) => {
				const { towards, tau } = approach(law);
				fc.pre(Math.abs(towards - from) > 1e-3);
				const to = from + share * (towards - from);
				const time = timeToDepth(from, to, towards, tau);
				expect(time).toBeGreaterThan(0);
				expect(Math.abs(depthAfter(time, from, towards, tau) - to)).toBeLessThan(1e-9 * Math.max(1, from, towards));
			}),
			{ numRuns: 500, seed: 125 },
		);
	});

	test("the depth it runs to is where pump and leak are in balance", () => {
		fc.assert(
			fc.property(laws, ({ flow, maxDepth, leak }) => {
				fc.pre(flow > 0);
				const depth = equilibriumDepth(flow, maxDepth, leak);
				expect(Math.abs(pumpFlow(flow, maxDepth, depth) - leakFlow(leak, depth))).toBeLessThan(1e-9);
				expect(canHold(flow, maxDepth, leak, 0.999 * depth)).toBe(true);
				expect(canHold(flow, maxDepth, leak, 1.001 * depth)).toBe(false);
			}),
			{ seed: 250 },
		);
	});

	test("without a leak it runs to the deepest suction of the pump, which then moves nothing", () => {
		expect(equilibriumDepth(8, 250, 0)).toBe(250);
		expect(pumpFlow(8, 250, 250)).toBe(0);
		expect(pumpFlow(8, 250, 0)).toBe(8);
		expect(canHold(8, 250, 0, 250)).toBe(true);
	});

	test("a depth that is there takes no time, one beyond what it runs to is never reached", () => {
		expect(timeToDepth(125, 125, 200, 2)).toBe(0);
		expect(timeToDepth(125, 125, 125, 2)).toBe(0);
		expect(timeToDepth(125, 125, 0, Number.POSITIVE_INFINITY)).toBe(0);
		expect(timeToDepth(0, 200, 200, 2)).toBe(Number.POSITIVE_INFINITY);
		expect(timeToDepth(0, 201, 200, 2)).toBe(Number.POSITIVE_INFINITY);
		expect(timeToDepth(100, 0, 0, 2)).toBe(Number.POSITIVE_INFINITY);
	});

	test("a stopped pump without a leak keeps its depth for ever", () => {
		const tau = timeConstant(0.2, ambient, 0, 250, 0);
		expect(tau).toBe(Number.POSITIVE_INFINITY);
		expect(depthAfter(1e6, 125, 0, tau)).toBe(125);
		expect(depthIntegral(4, 125, 0, tau)).toBe(500);
	});
});
