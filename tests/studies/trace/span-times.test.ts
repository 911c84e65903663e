import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spanTimes } from "../../../src/studies/trace/span-times.ts";
import type { DressingProcess } from "../../../src/therapy/index.ts";

/** All that is asked of a dressing: the time constant of its depth. */
const of = (tau: number) => ({ air: { tau } }) as DressingProcess;

const spans = fc.record({
	start: fc.integer({ min: 0, max: 1440 }),
	minutes: fc.integer({ min: 1, max: 1000 }).map((i) => i / 10),
	tau: fc.integer({ min: 1, max: 1000 }).map((i) => i / 100),
});

describe("times at which a span is sampled", () => {
	test("are its ends where depth stands", () => {
		expect(spanTimes(of(Number.POSITIVE_INFINITY), 10, 70)).toEqual([10, 70]);
	});

	test("of a curve rise from end to end, at equal steps of depth until a quarter of its way is left", () => {
		fc.assert(
			fc.property(spans, ({ start, minutes, tau }) => {
				const end = start + minutes;
				const times = spanTimes(of(tau), start, end);
				expect(times[0]).toBe(start);
				expect(times.at(-1)).toBe(end);
				for (let i = 1; i < times.length; i++) expect(times[i]).toBeGreaterThan(times[i - 1]);
				const share = (at: number) => 1 - Math.exp(-(at - start) / tau);
				for (const [i, at] of times.slice(0, -1).entries()) if (i < 7) expect(share(at)).toBeCloseTo(i / 8, 9);
			}),
			{ seed: 8 },
		);
	});

	test("let no straight line between them stray from the curve by more than a hundredth of the whole way", () => {
		fc.assert(
			fc.property(spans, ({ start, minutes, tau }) => {
				const times = spanTimes(of(tau), start, start + minutes);
				const share = (at: number) => 1 - Math.exp(-(at - start) / tau);
				let worst = 0;
				for (let i = 1; i < times.length; i++)
					for (let j = 1; j < 20; j++) {
						const w = j / 20;
						const at = times[i - 1] + w * (times[i] - times[i - 1]);
						const line = (1 - w) * share(times[i - 1]) + w * share(times[i]);
						worst = Math.max(worst, Math.abs(line - share(at)));
					}
				expect(worst).toBeLessThan(0.01);
			}),
			{ seed: 9 },
		);
	});
});
