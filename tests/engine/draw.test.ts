import { describe, expect, test } from "vitest";
import { exponential, gamma2, lognormal, normal, Substream } from "../../src/engine/index.ts";

const draws = 100_000;

/** A stream that gives the numbers of a list, over and over. */
function fed(...numbers: number[]): Substream {
	let at = 0;
	const stream = new Substream("", "", 0);
	stream.uniform = () => numbers[at++ % numbers.length];
	return stream;
}

function sample(name: string, draw: (stream: Substream) => number): number[] {
	const stream = new Substream("draw", name, 0);
	return Array.from({ length: draws }, () => draw(stream));
}

/** The sample mean of xᵏ lies within four standard errors of the k-th moment. */
function expectMoments(values: readonly number[], ...moments: number[]): void {
	moments.forEach((moment, i) => {
		const powers = values.map((value) => value ** (i + 1));
		const mean = powers.reduce((sum, p) => sum + p, 0) / powers.length;
		const squares = powers.reduce((sum, p) => sum + (p - mean) ** 2, 0);
		const error = Math.sqrt(squares) / powers.length;
		expect(Math.abs(mean - moment), `moment ${i + 1}`).toBeLessThan(4 * error);
	});
}

const last = 1 - 2 ** -53;
const grid = [0, 2 ** -53, 1e-9, ...Array.from({ length: 9999 }, (_, i) => (i + 1) / 10_000), 1 - 1e-9, last];

describe("a unit exponential", () => {
	test("has the moments 1, 2, 6", () => {
		expectMoments(sample("exponential", exponential), 1, 2, 6);
	});

	test("is −ln(1 − u): half of them lie above ln 2", () => {
		expect(exponential(fed(0.5))).toBeCloseTo(Math.LN2, 15);
		expect(exponential(fed(0.9))).toBeCloseTo(Math.log(10), 14);
	});

	test("is 0 at the least number, not −0, and below 37 at the greatest", () => {
		expect(exponential(fed(0))).toBe(0);
		expect(exponential(fed(last))).toBeCloseTo(53 * Math.LN2, 12);
		expect(exponential(fed(last))).toBeLessThan(37);
	});
});

describe("a standard normal", () => {
	test("has the moments 0, 1, 0, 3", () => {
		expectMoments(sample("normal", normal), 0, 1, 0, 3);
	});

	test("is finite at both ends, and symmetric", () => {
		expect(normal(fed(0))).toBeGreaterThan(-9);
		expect(normal(fed(0))).toBeLessThan(-8);
		expect(normal(fed(last))).toBeGreaterThan(8);
		expect(normal(fed(last))).toBeLessThan(9);
		expect(normal(fed(0.5))).toBeCloseTo(0, 15);
		expect(normal(fed(0.25))).toBeCloseTo(-normal(fed(0.75)), 14);
	});
});

describe("a lognormal", () => {
	test("has the median given, the mean median·exp(σ²/2) and the second moment median²·exp(2σ²)", () => {
		const [median, sigma] = [4, 0.6];
		const values = sample("lognormal", (stream) => lognormal(stream, median, sigma));
		expectMoments(values, median * Math.exp(sigma ** 2 / 2), median ** 2 * Math.exp(2 * sigma ** 2));
		expect(lognormal(fed(0.5), median, sigma)).toBeCloseTo(median, 14);
	});

	test("is positive and finite at both ends", () => {
		expect(lognormal(fed(0), 0.012, 0.8)).toBeGreaterThan(0);
		expect(lognormal(fed(last), 0.012, 0.8)).toBeLessThan(100);
	});

	test("of sigma 0 is its median", () => {
		expect(lognormal(fed(0.123), 7, 0)).toBe(7);
	});
});

describe("a gamma of shape 2", () => {
	test("has the mean given and half its square as variance", () => {
		const mean = 0.02;
		// E x² = mean²·(1 + 1/2)
		expectMoments(
			sample("gamma", (stream) => gamma2(stream, mean)),
			mean,
			1.5 * mean ** 2,
		);
	});

	test("takes two numbers of the stream, and is 0 only where both are", () => {
		expect(gamma2(fed(0, 0), 1)).toBe(0);
		expect(gamma2(fed(0, 0.5), 1)).toBeCloseTo(Math.LN2 / 2, 15);
		expect(gamma2(fed(0.5, 0), 1)).toBeCloseTo(Math.LN2 / 2, 15);
		const stream = new Substream("draw", "gamma", 1);
		gamma2(stream, 1);
		const third = stream.uniform();
		const again = new Substream("draw", "gamma", 1);
		expect([again.uniform(), again.uniform(), again.uniform()][2]).toBe(third);
	});
});

test.each([
	["exponential", (u: number) => exponential(fed(u))],
	["normal", (u: number) => normal(fed(u))],
	["lognormal", (u: number) => lognormal(fed(u), 4, 0.6)],
	["gamma, in its first number", (u: number) => gamma2(fed(u, 0.3), 1)],
	["gamma, in its second number", (u: number) => gamma2(fed(0.3, u), 1)],
] as const)("%s rises with the number of the stream: common numbers stay in step", (_, draw) => {
	const values = grid.map(draw);
	for (let i = 1; i < values.length; i++) expect(values[i], `at ${grid[i]}`).toBeGreaterThan(values[i - 1]);
});
