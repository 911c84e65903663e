import { describe, expect, test } from "vitest";
import { exponential, gamma2 } from "../../../src/engine/index.ts";
import type { Constants } from "../../../src/physics/index.ts";
import { Clogging } from "../../../src/therapy/hazards/clogging.ts";
import { Bench } from "../bench.ts";

/** The port of a wound that sloughs threefold, and twins of its streams. */
function made(constants: Partial<Constants> = {}, slough = 3, chance = true) {
	const bench = new Bench({ constants: { ...constants, "slough.ordinary": slough }, chance });
	return {
		bench,
		port: new Clogging(bench),
		drains: bench.substream("debris.drain"),
		clumps: bench.substream("debris.clump"),
	};
}

/** Nothing but debris of suction alone. */
const alone = { "debris.perDrain": 0, "clump.chance": 0 };
/** Nothing but debris of dwells. */
const dwells = { "debris.perDay": 0, "clump.chance": 0 };

describe("debris in the suction port", () => {
	test("of suction alone is 3 % a day of a wound that sloughs ordinarily, added every 4 h", () => {
		const { bench, port } = made();
		port.begin();
		bench.sim.run(239);
		expect(port.debris).toBe(0);
		bench.sim.run(241);
		expect(port.debris).toBeCloseTo((3 * 0.03) / 6, 15);
		bench.sim.run(1441);
		expect(port.debris).toBeCloseTo(3 * 0.03, 12);
	});

	test("of suction alone is added at the end of every dwell too, and once: the 4 h begin there", () => {
		const { bench, port } = made(alone);
		bench.sim.run(60);
		port.begin();
		bench.sim.run(160);
		port.loosen(5);
		expect(port.debris).toBeCloseTo((3 * 0.03 * 100) / 1440, 15);
		bench.sim.run(399);
		expect(port.debris).toBeCloseTo((3 * 0.03 * 100) / 1440, 15);
		bench.sim.run(401);
		expect(port.debris).toBeCloseTo((3 * 0.03 * 340) / 1440, 15);
	});

	test("is none where nothing is left to chance, and none in a new port", () => {
		const { bench, port } = made({}, 3, false);
		port.begin();
		bench.sim.run(1440);
		expect(port.debris).toBe(0);
		port.add(0.4);
		port.dressingOn();
		expect(port.debris).toBe(0);
	});

	test("comes not while the dressing is being changed, nor does less than none come", () => {
		const { bench, port } = made();
		port.add(0.2);
		bench.phase = "change";
		port.add(0.4);
		bench.phase = "suction";
		port.add(0);
		port.add(-0.1);
		expect(port.debris).toBe(0.2);
		port.add(0.3);
		expect(port.debris).toBe(0.5);
	});

	test("settles what has been and plans anew where it comes, and only there", () => {
		const { bench, port } = made();
		let plans = 0;
		bench.plans = () => plans++;
		port.add(0);
		expect(plans).toBe(0);
		port.add(0.1);
		expect(plans).toBe(1);
	});

	test.each([3, 5, 60])("of a dwell of %d min is a gamma share of mean 0.02·slough·(1 − e^(−dwell/8 min))", (dwell) => {
		const { port, drains } = made(dwells);
		port.begin();
		let expected = 0;
		for (let n = 0; n < 3; n++) {
			port.loosen(dwell);
			expected += gamma2(drains, 0.02 * 3 * (1 - Math.exp(-dwell / 8)));
			expect(port.debris).toBeCloseTo(expected, 12);
		}
		// A longer one loosens by its own length.
		port.loosen(2 * dwell);
		expected += gamma2(drains, 0.02 * 3 * (1 - Math.exp(-dwell / 4)));
		expect(port.debris).toBeCloseTo(expected, 12);
	});

	test.each([
		// chance of a clump at a drain, slough
		[0.1, 3],
		[0.1, 1],
		[0.9, 3],
	])(
		"brings a clump of 0.3 on average at so many drains: %d times %d, and never at more than all",
		(chance, slough) => {
			const { port, clumps } = made({ "debris.perDrain": 0, "debris.perDay": 0, "clump.chance": chance }, slough);
			port.begin();
			let expected = 0;
			let came = 0;
			for (let n = 0; n < 200; n++) {
				port.loosen(5);
				if (clumps.uniform() < Math.min(1, chance * slough)) {
					came++;
					expected += 0.3 * exponential(clumps);
				}
				expect(port.debris).toBeCloseTo(expected, 9);
			}
			expect(came).toBeGreaterThan(5);
		},
	);
});

describe("what a port goes through", () => {
	test("a dwell that ends loosens debris, once, but for one that ends with its dressing", () => {
		const { bench, port } = made(dwells);
		port.begin();
		for (const [next, left] of [
			["dwell", "fill"],
			["suction", "drain"],
			["change", "dwell"],
			["suction", null],
		] as const)
			port.enter(next, left);
		expect(port.debris).toBe(0);
		bench.regimen = { ...bench.regimen, dwellMin: 5 };
		port.enter("drain", "dwell");
		const once = made(dwells).port;
		once.begin();
		once.loosen(5);
		expect(port.debris).toBe(once.debris);
		expect(port.debris).toBeGreaterThan(0);
	});

	test("a clear one in its place is counted; a dressing that comes off takes its debris along, uncounted", () => {
		const { port } = made();
		port.begin();
		port.add(0.4);
		port.replace();
		expect([port.debris, port.replaced]).toEqual([0, 1]);
		port.add(0.4);
		port.dressingOff();
		expect([port.debris, port.replaced]).toEqual([0, 1]);
	});
});
