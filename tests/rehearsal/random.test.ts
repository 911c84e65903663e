import fc from "fast-check";
import { expect, test } from "vitest";
import { Rehearsal } from "../../src/rehearsal/index.ts";
import { drawCase } from "../../src/rehearsal/shift/draw-case.ts";
import type { Debrief } from "../../src/results/index.ts";
import { acts, places } from "../../src/vocabulary/index.ts";
import { hiding, least } from "./cases.ts";

const step = fc.oneof(
	fc.constantFrom(...places).map((place) => ({ place })),
	fc.constantFrom(...acts).map((act) => ({ act })),
	fc
		.oneof(fc.integer({ min: 0, max: 120 }), fc.constantFrom(-3, Number.NaN, Number.POSITIVE_INFINITY, 0.001))
		.map((minutes) => ({ minutes })),
	fc.constant({ next: true }),
);
type Step = typeof step extends fc.Arbitrary<infer S> ? S : never;

function take(rehearsal: Rehearsal, one: Step) {
	if ("place" in one) return rehearsal.look(one.place);
	if ("act" in one) return rehearsal.act(one.act);
	return "minutes" in one ? rehearsal.wait(one.minutes) : rehearsal.next();
}

/** What came and what is kept, mL. */
function balance({ day: { totals } }: Debrief): number {
	const kept = totals.toCanisterMl + totals.inDressingMl + totals.weptMl + totals.discardedMl;
	return totals.instilledMl + totals.exudateMl - kept;
}

/** Throws where a law is broken; a matcher for each would take most of the time. */
function law(holds: boolean, what: string): void {
	if (!holds) throw new Error(`broken: ${what}`);
}

const rehearsed = fc.record({
	seed: fc.string({ minLength: 1, maxLength: 8 }),
	steps: fc.array(step, { minLength: 1, maxLength: 40 }),
	// A dressing that is small and a unit that is soon full bring more to pass in a shift.
	canisterMl: fc.constantFrom(1000, 300, 120),
	sourceMl: fc.constantFrom(1000, 120),
	begin: fc.constantFrom("suction" as const, "fill" as const),
	fillMl: fc.constantFrom(50, 50, 0),
	suctionMin: fc.constantFrom(120, 30),
});

test("every act in every state has an answer, time runs forward, and mass balances: 10,000 random rehearsals", () => {
	let [over, mended] = [0, 0];
	fc.assert(
		fc.property(rehearsed, ({ seed, steps, begin, fillMl, suctionMin, ...unit }) => {
			const base = hiding([], { transferMin: 100 });
			const [dressing] = base.dressings;
			const regimens = dressing.regimens.map((regimen) => ({
				...regimen,
				begin: fillMl === 0 ? ("suction" as const) : begin,
				fillMl,
				suctionMin: fillMl === 0 ? Number.POSITIVE_INFINITY : suctionMin,
				dwellMin: fillMl === 0 ? 0 : 5,
			}));
			const of = drawCase({ ...base, dressings: [{ ...dressing, ...unit, regimens }] }, seed);
			const rehearsal = new Rehearsal(of, seed, least);
			let before = rehearsal.view();
			for (const one of steps) {
				const { words, meanwhile, view } = take(rehearsal, one);
				law(words !== "", "an answer without words");
				law(view.atMin >= before.atMin && view.atMin <= 480, "time");
				let at = before.atMin;
				for (const { atMin } of meanwhile) {
					law(atMin >= at && atMin <= view.atMin, "what happened meanwhile");
					at = atMin;
				}
				const { depthMmHg, setDepthMmHg, canisterMl, sourceMl } = view;
				law(depthMmHg <= 0 && depthMmHg >= setDepthMmHg, "depth");
				law(canisterMl >= 0 && canisterMl <= unit.canisterMl, "canister");
				law(sourceMl >= 0, "source");
				if (before.over) law(JSON.stringify(view) === JSON.stringify(before), "something after the end");
				before = view;
			}
			const debrief = rehearsal.debrief();
			law(Math.abs(balance(debrief)) <= 1e-6, "mass balance");
			law(rehearsal.debrief() === debrief, "one debrief");
			law(rehearsal.over, "over after the debrief");
			for (const cause of debrief.causes) {
				const { onsetMin, endMin, noticedMin, foundMin } = cause;
				for (const at of [endMin, noticedMin, foundMin])
					law(at === null || at >= (onsetMin ?? 0), "the course of a cause");
				if (endMin !== null && cause.endedBy === "mended") mended++;
			}
			if (before.over) over++;
		}),
		{ numRuns: 10_000, seed: 11 },
	);
	expect(over).toBeGreaterThan(100);
	expect(mended).toBeGreaterThan(100);
});

test("a shift run minute by minute is the shift run in one go", () => {
	for (const seed of ["a", "b", "c", "d"]) {
		const of = drawCase(hiding([], { transferMin: 100 }), seed);
		const [steps, leap] = [0, 1].map(() => new Rehearsal(of, seed, least));
		for (let minute = 0; minute < 480; minute++) steps.wait(1);
		leap.wait(480);
		expect(steps.debrief()).toEqual(leap.debrief());
	}
});
