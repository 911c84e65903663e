import pow from "@stdlib/math-base-special-pow";
import { describe, expect, test } from "vitest";
import { exponential, lognormal, Substream } from "../../src/engine/index.ts";
import { errorOf, expectMean } from "./batches.ts";

const draws = 200_000;

/** `draws` values of one stream. */
function sample(name: string, draw: (stream: Substream) => number): number[] {
	const stream = new Substream("lifetimes", name, 0);
	return Array.from({ length: draws }, () => draw(stream));
}

const shareAbove = (values: readonly number[], limit: number) => values.map((value): number => (value > limit ? 1 : 0));

/** Weibull by inversion of the unit exponential, as hazards of the model are: scale·E^(1/shape). */
const weibull = (shape: number, scale: number) => (stream: Substream) => scale * pow(exponential(stream), 1 / shape);

describe("Weibull from the engine's unit exponential", () => {
	// Montgomery and Runger, Applied Statistics and Probability for Engineers, the bearing of the section on the Weibull
	// distribution (from memory): shape 0.5, scale 5000 h
	const bearing = sample("bearing", weibull(0.5, 5000));
	test("shape 0.5, scale 5000 h: mean 10 000 h", () => {
		expectMean(bearing, 10_000);
	});
	test("and a third, 0.334, last beyond 6000 h", () => {
		expect(Math.exp(-((6000 / 5000) ** 0.5))).toBeCloseTo(0.334, 3);
		expectMean(shareAbove(bearing, 6000), 0.334391);
	});

	// Shape 1.5, scale 5000 (derived; hazard formula infinitelexicon.com, Weibull distribution, read)
	const life = sample("life", weibull(1.5, 5000));
	test("shape 1.5, scale 5000: 0.0855594 fail before 1000", () => {
		expect(1 - Math.exp(-(0.2 ** 1.5))).toBeCloseTo(0.0855594, 7);
		expectMean(
			shareAbove(life, 1000).map((above) => 1 - above),
			0.0855594,
		);
	});
	test("its hazard at 1000 is 1.341641e-4, seen in the next 50", () => {
		const hazard = (1.5 / 5000) * 0.2 ** 0.5;
		expect(Math.abs(hazard / 1.341641e-4 - 1)).toBeLessThan(1e-6);
		const alive = life.filter((value) => value > 1000);
		const failed = alive.map((value): number => (value <= 1050 ? 1 : 0));
		// Mean hazard over 50 from the cumulative one, (t/scale)^shape
		const chance = 1 - Math.exp(0.2 ** 1.5 - 0.21 ** 1.5);
		expect(Math.abs(chance / 50 / hazard - 1)).toBeLessThan(0.02);
		expectMean(failed, chance, 0.05);
	});
	test("its median is 3916.099", () => {
		expect(Math.abs(5000 * Math.log(2) ** (1 / 1.5) - 3916.099)).toBeLessThan(1e-3);
		expectMean(shareAbove(life, 3916.099), 0.5);
	});
});

describe("lognormal from the engine", () => {
	// median e^μ, mean e^(μ + σ²/2), mode e^(μ − σ²): siliconfareast.com/lifedistfunctions2.htm (read)
	test.each([
		[0.3, 0.6],
		[-4.4, 0.8],
	])("μ %d, σ %d: half lie below e^μ, the mean is e^(μ + σ²/2)", (mu, sigma) => {
		const values = sample(`lognormal ${mu}`, (stream) => lognormal(stream, Math.exp(mu), sigma));
		expectMean(shareAbove(values, Math.exp(mu)), 0.5);
		expectMean(values, Math.exp(mu + sigma ** 2 / 2));
		// At the mode as many fall into a narrow bin as nowhere else; a fifth aside is fewer.
		const near = (centre: number) => values.filter((value) => Math.abs(value / centre - 1) < 0.02).length / centre;
		const mode = Math.exp(mu - sigma ** 2);
		expect(near(mode)).toBeGreaterThan(near(0.7 * mode));
		expect(near(mode)).toBeGreaterThan(near(1.4 * mode));
	});

	test("mean 10 and sd 2 are σ 0.198042 and μ 2.282975", () => {
		// σ² = ln(1 + (sd/mean)²): Pritsker, section 7.8, in a quoted copy (read); numbers derived
		const sigma = Math.sqrt(Math.log(1 + (2 / 10) ** 2));
		const mu = Math.log(10) - sigma ** 2 / 2;
		expect(Math.abs(sigma - 0.198042)).toBeLessThan(1e-6);
		expect(Math.abs(mu - 2.282975)).toBeLessThan(1e-6);
		const values = sample("mean 10, sd 2", (stream) => lognormal(stream, Math.exp(2.282975), 0.198042));
		expectMean(values, 10);
		const deviation = errorOf(values) * Math.sqrt(values.length);
		expect(Math.abs(deviation / 2 - 1)).toBeLessThan(0.01);
	});
});
