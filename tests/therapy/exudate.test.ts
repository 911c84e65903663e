import { describe, expect, test } from "vitest";
import { exponential, normal, Stream } from "../../src/engine/index.ts";
import { constantsWith } from "../../src/physics/index.ts";
import type { Dressing } from "../../src/scenario/index.ts";
import { Exudate } from "../../src/therapy/exudate.ts";
import { thigh } from "./example.ts";

const k = constantsWith();
const stream = (purpose: number) => new Stream("exudate", "thigh", purpose);
const streams = () => ({
	patient: stream(0),
	blocks: stream(1),
	times: stream(2),
	volumes: stream(3),
});
const fistula: Dressing = {
	...thigh,
	outflow: { totalMlPerDay: 480, burstsPerDay: 12 },
};
const made = (chance: boolean, dressing: Dressing = thigh, constants = k) => {
	const exudate = new Exudate(dressing, constants, chance, streams());
	exudate.reset();
	return exudate;
};

/** Lognormal of mean 1 and a coefficient of variation. */
const factor = (cv: number, z: number) => {
	const sigma = Math.sqrt(Math.log(1 + cv ** 2));
	return Math.exp(sigma * z - sigma ** 2 / 2);
};
const base = 162 / 1440;

describe("what a wound gives off", () => {
	test("is its daily amount, evenly, with chance off", () => {
		expect(made(false).rate).toBeCloseTo(base, 15);
	});

	test("is that times a factor of the patient and one of the block, of mean 1 each, blocks following each other", () => {
		const exudate = made(true);
		const [patient, blocks] = [stream(0), stream(1)];
		const ofPatient = factor(k["exudate.patientCv"], normal(patient));
		const rho = k["exudate.correlation"];
		let z = normal(blocks);
		for (let block = 0; block < 10; block++) {
			expect(exudate.rate).toBeCloseTo(
				base * ofPatient * factor(k["exudate.blockCv"], z),
				12,
			);
			exudate.nextBlock();
			z = rho * z + Math.sqrt(1 - rho ** 2) * normal(blocks);
		}
	});

	test("keeps its mean and its spread over many patients", () => {
		const exudate = made(true);
		const rates: number[] = [];
		const own = streams();
		for (let n = 0; n < 20_000; n++) {
			for (const one of [own.patient, own.blocks]) one.reset(n);
			const one = new Exudate(thigh, k, true, own);
			one.reset();
			one.nextBlock();
			rates.push(one.rate / base);
		}
		const mean = rates.reduce((sum, rate) => sum + rate) / rates.length;
		const variance =
			rates.reduce((sum, rate) => sum + (rate - mean) ** 2, 0) / rates.length;
		const both =
			(1 + k["exudate.patientCv"] ** 2) * (1 + k["exudate.blockCv"] ** 2) - 1;
		// Four standard errors of a mean.
		expect(Math.abs(mean - 1)).toBeLessThan(4 * Math.sqrt(both / 20_000));
		expect(Math.abs(variance / both - 1)).toBeLessThan(0.1);
		expect(exudate.rate).toBeGreaterThan(0);
	});

	test("has what bleeds besides, until it no longer does or another day begins", () => {
		const exudate = made(false);
		exudate.bleed(0.7);
		exudate.bleed(0.1);
		expect(exudate.rate).toBeCloseTo(base + 0.8, 12);
		exudate.bleed(-0.7);
		exudate.bleed(-0.1);
		// Not even rounding is left of it.
		expect(exudate.rate).toBe(base);
		exudate.bleed(2);
		exudate.reset();
		expect(exudate.rate).toBe(base);
	});

	test("is none where it is less than a microlitre in two years", () => {
		const trickle = (perMin: number) =>
			made(false, { ...thigh, exudateMlPerDay: perMin * 1440 }).rate;
		expect(trickle(0.9e-9)).toBe(0);
		expect(trickle(1.1e-9)).toBeCloseTo(1.1e-9, 15);
	});
});

describe("bursts of an outflow", () => {
	test("with chance off are evenly spaced and equal, the first after half a spacing", () => {
		const exudate = made(false, fistula);
		expect(exudate.spacing).toBe(120);
		expect(exudate.untilBurst(true)).toBe(60);
		expect(exudate.untilBurst(false)).toBe(120);
		expect(exudate.burstVolume()).toBe(40);
	});

	test("with chance on come as a Poisson process, their volumes exponential", () => {
		const exudate = made(true, fistula);
		const [times, volumes] = [stream(2), stream(3)];
		for (const first of [true, false, false]) {
			expect(exudate.untilBurst(first)).toBe(120 * exponential(times));
			expect(exudate.burstVolume()).toBe(40 * exponential(volumes));
		}
	});

	test("are none without an outflow, or with one that has none", () => {
		for (const dressing of [
			thigh,
			{ ...thigh, outflow: { totalMlPerDay: 480, burstsPerDay: 0 } },
		]) {
			const exudate = made(false, dressing);
			expect(exudate.spacing).toBe(Number.POSITIVE_INFINITY);
			expect(exudate.burstVolume()).toBe(0);
		}
	});

	test("too small to reckon with are none", () => {
		const drops = (totalMlPerDay: number) =>
			made(false, {
				...thigh,
				outflow: { totalMlPerDay, burstsPerDay: 1 },
			}).burstVolume();
		expect(drops(0.9e-9)).toBe(0);
		expect(drops(1.1e-9)).toBe(1.1e-9);
	});
});
