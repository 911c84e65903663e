import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Draining, levelAfter, mixDraining, mixLinear, timeToLevel } from "../../src/physics/index.ts";

/** dx/dt = (e/L)(1 − x) − (q/L)x by the classical Runge–Kutta method with many small steps. */
function integrate(
	minutes: number,
	level: (t: number) => number,
	share: number,
	e: number,
	q: number,
	steps = 4000,
): { share: number; integral: number } {
	const h = minutes / steps;
	const f = (t: number, x: number) => (e * (1 - x) - q * x) / level(t);
	let x = share;
	let integral = 0;
	for (let i = 0; i < steps; i++) {
		const t = i * h;
		const k1 = f(t, x);
		const k2 = f(t + h / 2, x + (h / 2) * k1);
		const k3 = f(t + h / 2, x + (h / 2) * k2);
		const k4 = f(t + h, x + h * k3);
		const next = x + (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
		// Hermite's cubic through both ends has this integral.
		integral += (h / 2) * (x + next) + ((h * h) / 12) * (k1 - f(t + h, next));
		x = next;
	}
	return { share: x, integral };
}

const span = fc.double({ min: 0.01, max: 60, noNaN: true });
const flow = fc.double({ min: 0, max: 5, noNaN: true });

describe("mixing", () => {
	test("a level in a straight line follows the balance of a mixed tank to 1e-9", () => {
		fc.assert(
			fc.property(
				span,
				fc.double({ min: 5, max: 200, noNaN: true }),
				fc.double({ min: 0, max: 1, noNaN: true }),
				flow,
				fc.constantFrom(0, 60),
				fc.double({ min: 0, max: 0.1, noNaN: true }),
				(minutes, level, share, e, q, out) => {
					const end = level + (e + q - out) * minutes;
					fc.pre(end > 1);
					// Stiff where much runs into little: steps of at most a hundredth of the shortest time constant.
					const steps = Math.ceil(Math.max(4000, (100 * minutes * (e + q)) / Math.min(level, end)));
					const fine = integrate(minutes, (t) => level + (e + q - out) * t, share, e, q, steps);
					const closed = mixLinear(minutes, level, end, share, e, q, out);
					expect(closed.share).toBeCloseTo(fine.share, 8);
					expect(closed.integral / minutes).toBeCloseTo(fine.integral / minutes, 8);
				},
			),
			{ numRuns: 100 },
		);
	});
	test("a level that stands still runs over into the exponential without a jump", () => {
		for (const out of [0.5, 0.5 + 1e-13, 0.5 + 1e-10, 0.5 + 1e-7, 0.5 - 1e-7]) {
			const minutes = 30;
			const end = 6 + (0.5 - out) * minutes;
			const closed = mixLinear(minutes, 6, end, 0.2, 0.5, 0, out);
			expect(closed.share).toBeCloseTo(1 - 0.8 * Math.exp(-(0.5 * minutes) / 6), 5);
		}
	});
	// Levels that hardly change, that stand still, that rise and fall a lot; exchanges from next to nothing to many times the content.
	const flows = [
		{ minutes: 0.25, level: 64, e: 4, q: 0, out: 4 },
		{ minutes: 2 ** -20, level: 64, e: 4, q: 0, out: 4 },
		{ minutes: 40, level: 64, e: 4, q: 4, out: 8 },
		{ minutes: 0.3125, level: 64, e: 4, q: 0, out: 2 },
		{ minutes: 0.3125, level: 64, e: 0, q: 4, out: 2 },
		{ minutes: 10, level: 64, e: 1, q: 8, out: 8.9921875 },
		{ minutes: 8, level: 64, e: 32, q: 16, out: 47.9921875 },
		{ minutes: 8, level: 64, e: 16, q: 16, out: 32.0078125 },
		{ minutes: 1, level: 64, e: 2, q: 1, out: 40 },
		{ minutes: 1, level: 8, e: 2, q: 60, out: 1 },
	];

	test.each(flows)(
		"is that of the text-book to the last digits: $e and $q mL/min in, $out out of $level mL for $minutes min",
		({ minutes, level, e, q, out }) => {
			const growth = e + q - out;
			const end = level + growth * minutes;
			// x* + (x0 − x*)·(L/L0)^(−(e+q)/growth), and the exponential where the level stands still
			const left = Math.exp(
				growth === 0 ? (-(e + q) * minutes) / level : (-(e + q) / growth) * Math.log1p((growth * minutes) / level),
			);
			const settled = e / (e + q);
			for (const share of [0, 0.125, 1]) {
				const mixed = mixLinear(minutes, level, end, share, e, q, out);
				const expected = settled + (share - settled) * left;
				expect(Math.abs(mixed.share - expected)).toBeLessThan(2e-15);
				// No exudate is lost: what came in is there or has gone out.
				const rest = level * share + e * minutes - end * expected;
				expect(Math.abs(out * mixed.integral - rest)).toBeLessThan(2e-14 * level);
				expect(mixed.integral / minutes).toBeGreaterThanOrEqual(Math.min(share, expected) - 1e-15);
				expect(mixed.integral / minutes).toBeLessThanOrEqual(Math.max(share, expected) + 1e-15);
			}
		},
	);

	test("of next to no exchange is halfway between before and after, to the last digits", () => {
		const mixed = mixLinear(3e-7, 60, 60, 0, 1, 0, 1);
		expect(mixed.integral / 3e-7).toBeCloseTo(mixed.share / 2, 15);
	});

	test("into an empty dressing the mixture comes as it is", () => {
		expect(mixLinear(2, 0, 160, 1, 20, 60, 0)).toEqual({ share: 0.25, integral: 0.5 });
	});

	test("without inflow, and in no time, the share stays what it was", () => {
		const still = { share: 0.3, integral: 3 };
		expect(mixLinear(10, 50, 20, 0.3, 0, 0, 3)).toEqual(still);
		expect(mixLinear(0, 0, 0, 1, 0, 60, 0)).toEqual({ share: 1, integral: 0 });
	});

	test("into a dressing that is empty, or as good as, the mixture comes as it is", () => {
		for (const level of [0, 5e-324, 3.6e-320, 1e-200, 1e-13]) {
			const { share, integral } = mixLinear(2, level, 42, 0.3, 1, 20, 0);
			expect(share).toBeCloseTo(1 / 21, 12);
			expect(integral).toBeCloseTo(2 / 21, 12);
		}
	});
	test("draining under a changing depth agrees with a fine integration to 1e-9", () => {
		const draining = fc.record({
			level: fc.double({ min: 10, max: 150, noNaN: true }),
			inflow: fc.double({ min: 0.01, max: 40, noNaN: true }),
			conductance: fc.double({ min: 0.01, max: 1, noNaN: true }),
			from: fc.double({ min: 0, max: 120, noNaN: true }),
			towards: fc.double({ min: 1, max: 240, noNaN: true }),
			tau: fc.double({ min: 0.05, max: 5, noNaN: true }),
		});
		fc.assert(
			fc.property(
				draining,
				fc.double({ min: 0.01, max: 3, noNaN: true }),
				fc.double({ min: 0, max: 1, noNaN: true }),
				(d: Draining, minutes, share) => {
					for (let i = 1; i <= 50; i++) fc.pre(levelAfter((minutes * i) / 50, d) > 4);
					const fine = integrate(minutes, (t) => levelAfter(t, d), share, d.inflow, 0);
					const panels = mixDraining(minutes, d, levelAfter(minutes, d), share);
					expect(Math.abs(panels.share - fine.share)).toBeLessThan(1e-9);
					expect(Math.abs(panels.integral - fine.integral) / minutes).toBeLessThan(1e-9);
				},
			),
			{ numRuns: 300, endOnFailure: true },
		);
	});

	test("what drains is all exudate where it was, and as it was in no time", () => {
		const d: Draining = { level: 100, inflow: 1, conductance: 0.5, from: 0, towards: 100, tau: 0.5 };
		expect(mixDraining(2, d, levelAfter(2, d), 1)).toEqual({ share: 1, integral: 2 });
		expect(mixDraining(0, d, 100, 0.4)).toEqual({ share: 0.4, integral: 0 });
	});

	test.each([
		[0.05, 60, 2],
		[0.5, 60, 2],
		[5, 60, 2],
		[20, 60, 2],
		[5, 0, 5],
	])(
		"a drain of nearly all there is, while %d mL/min come, from a depth of %d mmHg on, agrees with a fine integration to 1e-10",
		(inflow, from, tau) => {
			const d: Draining = { level: 150, inflow, conductance: 1, from, towards: 125, tau };
			const minutes = timeToLevel(4, d, 10);
			const fine = integrate(minutes, (t) => levelAfter(t, d), 0.1, inflow, 0, 20_000);
			const mixed = mixDraining(minutes, d, levelAfter(minutes, d), 0.1);
			expect(Math.abs(mixed.share - fine.share)).toBeLessThan(1e-10);
			expect(Math.abs(mixed.integral - fine.integral)).toBeLessThan(1e-10);
		},
	);

	test("a depth that changes slowly is not taken to be at rest", () => {
		const d: Draining = { level: 100, inflow: 1, conductance: 0.05, from: 0, towards: 100, tau: 20 };
		const fine = integrate(6, (t) => levelAfter(t, d), 0.25, 1, 0);
		const mixed = mixDraining(6, d, levelAfter(6, d), 0.25);
		expect(mixed.share).toBeCloseTo(fine.share, 10);
		expect(mixed.integral / 6).toBeCloseTo(fine.integral / 6, 10);
	});

	test("a drain that goes on long after its depth has come to rest agrees with a fine integration", () => {
		const d: Draining = { level: 100, inflow: 1, conductance: 0.05, from: 0, towards: 40, tau: 0.05 };
		// From 80 time constants on, the rest is a straight line.
		for (const minutes of [3.9, 4.1, 60]) {
			const fine = integrate(minutes, (t) => levelAfter(t, d), 0.25, 1, 0, 20_000);
			const mixed = mixDraining(minutes, d, levelAfter(minutes, d), 0.25);
			expect(mixed.share).toBeCloseTo(fine.share, 11);
			expect(mixed.integral / minutes).toBeCloseTo(fine.integral / minutes, 11);
		}
	});
});
