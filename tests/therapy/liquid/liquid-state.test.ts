import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { constantsWith } from "../../../src/physics/index.ts";
import type { Air } from "../../../src/therapy/air/air-state.ts";
import { Liquid, type WayOut } from "../../../src/therapy/liquid/liquid-state.ts";

const never = Number.POSITIVE_INFINITY;
const k = constantsWith();
const foamMl = 240;

/** Air as the liquid knows it: its depth now, where that runs to, and how fast. */
const air = (depth: number, towards = depth, tau = 0.5) => ({ depth, towards, tau }) as Air; // the liquid asks for no more
const still = air(0, 0, never);
const deep = air(125);

/** A liquid of so much, all of it solution run in before. */
function liquidOf(level: number, share = 0): Liquid {
	const liquid = new Liquid(k, foamMl);
	liquid.reset(1000);
	liquid.fillRate = level;
	liquid.route(still, "none");
	liquid.advance(1, still);
	liquid.fillRate = 0;
	liquid.share = share;
	return liquid;
}

const wet = () => liquidOf(60);

describe("how liquid leaves", () => {
	const route = (liquid: Liquid, at: Air, way: WayOut = "none") => {
		liquid.route(at, way);
		return liquid.outflow;
	};
	const { retained } = new Liquid(k, foamMl);

	test("is at once where there is no dressing", () => {
		expect(route(wet(), deep, "no dressing")).toBe("discarded");
	});

	test("is not at all below what suction leaves, whatever draws", () => {
		const dry = liquidOf(retained - 1);
		dry.weepRate = 5;
		expect(route(dry, deep, "port")).toBe("still");
		expect(route(dry, deep, "edge")).toBe("still");
	});

	test("is through the port above that, and at that just as it comes", () => {
		expect(route(wet(), deep, "port")).toBe("draining");
		const level = liquidOf(retained);
		level.exudateRate = 1;
		expect(route(level, deep, "port")).toBe("held");
		// The port of 1 mL/min/mmHg takes a millilitre a minute at 1 mmHg and not below.
		const { balance } = level;
		expect(balance * k["drain.conductance"]).toBeCloseTo(1, 12);
		// Half open it takes a quarter.
		level.open = 0.5;
		expect(level.balance).toBeCloseTo(4 * balance, 12);
		level.open = 1;
		expect(route(level, air(balance), "port")).toBe("held");
		expect(route(level, air(0.9 * balance), "port")).toBe("draining");
		expect(route(level, deep, "port, let go")).toBe("draining");
	});

	test("is at the edge of a leaking dressing where nothing draws: as fast as it weeps, or as it comes", () => {
		const liquid = wet();
		expect(route(liquid, still, "edge")).toBe("still");
		liquid.weepRate = 5;
		expect(route(liquid, still)).toBe("still");
		expect(route(liquid, still, "edge")).toBe("weeping");
		const level = liquidOf(retained);
		level.weepRate = 5;
		level.exudateRate = 3;
		level.fillRate = 2;
		expect(route(level, still, "edge")).toBe("seeping");
		level.fillRate = 2.5;
		expect(route(level, still, "edge")).toBe("weeping");
	});

	test("from within rounding of what suction leaves it settles on it, and the rest goes to the canister", () => {
		const hair = 5e-10;
		const liquid = liquidOf(retained + hair, 0.5);
		expect(route(liquid, deep, "port")).toBe("held");
		expect(liquid.level).toBe(retained);
		expect(liquid.toCanister).toBeCloseTo(hair, 12);
		expect(liquid.canister).toBe(liquid.toCanister);
		expect(liquid.returned).toBe(0.5 * liquid.toCanister);
	});

	test("above what suction leaves it is wet, by more than rounding", () => {
		expect(liquidOf(retained).isWet).toBe(false);
		expect(liquidOf(retained + 1e-10).isWet).toBe(false);
		expect(liquidOf(retained + 0.01).isWet).toBe(true);
	});
});

const spans = fc.array(
	fc.record({
		minutes: fc.double({ min: 0.01, max: 3, noNaN: true }),
		exudate: fc.constantFrom(0, 0.1, 2),
		fill: fc.constantFrom(0, 0, 20),
		weep: fc.constantFrom(0, 3),
		open: fc.constantFrom(1, 0.5, 0.1),
		depth: fc.constantFrom(0, 40, 125),
		towards: fc.constantFrom(0, 125),
		drawing: fc.boolean(),
		hasDressing: fc.constantFrom(true, true, true, true, false),
		burst: fc.constantFrom(0, 0, 0, 7),
	}),
	{ minLength: 1, maxLength: 20 },
);

describe("what moved", () => {
	test("is kept somewhere, and is what was foretold", () => {
		const seen = new Set<string>();
		fc.assert(
			fc.property(spans, (all) => {
				const liquid = new Liquid(k, foamMl);
				liquid.reset(1000);
				let solutionWept = 0;
				for (const span of all) {
					liquid.exudateRate = span.exudate;
					liquid.fillRate = span.drawing || !span.hasDressing ? 0 : span.fill;
					liquid.weepRate = span.weep;
					liquid.open = span.open;
					if (!span.hasDressing) liquid.discard();
					const over = air(span.depth, span.towards, 0.7);
					liquid.route(over, !span.hasDressing ? "no dressing" : span.drawing ? "port" : "edge");
					// A dressing is looked at again before its level falls below what suction leaves.
					const room = liquid.timeToRetained(over, span.minutes);
					const minutes = Math.min(span.minutes, room);
					if (minutes <= 0) continue;
					seen.add(liquid.outflow);
					const { outflow } = liquid;
					const foretold = [
						liquid.levelAfter(minutes, over),
						liquid.canisterAfter(minutes, over),
						liquid.sourceAfter(minutes),
					];
					const held = liquid.level * (1 - liquid.share);
					const [before, instilled, weptBefore] = [liquid.returned, liquid.instilled, liquid.wept];
					const out = liquid.outAfter(minutes, over);
					liquid.advance(minutes, over);
					expect(liquid.level).toBeCloseTo(foretold[0], 8);
					expect(liquid.canister).toBeCloseTo(foretold[1], 8);
					expect(liquid.source).toBeCloseTo(foretold[2], 8);
					if (outflow === "weeping" || outflow === "seeping") {
						expect(liquid.wept - weptBefore).toBeCloseTo(out, 9);
						solutionWept += held + (liquid.instilled - instilled) - liquid.level * (1 - liquid.share);
						expect(liquid.returned).toBe(before);
					} else if (outflow !== "discarded") {
						// No solution is lost: what was there or ran in is there or has been drained.
						expect(liquid.level * (1 - liquid.share) + liquid.returned - before).toBeCloseTo(
							held + liquid.instilled - instilled,
							8,
						);
					}
					if (minutes === room) liquid.reachRetained();
					liquid.burst(span.burst);
					expect(liquid.level + liquid.toCanister + liquid.wept + liquid.discarded).toBeCloseTo(
						liquid.instilled + liquid.exudate,
						7,
					);
					expect(liquid.canister).toBeCloseTo(liquid.toCanister, 7);
					expect(liquid.source).toBeCloseTo(1000 - liquid.instilled, 9);
					expect(liquid.filled).toBeCloseTo(liquid.instilled, 9);
					expect(liquid.share).toBeGreaterThanOrEqual(-1e-12);
					expect(liquid.share).toBeLessThanOrEqual(1 + 1e-12);
				}
				expect(solutionWept).toBeLessThanOrEqual(liquid.wept + 1e-6);
			}),
			{ numRuns: 400, seed: 11 },
		);
		expect([...seen].sort()).toEqual(["discarded", "draining", "held", "seeping", "still", "weeping"]);
	});

	test("leaves a held or seeping level where it is, to the last bit, and goes out as it comes", () => {
		const { retained } = new Liquid(k, foamMl);
		for (const drawing of [true, false]) {
			const liquid = liquidOf(retained);
			liquid.exudateRate = 0.3;
			liquid.fillRate = drawing ? 0 : 0.4;
			liquid.weepRate = 5;
			liquid.route(deep, drawing ? "port" : "edge");
			const at = drawing ? deep : still;
			for (let i = 1; i <= 30; i++) {
				liquid.advance(i / 7, at);
				expect(liquid.level).toBe(retained);
			}
			const minutes = (30 * 31) / 2 / 7;
			expect(drawing ? liquid.toCanister : liquid.wept).toBeCloseTo((drawing ? 0.3 : 0.7) * minutes, 9);
			expect(drawing ? liquid.wept : liquid.toCanister).toBe(0);
		}
	});

	test("under a changing depth has the same share in one step as in many", () => {
		const drain = (steps: number) => {
			const liquid = liquidOf(120, 0.25);
			liquid.exudateRate = 30;
			for (let i = 0; i < steps; i++) {
				const at = air(125 - 125 * Math.exp(-i / steps / 0.5), 125, 0.5);
				liquid.route(at, "port");
				liquid.advance(1 / steps, at);
			}
			return liquid;
		};
		const [once, often] = [drain(1), drain(1000)];
		expect(once.share).toBeGreaterThan(0.4);
		expect(once.share).toBeCloseTo(often.share, 6);
		expect(once.shareIntegral).toBeCloseTo(often.shareIntegral, 6);
		expect(once.level).toBeCloseTo(often.level, 8);
		expect(once.returned).toBeCloseTo(often.returned, 6);
	});

	test("without a dressing is thrown away, and all of it is exudate", () => {
		const liquid = liquidOf(0);
		liquid.exudateRate = 2;
		liquid.route(still, "no dressing");
		expect(liquid.levelAfter(5, still)).toBe(0);
		const before = liquid.shareIntegral;
		liquid.advance(5, still);
		liquid.burst(3);
		expect([liquid.discarded, liquid.exudate, liquid.level]).toEqual([13, 13, 0]);
		expect(liquid.shareIntegral - before).toBe(5);
	});

	test("in a burst is exudate, and dilutes the solution at once", () => {
		const liquid = liquidOf(30, 0.1);
		liquid.burst(15);
		expect(liquid.level).toBeCloseTo(45, 12);
		expect(liquid.level * (1 - liquid.share)).toBeCloseTo(27, 12);
		expect(liquid.exudate).toBe(15);
		const empty = liquidOf(0, 1);
		empty.burst(0);
		expect([empty.level, empty.share, empty.exudate]).toEqual([0, 1, 0]);
	});

	test("with an old dressing goes with it, and the port is clear again", () => {
		const liquid = liquidOf(40, 0.3);
		liquid.open = 0.2;
		liquid.discard();
		expect([liquid.discarded, liquid.level, liquid.share, liquid.open]).toEqual([40, 0, 1, 1]);
	});

	test("is made exact where a mark is reached: the fill, the canister, the source", () => {
		const liquid = liquidOf(50);
		liquid.completeFill(50.5);
		expect([liquid.filled, liquid.instilled, liquid.source]).toEqual([50.5, 50.5, 949.5]);
		expect(liquid.level).toBeCloseTo(50.5, 12);
		liquid.source = 0.25;
		liquid.completeFill(51);
		expect(liquid.source).toBe(0);
		liquid.reachCanister(8);
		expect([liquid.canister, liquid.toCanister]).toEqual([8, 8]);
		expect(liquid.level).toBeCloseTo(43, 12);
		liquid.reachCanister(10);
		expect([liquid.canister, liquid.toCanister]).toEqual([10, 10]);
		expect(liquid.level).toBeCloseTo(41, 12);
	});

	test("is made exact where suction leaves no more: what was drained too little is drained, what ran in too little has run in", () => {
		const { retained } = new Liquid(k, foamMl);
		const over = liquidOf(retained + 1e-7);
		over.route(deep, "port");
		over.reachRetained();
		expect(over.level).toBe(retained);
		expect(over.toCanister).toBeCloseTo(1e-7, 12);
		const under = liquidOf(retained - 1e-7);
		under.reachRetained();
		expect([under.level, under.toCanister]).toEqual([retained, 0]);
	});

	test("is nought again after a reset", () => {
		const liquid = liquidOf(50, 0.4);
		liquid.open = 0.5;
		liquid.weepRate = 3;
		liquid.fillRate = 20;
		liquid.burst(9);
		liquid.reachCanister(5);
		liquid.route(deep, "port");
		liquid.advance(0.1, deep);
		liquid.discard();
		liquid.reset(700);
		const fresh = new Liquid(k, foamMl);
		fresh.reset(700);
		expect({ ...liquid }).toEqual({ ...fresh });
		expect(fresh.source).toBe(700);
	});
});

describe("when a mark is reached", () => {
	test("a filling or weeping level in a straight line, or never", () => {
		const liquid = liquidOf(0);
		const { retained } = liquid;
		liquid.route(still, "edge");
		expect(liquid.timeToRetained(still, never)).toBe(never);
		liquid.exudateRate = 1;
		liquid.fillRate = 3;
		expect(liquid.timeToRetained(still, never)).toBe(retained / 4);
		const over = liquidOf(retained + 12);
		over.route(still, "edge");
		over.exudateRate = 1;
		expect(over.timeToRetained(still, never)).toBe(never);
		over.weepRate = 4;
		over.route(still, "edge");
		expect(over.timeToRetained(still, never)).toBeCloseTo(4, 12);
		for (const fillRate of [3, 5]) {
			over.fillRate = fillRate;
			expect(over.timeToRetained(still, never)).toBe(never);
		}
	});

	test("a held level stays, and fills the canister as exudate comes", () => {
		const liquid = liquidOf(new Liquid(k, foamMl).retained);
		liquid.exudateRate = 2;
		liquid.route(deep, "port");
		expect(liquid.timeToRetained(deep, never)).toBe(never);
		expect(liquid.timeToCanister(10, deep, never)).toBe(5);
		liquid.exudateRate = 0;
		expect(liquid.timeToCanister(10, deep, never)).toBe(never);
		expect(liquid.timeToCanister(0, deep, never)).toBe(0);
	});

	test("a drain fills the canister by the time the port has brought its content", () => {
		const liquid = liquidOf(60);
		liquid.route(deep, "port");
		const perMin = k["drain.conductance"] * 125;
		expect(liquid.timeToCanister(20, deep, never)).toBeCloseTo(20 / perMin, 9);
		// 60 mL are there and no more come: 61 mL never pass within a span.
		expect(liquid.timeToCanister(61, deep, 100)).toBe(never);
		expect(liquid.timeToCanister(20, deep, 100)).toBeCloseTo(20 / perMin, 9);
		liquid.canister = 20 - 5e-10;
		expect(liquid.timeToCanister(20, deep, 100)).toBe(0);
		// What comes meanwhile counts: 60 mL and 5 mL a minute.
		liquid.canister = 0;
		liquid.exudateRate = 5;
		expect(liquid.timeToCanister(110, deep, 11)).toBeCloseTo(110 / perMin, 9);
		expect(liquid.timeToCanister(116, deep, 11)).toBe(never);
	});

	test("nothing reaches the canister while nothing is drawn", () => {
		const liquid = liquidOf(60);
		liquid.exudateRate = 5;
		liquid.route(still, "none");
		expect(liquid.timeToCanister(10, still, never)).toBe(never);
		expect(liquid.timeToCanister(0, still, never)).toBe(never);
	});
});
