import publishedExp from "@stdlib/math-base-special-exp";
import publishedLn from "@stdlib/math-base-special-ln";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exp, ln } from "../../src/elementary/index.ts";
import { lnByDivision } from "../../src/elementary/ln-by-division.ts";
import { powerOfTwo } from "../../src/elementary/power-of-two.ts";

const corners = [
	0,
	-0,
	1,
	-1,
	Number.NaN,
	Number.POSITIVE_INFINITY,
	Number.NEGATIVE_INFINITY,
	Number.MIN_VALUE,
	Number.MAX_VALUE,
	2 ** -1022,
	2 ** -1023,
	2 ** -28,
	-(2 ** -28),
	1 + 2 ** -52,
	1 - 2 ** -53,
	1 + 2 ** -20,
	1 - 2 ** -20,
	1 + 2 ** -19,
	Math.SQRT1_2,
	Math.SQRT2,
	2,
	0.5,
	Math.E,
	1024,
	2 ** -500,
	// the ends of what has an exponential, and of the normal numbers
	709.782712893384,
	709.7827128933841,
	-708.3964185322641,
	-708.3964185322642,
	0.5 * Math.LN2,
	-0.5 * Math.LN2,
	1.5 * Math.LN2,
];

/** A plain walk over 0…1 that reaches all sizes of bits (Weyl's sequence). */
const walk = (count: number) => Array.from({ length: count }, (_, i) => ((i + 1) * 0.6180339887498949) % 1);

/** e^y·2^200 by the series, y halved eight times and the result squared as often: in whole numbers, another way than the logarithm's. */
function wholeExp(y: bigint): bigint {
	const small = y >> 8n;
	let term = 1n << 200n;
	let sum = term;
	for (let i = 1n; term !== 0n && term !== -1n; i++) {
		term = (term * small) / (i << 200n);
		sum += term;
	}
	for (let i = 0; i < 8; i++) sum = (sum * sum) >> 200n;
	return sum;
}

/** The number times 2^200, exact for any of 2^-148 or more. */
const whole = (x: number) => BigInt(x * 2 ** 200);

/** Distance of neighbouring doubles at y. */
const unitAt = (y: number) => 2 ** (Math.floor(Math.log2(Math.abs(y))) - 52);

/** Whether ln x lies within so many units of the last place around `y`: e^(y − d) < x < e^(y + d). */
function holds(x: number, y: number, units: number): boolean {
	const d = whole(units * unitAt(y));
	return wholeExp(whole(y) - d) < whole(x) && whole(x) < wholeExp(whole(y) + d);
}

describe("the logarithm", () => {
	test("has the bits of the published one near 1 and beyond the normal numbers, and elsewhere those or their neighbours", () => {
		for (const x of corners) {
			expect(lnByDivision(x), `${x}`).toBe(publishedLn(x));
			if (Number.isFinite(ln(x)))
				expect(Math.abs(ln(x) - publishedLn(x))).toBeLessThanOrEqual(unitAt(publishedLn(x) || 1));
			else expect(ln(x), `${x}`).toBe(publishedLn(x));
		}
		let same = 0;
		for (const u of walk(50_000)) {
			for (const x of [1 - u * 0.06, 1 + u * 0.06, 1 + u * 1e-5, u * 1e-310])
				if (ln(x) !== publishedLn(x)) expect(ln(x), `${x}`).toBe(publishedLn(x));
			for (const x of [u, 1 + u, 1e5 * u, 1e-200 * u]) {
				if (lnByDivision(x) !== publishedLn(x)) expect(lnByDivision(x), `${x}`).toBe(publishedLn(x));
				same += ln(x) === publishedLn(x) ? 1 : 0;
				if (!(Math.abs(ln(x) - publishedLn(x)) <= unitAt(publishedLn(x)))) expect(ln(x), `${x}`).toBe(publishedLn(x));
			}
		}
		expect(same / 200_000).toBeGreaterThan(0.9);
		fc.assert(
			fc.property(fc.double(), (x) => {
				expect(lnByDivision(x)).toBe(publishedLn(x));
			}),
			{ numRuns: 20_000, seed: 1993 },
		);
	});

	test("lies within 0.6 units of the last place of the true value, away from 1: held against the exponential in whole numbers", () => {
		// Both ends of every interval of the table, in three octaves, and a walk between.
		const ends = Array.from({ length: 128 }, (_, i) => (i < 80 ? 0.6875 + i / 256 : 1 + (i - 80) / 128));
		const numbers = ends.flatMap((z) => [0.25, 1, 64].flatMap((octave) => [z * octave, z * octave * (1 - 2 ** -53)]));
		numbers.push(...walk(2000), ...walk(500).map((u) => 2000 * u));
		for (const x of numbers) {
			if (x >= 0.9375 && x < 1.0625) continue;
			expect(holds(x, ln(x), 0.6), `${x}`).toBe(true);
		}
		// The check can fail: the neighbours of the result are off by more.
		expect(holds(0.3, ln(0.3) + unitAt(ln(0.3)), 0.4)).toBe(false);
	});
});

describe("the exponential", () => {
	test("has the bits of the published one, wherever it is a normal number", () => {
		for (const x of corners) expect(exp(x), `${x}`).toBe(publishedExp(x));
		for (const u of walk(50_000)) {
			for (const x of [-u, -37 * u, 709 * u, -708 * u, u * 1e-8, 709 + u])
				if (exp(x) !== publishedExp(x)) expect(exp(x), `${x}`).toBe(publishedExp(x));
		}
		fc.assert(
			fc.property(fc.double({ min: -740, max: 720 }), (x) => {
				expect(exp(x)).toBe(publishedExp(x));
			}),
			{ numRuns: 20_000, seed: 1993 },
		);
	});

	test("fades to 0 through the numbers below the normal ones", () => {
		const fading = walk(2000)
			.map((u) => -708 - 38 * u)
			.sort((a, b) => b - a);
		for (const [i, x] of fading.entries()) {
			expect(exp(x)).toBeLessThanOrEqual(exp(fading[i - 1] ?? -708));
			// within a unit of the last place, which here is the least number
			const split = exp(x / 2) * exp(x / 2);
			expect(Math.abs(exp(x) - split)).toBeLessThanOrEqual(Math.max(1e-14 * split, 1.01 * Number.MIN_VALUE));
		}
		// −1075·ln 2 = −745.13321910194121…, half the least number, parts what is rounded to it from what is rounded to 0.
		expect(exp(-745.1332191019411)).toBe(Number.MIN_VALUE);
		expect(exp(-745.1332191019413)).toBe(0);
		expect(exp(-746)).toBe(0);
	});
});

test("powers of two are exact, down to the least number", () => {
	for (let k = -1074; k < 1024; k++) expect(powerOfTwo(k)).toBe(2 ** k);
});
