import { describe, expect, test } from "vitest";
import { convert } from "../../src/physics/index.ts";

const off = (value: number, expected: number) => Math.abs(value / expected - 1);

// Standing of each value: 'read' in a copy of the source named; 'quoted' read in a copy that quotes the primary;
// 'derived' from inputs of the source.
describe("units against published values", () => {
	test("a conventional millimetre of mercury is 133.322387415 Pa", () => {
		// 13595.1 kg/m³ × 9.80665 m/s² × 1 mm, primidi.com/torr/conversion_factors (read);
		// NIST SP 811 (2008) App. B.8 prints 1.333 224 E+02 (quoted).
		expect(off(convert(1, "mmHg", "Pa"), 133.322387415)).toBeLessThan(1e-12);
		expect(off(convert(1, "mmHg", "Pa"), 133.3224)).toBeLessThan(1e-6);
	});

	test("a torr is 101325/760 Pa", () => {
		// primidi.com/torr/conversion_factors (read)
		expect(off(convert(1, "Torr", "Pa"), 101_325 / 760)).toBeLessThan(1e-12);
		expect(off(convert(1, "Torr", "Pa"), 133.322368421)).toBeLessThan(1e-11);
	});

	test("a conventional inch of mercury is 3386.389 Pa", () => {
		// NIST SP 811 (2008) App. B.8, conventional inch, not the one at 32 °F (quoted)
		expect(off(convert(1, "inHg", "Pa"), 3386.389)).toBeLessThan(2e-7);
		// 25.4 × the conventional millimetre (derived)
		expect(off(convert(1, "inHg", "Pa"), 3386.38864)).toBeLessThan(1e-8);
	});

	test("a centimetre of water is 98.0665 Pa", () => {
		// UCUM: m[H2O] is 9.80665 kPa; ucum-org/ucum, ucum-cs.units, commit 0a479cb (read)
		expect(convert(1, "cmH2O", "Pa")).toBe(98.0665);
	});

	test("a metre of mercury of UCUM is ours to 5e-6", () => {
		// UCUM: m[Hg] is 133.3220 kPa, shorter by 2.9e-6 than the conventional one; same file (read)
		expect(off(convert(1000, "mmHg", "kPa"), 133.322)).toBeLessThan(5e-6);
	});

	test("minute, hour, day and litre are those of UCUM, exactly", () => {
		// UCUM: min 60 s, h 60 min, d 24 h, L 1 dm³, with l and mL legal; same file (read)
		expect(convert(1, "min", "s")).toBe(60);
		expect(convert(1, "h", "min")).toBe(60);
		expect(convert(1, "d", "h")).toBe(24);
		expect(convert(1, "L", "dm3")).toBe(1);
		expect(convert(1, "l", "L")).toBe(1);
		expect(convert(1, "mL", "cm3")).toBe(1);
	});

	test("depths of the trade in other units", () => {
		// derived from the conventional millimetre of mercury and the UCUM centimetre of water above
		expect(off(convert(-125, "mmHg", "kPa"), -16.6653)).toBeLessThan(1e-5);
		expect(off(convert(-125, "mmHg", "inHg"), -4.92126)).toBeLessThan(1e-5);
		expect(off(convert(-80, "mmHg", "kPa"), -10.66579)).toBeLessThan(1e-5);
		expect(off(convert(1, "mmHg", "cmH2O"), 1.35951)).toBeLessThan(1e-5);
	});
});
