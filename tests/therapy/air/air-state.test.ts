import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Constants, constantsWith } from "../../../src/physics/index.ts";
import { Air } from "../../../src/therapy/air/air-state.ts";

const never = Number.POSITIVE_INFINITY;
const voidL = 0.08;

/** Air under a sound seal, for a set depth of 125 mmHg and a drawdown by 15 % of the pump's flow. */
function made(depth = 0, leak = 0.0002, constants: Partial<Constants> = {}) {
	const air = new Air(constantsWith(constants), voidL);
	air.reset();
	air.setDepth = 125;
	air.drawdownShare = 0.15;
	air.depth = depth;
	air.leak = leak;
	air.compare();
	return air;
}

/** Air of 1.2 L whose pump has started at minute 10 and is planned at once. */
function started(depth: number, leak?: number, volume = 1.2) {
	const air = made(depth, leak);
	air.pumpStart(10, volume);
	return { air, end: air.plan(10, true, true, -1) };
}

/** dp/dt of the model, (Patm/Vair)·(S·(1 − p/pmax) − C·p), mmHg/min, with its default constants. */
const slope = (depth: number, volume: number, flow: number, leak: number) =>
	(760 / volume) * (flow * (1 - depth / 250) - leak * depth);

/** The curve rises and falls as the model says, at its beginning and further on. */
function expectSlope(air: Air, volume: number, flow: number) {
	const h = 1e-5;
	for (const at of [0, 0.01, 0.03]) {
		const rise = (air.depthAfter(at + h) - air.depthAfter(at)) / h;
		const depth = air.depthAfter(at + h / 2);
		expect(rise).toBeCloseTo(slope(depth, volume, flow, air.leak), 3);
	}
}

describe("depth of the air under a dressing", () => {
	test("is none at the beginning of a day, under a sound seal", () => {
		const air = made(80, 0.3);
		air.towards = 7;
		air.tau = 2;
		air.reset();
		expect([air.depth, air.towards, air.tau, air.leak]).toEqual([0, 0, never, 0.0002]);
		expect(air.depthAfter(60)).toBe(0);
	});

	test("grows by the balance of a pump held back, the leak and the thinned air, up to the set depth and no further", () => {
		const { air, end } = started(0, 0.001);
		expectSlope(air, 1.2, 0.15 * 8);
		expect(air.next).toBe("set");
		expect(air.depthAfter(end)).toBeCloseTo(125, 9);
		expect(air.depthAfter(end - 0.01)).toBeLessThan(125);
		expect(air.depthAfter(end + 5)).toBe(125);
	});

	test("stands at the set depth once it has got there, by all of the pump's flow from then on", () => {
		const { air, end } = started(0, 0.001);
		air.depth = air.depthAfter(end);
		air.cross(-1);
		expect([air.depth, air.reached]).toEqual([125, true]);
		// Of a breach 3.1 L/min leak away: more than the 0.6 that the pump moves there while held back.
		air.leak = 0.025;
		expect(air.plan(10 + end, true, true, -1)).toBe(never);
		expect(air.next).toBe("none");
		expect(air.depthAfter(1000)).toBe(125);
	});

	test("is drawn by all of the pump's flow when 3 min are over, wherever it has got to", () => {
		const { air, end } = started(0, 0.0002, 20);
		expect([air.next, end]).toEqual(["limit", 3]);
		air.depth = air.depthAfter(1);
		expect(air.plan(11, true, true, -1)).toBe(2);
		expectSlope(air, 20, 0.15 * 8);
		air.depth = air.depthAfter(2);
		const { depth } = air;
		air.cross(-1);
		expect([air.depth, air.reached]).toEqual([depth, false]);
		const more = air.plan(13, true, true, -1);
		expectSlope(air, 20, 8);
		expect(air.next).toBe("set");
		expect(air.depthAfter(more)).toBeCloseTo(125, 9);
	});

	test("begins at the set depth where it was deeper, and counts as reached only there", () => {
		expect(started(150).air.depth).toBe(125);
		expect(started(150).air.reached).toBe(true);
		expect(started(125).air.reached).toBe(true);
		expect(started(124).air.reached).toBe(false);
		expect(started(124).air.depth).toBe(124);
	});

	test("is held against just the leak that all of the pump's flow makes up for", () => {
		// At 125 of 250 mmHg the pump moves 4 L/min.
		expect(started(125, 4 / 125).end).toBe(never);
		expect(started(125, 4 / 125).air.tau).toBe(never);
		const lost = started(125, 4.01 / 125).air;
		expect(lost.depthAfter(1)).toBeLessThan(125);
		expectSlope(lost, 1.2, 8);
	});

	test("that a leak has cost is won back by all of the pump's flow when the leak is patched", () => {
		const { air } = started(125, 0.1, 12);
		air.depth = air.depthAfter(1);
		air.leak = 0.0002;
		const end = air.plan(11, true, true, -1);
		expectSlope(air, 12, 8);
		expect(air.next).toBe("set");
		expect(air.depthAfter(end)).toBeCloseTo(125, 9);
	});

	test("that no pump keeps up with runs to where its flow is what leaks, and ends nowhere", () => {
		const { air, end } = started(125, 0.1);
		expect([end, air.next]).toEqual([never, "none"]);
		const depth = air.depthAfter(60);
		expect(8 * (1 - depth / 250)).toBeCloseTo(0.1 * depth, 9);
	});

	test.each([
		// pump on, path open; the air that is left to fill
		[false, true, 1.2],
		[false, false, voidL],
		[true, false, voidL],
	])(
		"fades by the leak alone where the pump draws nothing (on: %s, path open: %s), into %d L",
		(pumpOn, pathOpen, volume) => {
			const { air } = started(125, 0.001);
			expect(air.plan(20, pumpOn, pathOpen, 60)).toBe(never);
			expect(air.next).toBe("none");
			expectSlope(air, volume, 0);
		},
	);

	test("stands where the pump draws nothing and nothing leaks, or there is none", () => {
		for (const [depth, leak] of [
			[125, 0],
			[100, 0], // just not low
			[0, 0.001],
		]) {
			const { air } = started(depth, leak);
			air.plan(20, false, true, -1);
			expect([air.tau, air.depthAfter(60)]).toEqual([never, depth]);
			air.plan(20, true, false, -1);
			expect([air.tau, air.lowMin]).toEqual([never, never]);
		}
	});

	test("that falls ends at the balance at which a level that is held is let go, if it comes by there", () => {
		const at = (balance: number, depth = 120, volume = 1.2) => {
			const air = made(depth, 0.02);
			air.drawdownShare = 0.05;
			air.pumpStart(10, volume);
			const end = air.plan(10, true, true, balance);
			return { air, end };
		};
		const { air, end } = at(60);
		expect(air.next).toBe("balance");
		expect(air.depthAfter(end)).toBeCloseTo(60, 9);
		air.cross(60);
		expect([air.depth, air.reached]).toEqual([60, false]);
		// 0.4 L/min against the leak of 0.02 come to rest at 18.5 mmHg.
		expect(at(18).air.next).toBe("limit");
		expect(at(-1).air.next).toBe("limit");
		expect(at(120.5).air.next).toBe("limit");
		expect(at(120)).toMatchObject({ air: { next: "balance" }, end: 0 });
		// A depth that grows lets nothing go.
		expect(at(15, 10).air.next).toBe("limit");
		// Much air thickens slowly: the drawdown ends before.
		expect(at(20).air.next).toBe("balance");
		expect(at(20, 120, 20).air.next).toBe("limit");
	});
});

describe("marks of depth", () => {
	test("are compared with how things stand: low below 0.8 of the set depth, leaking above a limit, here 2 L/min", () => {
		const flags = (depth: number, leak: number) => {
			const { low, leaking } = made(depth, leak, { "leak.limit": 2 });
			return { low, leaking };
		};
		expect(flags(100, 0.02)).toEqual({ low: false, leaking: false });
		expect(flags(99.9, 0.01)).toEqual({ low: true, leaking: false });
		expect(flags(100, 0.0201)).toEqual({ low: false, leaking: true });
	});

	test("are passed when the curve passes them, once, and turn their flag: whatever pump, path and leak do", () => {
		const seen = { low: 0, leaking: 0, set: 0, balance: 0, limit: 0, none: 0 };
		const number = (min: number, max: number) =>
			fc.integer({ min: 0, max: 10_000 }).map((i) => min + (max - min) * (i / 1e4));
		fc.assert(
			fc.property(
				number(0, 125),
				fc.oneof(fc.constant(0), number(0.0002, 0.1)),
				number(0.2, 12),
				fc.constantFrom(0, 1, 5),
				fc.constantFrom(true, true, false),
				fc.oneof(fc.constant(-1), number(0, 120)),
				(depth, leak, volume, later, open, balance) => {
					const air = made(depth, leak);
					air.pumpStart(10, volume);
					const { low, leaking } = air;
					const end = air.plan(10 + later, true, open, balance);
					if (air.lowMin < end) seen.low++;
					if (air.leakingMin < end) seen.leaking++;
					seen[air.next]++;
					if (air.tau === never) {
						expect([air.lowMin, air.leakingMin]).toEqual([never, never]);
						return;
					}
					const span = Math.min(end, 20 * air.tau);
					let wrong = 0;
					for (let i = 1; i < 200; i++) {
						const at = (span * i) / 200;
						const p = air.depthAfter(at);
						const isLow = at < air.lowMin ? low : !low;
						if (Math.abs(p - 100) > 1e-6 && p < 100 !== isLow) wrong++;
						// Leaks are watched where the pump draws.
						const leaks = at < air.leakingMin ? leaking : !leaking;
						if (open && Math.abs(leak * p - 1.8) > 1e-6 && leak * p > 1.8 !== leaks) wrong++;
					}
					expect(wrong).toBe(0);
				},
			),
			{ numRuns: 2000, seed: 12 },
		);
		// Everything that can be met is met.
		for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
	});

	test("are none for a pump that is off", () => {
		const { air } = started(125, 0.02);
		expect(air.leaking).toBe(true);
		air.plan(20, false, true, -1);
		expect([air.lowMin, air.leakingMin]).toEqual([never, never]);
	});

	test("that lie just behind, their flag not turned yet, are passed at once", () => {
		// Falling through 100 mmHg, and through the limit of the leak at 90.
		const { air } = started(125, 0.1);
		air.depth = 99.999;
		air.plan(10, true, true, -1);
		expect([air.low, air.lowMin]).toEqual([false, 0]);
		air.depth = 100;
		air.plan(10, true, true, -1);
		expect(air.lowMin).toBe(0);
		air.plan(10, true, false, -1);
		expect(air.lowMin).toBe(0);
		// Rising through them.
		const rising = started(0, 0.016).air;
		rising.depth = 100;
		rising.plan(14, true, true, -1);
		expect([rising.low, rising.lowMin]).toEqual([true, 0]);
		rising.depth = 112.5;
		rising.plan(14, true, true, -1);
		expect([rising.leaking, rising.leakingMin]).toEqual([false, 0]);
		rising.depth = 113;
		rising.plan(14, true, true, -1);
		expect(rising.leakingMin).toBe(0);
	});
});
