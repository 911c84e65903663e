import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { airToThin, constantsWith, drawdownMin } from "../../src/physics/index.ts";

const constants = constantsWith();

/** Minutes to `depth` by steps of dp/dt = (Patm/Vair)·(f·Q0·(1 − p/pmax) − C·p) (Runge–Kutta, fourth order); null where 3 min are not enough. */
function byIntegration(share: number, depth: number, airL: number): number | null {
	const rate = (p: number) => (760 / airL) * (share * 8 * (1 - p / 250) - 0.0002 * p);
	const step = 1e-4;
	let p = 0;
	for (let n = 0; n < 30_000; n++) {
		const a = rate(p);
		const b = rate(p + (step * a) / 2);
		const c = rate(p + (step * b) / 2);
		const d = rate(p + step * c);
		const next = p + (step * (a + 2 * b + 2 * c + d)) / 6;
		if (next >= depth) return step * (n + (depth - p) / (next - p));
		p = next;
	}
	return null;
}

describe("how long a drawdown takes", () => {
	test("as the equation of section 3 does, stepped by Runge and Kutta", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.001, max: 1, noNaN: true }),
				fc.double({ min: 5, max: 200, noNaN: true }),
				fc.double({ min: 0.2, max: 3, noNaN: true }),
				(share, depth, airL) => {
					const minutes = drawdownMin(share, depth, airL, constants);
					const stepped = byIntegration(share, depth, airL);
					if (stepped === null) expect(minutes).toBeGreaterThan(2.999);
					else expect(Math.abs(minutes - stepped)).toBeLessThan(2e-4);
				},
			),
			{ numRuns: 40 },
		);
	});

	test("15 % takes about 14 s to −125 mmHg behind 240 mL of foam and an empty canister of 1000 mL", () => {
		const airL = airToThin(constants, 0.34 * 240, 1000, 0);
		expect(airL).toBeCloseTo(1.2316, 9);
		expect(60 * drawdownMin(0.15, 125, airL, constants)).toBeCloseTo(14.3, 1);
	});

	test("a canister that holds something leaves less air, and is quicker", () => {
		const empty = airToThin(constants, 80, 1000, 0);
		const half = airToThin(constants, 80, 1000, 500);
		expect(drawdownMin(0.15, 125, half, constants)).toBeLessThan(drawdownMin(0.15, 125, empty, constants));
	});

	test("a depth beyond what the share of the pump reaches is never reached", () => {
		expect(drawdownMin(0.001, 125, 1.2, constants)).toBe(Number.POSITIVE_INFINITY);
	});
});
