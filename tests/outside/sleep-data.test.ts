import studentQuantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, test } from "vitest";
import { gaussLegendre8 } from "../../src/physics/index.ts";
import { halfWidth, variance } from "../../src/statistics/index.ts";
import { momentsOf } from "../statistics/moments-of.ts";

/** Chance of |t| beyond a value with 9 degrees of freedom; the density Γ(5)/(√(9π)·Γ(9/2))·(1 + t²/9)^−5. */
function twoSided(t: number): number {
	const gamma45 = 11.631728396567448; // Γ(9/2) = 105·√π/16
	const density = (x: number) => (24 / (Math.sqrt(9 * Math.PI) * gamma45)) * (1 + (x * x) / 9) ** -5;
	let inside = 0;
	for (let i = 0; i < 20; i++) inside += gaussLegendre8(density, (t * i) / 20, (t * (i + 1)) / 20);
	return 1 - 2 * inside;
}

// The output that R documents for its sleep data, t.test paired and unpaired with pooled variance (read)
const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

describe("two drugs on ten sleepers", () => {
	const paired = momentsOf(first.map((value, i) => value - second[i]));
	const half = halfWidth(paired) ?? Number.NaN;
	const [a, b] = [momentsOf(first), momentsOf(second)];
	const pooled = (a.squares + b.squares) / 18;
	const unpairedHalf = studentQuantile(0.975, 18) * Math.sqrt(pooled / 5);

	test("differ by −1.58, paired, with t −4.0621 on 9 degrees of freedom and p 0.002833", () => {
		expect(paired.mean).toBeCloseTo(-1.58, 12);
		const t = paired.mean / Math.sqrt(variance(paired) / paired.count);
		expect(Math.abs(t + 4.062128)).toBeLessThan(5e-7);
		expect(Math.abs(twoSided(-t) - 0.002833)).toBeLessThan(5e-7);
	});

	test("with the interval −2.4598858 to −0.7001142", () => {
		expect(Math.abs(paired.mean - half + 2.4598858)).toBeLessThan(5e-8);
		expect(Math.abs(paired.mean + half + 0.7001142)).toBeLessThan(5e-8);
	});

	test("unpaired the interval is −3.363874 to 0.203874", () => {
		const mean = a.mean - b.mean;
		expect(Math.abs(mean - unpairedHalf + 3.363874)).toBeLessThan(5e-7);
		expect(Math.abs(mean + unpairedHalf - 0.203874)).toBeLessThan(5e-7);
	});

	test("pairing needs a quarter of the sleepers for the same width", () => {
		// half-widths 0.87989 and 1.78387, squared ratio 0.2433 (derived): what common random numbers are for
		expect(half).toBeCloseTo(0.87989, 5);
		expect(unpairedHalf).toBeCloseTo(1.78387, 5);
		expect((half / unpairedHalf) ** 2).toBeCloseTo(0.2433, 4);
	});
});
