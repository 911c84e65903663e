import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { needsOf, supplyItems } from "../../src/studies/day/supplies.ts";
import { traceDay } from "../../src/studies/index.ts";
import { unobserved } from "../../src/therapy/base/observer.ts";
import { TherapyDay } from "../../src/therapy/index.ts";
import { reference, withDressing } from "./example.ts";

/** The reference day with this content at the start. */
const dayWith = (content: object) =>
	traceDay(withDressing({ canisterMl: 1000, sourceMl: 1000, ...content })).dressings[0];

describe("a canister and a source that were in use before the start", () => {
	const fresh = dayWith({});
	const used = dayWith({ canisterHoldsMl: 120, sourceLeftMl: 640 });

	test("the curves begin with what they hold", () => {
		expect(used.curve.canisterMl[0]).toBe(120);
		expect(used.curve.sourceMl[0]).toBe(640);
		expect(fresh.curve.canisterMl[0]).toBe(0);
		expect(fresh.curve.sourceMl[0]).toBe(1000);
	});

	test("what reaches the canister is of this day alone, and so is wound output", () => {
		// A fuller canister leaves less air to thin, so that each drain begins a hair sooner.
		expect(used.totals.toCanisterMl).toBeCloseTo(fresh.totals.toCanisterMl, 0);
		expect(used.totals.woundOutputMl).toBeCloseTo(fresh.totals.woundOutputMl, 0);
		expect(used.totals.instilledMl).toBe(550);
		expect(used.curve.canisterMl.at(-1)).toBeCloseTo(120 + used.totals.toCanisterMl, 6);
	});

	test("the source runs out as if it were of that size", () => {
		// The model's reference: a 230 mL source is empty at 623.83 and renewed at 630.83.
		const low = dayWith({ sourceLeftMl: 230 });
		expect(low.sourceChanges[0]?.atMin).toBeCloseTo(630.83, 2);
		expect(low.alarms[0]).toMatchObject({ condition: "source-empty" });
		expect(low.alarms[0].startMin).toBeCloseTo(623.83, 2);
		// What is renewed is a whole bag.
		expect(low.sourceChanges.length).toBe(1);
	});

	test("the canister is full when what it held and what has come fill it", () => {
		const nearly = dayWith({ canisterHoldsMl: 600 });
		const alarm = nearly.alarms.find(({ condition }) => condition === "canister-at-capacity");
		expect(alarm).toBeDefined();
		const at = nearly.curve.atMin.findLastIndex((min) => min <= (alarm?.startMin ?? 0) + 1e-6);
		expect(nearly.curve.canisterMl[at]).toBeCloseTo(1000, 6);
	});

	test("a canister that is nearly full, or a source below one fill, is noted at the start, once", () => {
		const notices = (content: object) =>
			dayWith(content)
				.notices.filter(({ atMin }) => atMin === 0)
				.map(({ notice }) => notice);
		expect(notices({ canisterHoldsMl: 950 })).toEqual(["canister-nearly-full"]);
		expect(notices({ sourceLeftMl: 49 })).toEqual(["source-low"]);
		expect(notices({ canisterHoldsMl: 899, sourceLeftMl: 51 })).toEqual([]);
	});

	test("a bag counts as hung at the start: it is renewed when it has hung for 24 h from there", () => {
		const scenario = withDressing({ sourceLeftMl: 900 });
		const long = traceDay({ ...scenario, horizonMin: 1500 }).dressings[0];
		expect(long.sourceChanges[0]).toMatchObject({ reason: "expired", atMin: 1440 });
	});

	test("liquid balances whatever they hold at the start", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 990, noNaN: true }),
				fc.double({ min: 0, max: 1000, noNaN: true }),
				(canisterHoldsMl, sourceLeftMl) => {
					const { totals } = dayWith({ canisterHoldsMl, sourceLeftMl });
					const apart =
						totals.instilledMl +
						totals.exudateMl -
						(totals.toCanisterMl + totals.inDressingMl + totals.weptMl + totals.discardedMl);
					expect(Math.abs(apart)).toBeLessThan(1e-6);
				},
			),
			{ numRuns: 30 },
		);
	});

	test("what was in use before is no piece that the day needs", () => {
		const needs = (content: object) => {
			const scenario = withDressing(content);
			const day = new TherapyDay(scenario, unobserved);
			day.run(0, unobserved);
			return Object.fromEntries(supplyItems(scenario).map((item) => [item.kind, needsOf(item, day)]));
		};
		expect(needs({})).toMatchObject({ canister: 1, source: 1, kit: 1 });
		expect(needs({ canisterHoldsMl: 120, sourceLeftMl: 640 })).toMatchObject({ canister: 0, source: 0, kit: 1 });
		expect(needs({ canisterHoldsMl: 900, sourceLeftMl: 230 })).toMatchObject({ canister: 1, source: 1 });
	});

	test("a day without them is the reference day", () => {
		expect(traceDay(reference).trace.hash).toBe(
			traceDay(withDressing({ canisterHoldsMl: 0, sourceLeftMl: null })).trace.hash,
		);
	});
});
