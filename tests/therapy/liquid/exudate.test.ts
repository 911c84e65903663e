import { describe, expect, test } from "vitest";
import { normal, Substream } from "../../../src/engine/index.ts";
import { constantsWith } from "../../../src/physics/index.ts";
import { Exudate } from "../../../src/therapy/liquid/exudate.ts";
import { thigh } from "../example.ts";

const k = constantsWith();
const stream = (purpose: number) => new Substream("exudate", "thigh", purpose);
const streams = () => ({ patient: stream(0), blocks: stream(1) });
const made = (chance: boolean, mlPerDay = thigh.exudateMlPerDay, constants = k) => {
	const exudate = new Exudate(mlPerDay, constants, chance, streams());
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
			expect(exudate.rate).toBeCloseTo(base * ofPatient * factor(k["exudate.blockCv"], z), 12);
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
			const one = new Exudate(thigh.exudateMlPerDay, k, true, own);
			one.reset();
			one.nextBlock();
			rates.push(one.rate / base);
		}
		const mean = rates.reduce((sum, rate) => sum + rate) / rates.length;
		const variance = rates.reduce((sum, rate) => sum + (rate - mean) ** 2, 0) / rates.length;
		const both = (1 + k["exudate.patientCv"] ** 2) * (1 + k["exudate.blockCv"] ** 2) - 1;
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
		const trickle = (perMin: number) => made(false, perMin * 1440).rate;
		expect(trickle(0.9e-9)).toBe(0);
		expect(trickle(1.1e-9)).toBeCloseTo(1.1e-9, 15);
	});
});
