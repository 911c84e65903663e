import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	constantFacts,
	constantNames,
	convert,
	dimensionNames,
	readQuantity,
	sameDimension,
	unitsLike,
	unitsOf,
} from "../../src/physics/index.ts";

const value = (text: string, unit: string) => {
	const reading = readQuantity(text, unit);
	return reading.ok ? reading.value : reading.fault;
};

describe("quantities with units", () => {
	test.each([
		["1.2 mL/cm2/d", "mL/cm2/d", 1.2],
		["3.5 h", "min", 210],
		["90 s", "min", 1.5],
		["2 d", "min", 2880],
		["1 w", "h", 168],
		["0.5 L", "mL", 500],
		["10 cL", "mL", 100],
		["12 cm3", "mL", 12],
		["12 cm³", "mL", 12],
		["5 mm", "cm", 0.5],
		["250 mm2", "cm2", 2.5],
		["180 cm²", "cm2", 180],
		["1 mL/h", "mL/d", 24],
		["0.1 mL/min", "mL/d", 144],
		["20 mL/min/mmHg", "L/min/mmHg", 0.02],
		["1 /h", "/d", 24],
		["60 %", "", 0.6],
		["0.6", "", 0.6],
		["1e-7 L/min/mmHg", "L/min/mmHg", 1e-7],
		["60 mL/min/(L/min/mmHg)", "mL/min/(L/min/mmHg)", 60],
		[".25 L", "mL", 250],
		["1e3 mL", "L", 1],
		["1e12 Pa", "kPa", 1e9],
		["5 ml", "mL", 5],
		["10 cmH₂O", "cmH2O", 10],
		["3 m·m", "m2", 3],
		["5min", "min", 5],
		["  5   min ", "min", 5],
	])("%s is so many %s", (text, unit, expected) => {
		expect(value(text, unit)).toBe(expected);
	});

	test("a true minus sign is a minus", () => {
		expect(value("−125 mmHg", "mmHg")).toBe(-125);
		expect(value("1e−3 L", "mL")).toBe(1);
	});

	test("a comma is refused and the point offered where only that can be meant", () => {
		expect(readQuantity("1,5 min", "min")).toEqual({ ok: false, fault: "comma", hint: "1.5 min" });
		expect(readQuantity("1,000.5 mL", "mL")).toEqual({ ok: false, fault: "comma", hint: null });
		expect(readQuantity("12,25min", "min")).toMatchObject({ hint: "12.25 min" });
		expect(readQuantity("−1,5 mmHg", "mmHg")).toMatchObject({ hint: "−1.5 mmHg" });
		for (const thousands of ["1.000,5 mL", "1,234,567 mL"])
			expect(readQuantity(thousands, "mL")).toEqual({ ok: false, fault: "comma", hint: null });
	});

	test("a comma outside a number is no number's comma", () => {
		expect(value("5 min, 3 s", "min")).toBe("no number");
		expect(value("1,5 min, 3 s", "min")).toBe("no number");
		expect(value("about 1,5 min", "min")).toBe("no number");
	});

	test("a bare number is refused where a unit belongs", () => {
		expect(value("5", "min")).toBe("no unit");
		expect(value("0", "min")).toBe("no unit");
		expect(value("1e999", "min")).toBe("no number");
	});

	test("a spelled-out or wrongly cased unit is refused and the symbol offered", () => {
		expect(readQuantity("5 hours", "min")).toMatchObject({ hint: "5 h" });
		expect(readQuantity("5 seconds", "min")).toMatchObject({ hint: "5 s" });
		expect(readQuantity("5 MMHG", "mmHg")).toMatchObject({ hint: "5 mmHg" });
		expect(readQuantity("5 parsecs", "min")).toMatchObject({ hint: null });
	});

	test("a unit of another dimension is refused", () => {
		expect(value("5 mL", "min")).toBe("other dimension");
		expect(value("5 cm2", "cm")).toBe("other dimension");
	});

	test.each([
		"",
		" ",
		"min",
		"five min",
		"--5 min",
		"1 2 min",
		"1e999 mL",
		"NaN mL",
		"Infinity mL",
		"5 min min",
		"0x10 mL",
	])("%j is no volume and no duration", (text) => {
		expect(readQuantity(text, "min").ok).toBe(false);
		expect(readQuantity(text, "mL").ok).toBe(false);
	});

	test("a number too great in the unit asked for is none", () => {
		expect(value("1e308 w", "w")).toBe(1e308);
		expect(value("1e308 w", "s")).toBe("no number");
	});

	test("64 characters are read, one more is not", () => {
		expect(value(`5${" ".repeat(60)}min`, "min")).toBe(5);
		expect(value(`5${" ".repeat(61)}min`, "min")).toBe("no number");
	});

	test("a hundred thousand characters are refused at once", () => {
		expect(value("9".repeat(100_000), "min")).toBe("no number");
	});

	test("a value in its own unit is not touched", () => {
		fc.assert(
			fc.property(
				fc.double({ noNaN: true, noDefaultInfinity: true }),
				fc.constantFrom(...dimensionNames.flatMap((name) => unitsOf(name))),
				(number, unit) => convert(number, unit, unit) === number,
			),
		);
	});

	test("between units in a whole ratio a value is rounded once", () => {
		fc.assert(
			fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (number) => {
				expect(convert(number, "h", "min")).toBe(number * 60);
				expect(convert(number, "min", "h")).toBe(number / 60);
			}),
		);
	});

	test("a factor below the line divides: a leak per kPa is 7.5 times one per mmHg", () => {
		expect(convert(1, "L/min/mmHg", "L/min/kPa")).toBeCloseTo(1000 / 133.322387415, 12);
		expect(convert(6, "1/min", "/s")).toBe(0.1);
		expect(convert(3, "L/(min·mmHg)", "L/min/mmHg")).toBe(3);
	});

	test("conversion there and back gives the value again", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
				fc
					.constantFrom(...dimensionNames)
					.chain((name) => fc.tuple(fc.constantFrom(...unitsOf(name)), fc.constantFrom(...unitsOf(name)))),
				(number, [from, to]) => {
					const back = convert(convert(number, from, to), to, from);
					expect(Math.abs(back / number - 1)).toBeLessThan(1e-14);
				},
			),
		);
	});

	test("any text reads or is refused, and nothing is thrown", () => {
		fc.assert(
			fc.property(fc.string({ unit: "binary" }), (text) => {
				expect(typeof readQuantity(text, "mL/cm2/d").ok).toBe("boolean");
			}),
		);
	});

	test("units of different dimensions do not convert", () => {
		expect(() => convert(1, "mL", "min")).toThrow(RangeError);
		expect(() => convert(1, "furlong", "m")).toThrow(RangeError);
		expect(() => convert(1, "m", "furlong")).toThrow(RangeError);
		expect(() => readQuantity("1 m", "furlong")).toThrow(RangeError);
	});

	test("a thing and one over it differ in dimension, in length, time and pressure", () => {
		for (const unit of ["cm", "min", "mmHg"]) {
			expect(sameDimension(unit, `1/${unit}`)).toBe(false);
			expect(sameDimension(unit, `${unit}·${unit}/${unit}`)).toBe(true);
		}
	});

	test.each(["furlong", "min!", "1·min", "cm22cm", "(min", "min)", "min/"])(
		"%s is no unit, and of no dimension",
		(text) => {
			for (const other of ["min", "cm3", "/min", text]) {
				expect(sameDimension(text, other)).toBe(false);
				expect(sameDimension(other, text)).toBe(false);
			}
		},
	);

	test("all units that a dimension lists are of that dimension", () => {
		for (const name of dimensionNames) {
			const [own = "", ...others] = unitsOf(name);
			for (const other of others) expect(sameDimension(own, other)).toBe(true);
		}
	});

	test("the units offered for a unit begin with it", () => {
		expect(unitsLike("h")).toEqual(["h", "min", "s", "d", "w"]);
		expect(unitsLike("mL/min/mmHg")[0]).toBe("mL/min/mmHg");
		expect(unitsLike("kPa/s")).toEqual(["kPa/s"]);
	});

	test("every constant of the model is kept in a unit that can be read", () => {
		for (const name of constantNames) {
			const { value: kept, unit } = constantFacts[name];
			expect(readQuantity(`${kept} ${unit}`.trim(), unit)).toMatchObject({ ok: true, value: kept });
		}
	});
});
