import { describe, expect, test } from "vitest";
import { conductance, constantFacts, convert, drainedAfter, timeToDrained } from "../../src/physics/index.ts";

/** A round tube: radius and length in m, viscosity in Pa·s. */
interface Tube {
	readonly radius: number;
	readonly length: number;
	readonly viscosity: number;
}

/** Resistance of Poiseuille, 8·η·l/(π·r⁴), Pa·s/m³. */
const resistance = ({ radius, length, viscosity }: Tube) => (8 * viscosity * length) / (Math.PI * radius ** 4);

/** mL/min/mmHg, the unit of the drain law. */
const drainConductance = (tube: Tube) => (convert(1, "m3/s", "mL/min") / resistance(tube)) * convert(1, "mmHg", "Pa");

const off = (value: number, expected: number) => Math.abs(value / expected - 1);
const metres = (value: number, unit: string) => convert(value, unit, "m");

describe("Poiseuille's law in the units of the project", () => {
	// OpenStax College Physics ch. 12.4, example 12.8, eq. 12.50 (read)
	const needle: Tube = { radius: metres(0.15, "mm"), length: metres(2.5, "cm"), viscosity: 1e-3 };
	const flow = convert(0.12, "cm3/s", "m3/s");
	const inlet = resistance(needle) * flow + convert(8, "mmHg", "Pa");

	test("0.120 cm³/s through an infusion needle into a vein at 8 mmHg takes 1.62e4 Pa", () => {
		expect(off(inlet, 1.62e4)).toBeLessThan(5e-3);
		expect(resistance(needle) * flow).toBeCloseTo(15_090.2, 0);
		expect(off(convert(8, "mmHg", "Pa"), 1.066e3)).toBeLessThan(1e-3);
	});

	test("which is a head of 1.61 m of saline, to the 3 % that it is denser than water", () => {
		// the same example
		expect(off(convert(inlet, "Pa", "cmH2O"), 161)).toBeLessThan(0.03);
	});

	test("half the flow goes through 0.841 of the radius, 0.81 of it through 0.95", () => {
		// OpenStax, example 12.7 and its text (read)
		const share = (part: number) => resistance(needle) / resistance({ ...needle, radius: part * needle.radius });
		expect(off(share(0.841), 0.5)).toBeLessThan(1e-3);
		expect(Math.abs(share(0.95) - 0.81)).toBeLessThan(5e-3);
	});

	test("twice the radius is a sixteenth of the resistance", () => {
		// OpenStax ch. 12.4 (read)
		expect(resistance({ ...needle, radius: 2 * needle.radius }) / resistance(needle)).toBe(1 / 16);
	});
});

describe("the drain law g·p is that of a Poiseuille tube", () => {
	// A metre of tube at body temperature, as wide as the project's default conductance asks for (derived)
	const clear = constantFacts["drain.conductance"].value;
	const narrow: Tube = { radius: 1e-3, length: 1, viscosity: 0.6947e-3 };
	const tube: Tube = { ...narrow, radius: 1e-3 * (clear / drainConductance(narrow)) ** 0.25 };
	const draining = { level: 100, inflow: 0, from: 125, towards: 125, tau: Number.POSITIVE_INFINITY };

	test("a millimetre and a half of bore, more or less, matches 1 mL/min/mmHg", () => {
		expect(drainConductance(tube)).toBeCloseTo(clear, 12);
		const bore = convert(2 * tube.radius, "m", "mm");
		expect(bore).toBeGreaterThan(1);
		expect(bore).toBeLessThan(2);
	});

	test("what it lets through in a minute at 125 mmHg", () => {
		const metresCubed = convert(125, "mmHg", "Pa") / resistance(tube);
		expect(drainedAfter(1, { ...draining, conductance: clear })).toBeCloseTo(convert(metresCubed, "m3/s", "mL/min"), 9);
	});

	test("a port half open lets through a quarter, as a tube of half the cross-section does", () => {
		// g = G0·a², a the open share: resistance goes with the square of the cross-section (OpenStax, read)
		const half = { ...tube, radius: tube.radius / Math.SQRT2 };
		expect(conductance(clear, 0.5)).toBeCloseTo(drainConductance(half), 12);
	});

	test("cold liquid drains as much more slowly as it is more viscous", () => {
		// 1.002 and 0.6947 mPa·s at 20 and 37 °C, OpenStax table 12.1 (read)
		const minutes = (viscosity: number) =>
			timeToDrained(50, { ...draining, conductance: drainConductance({ ...tube, viscosity }) }, 60);
		expect(minutes(1.002e-3) / minutes(0.6947e-3)).toBeCloseTo(1.002 / 0.6947, 9);
	});
});
