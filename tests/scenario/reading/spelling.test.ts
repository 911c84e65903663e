import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readQuantity } from "../../../src/physics/index.ts";
import { checkScenario } from "../../../src/scenario/index.ts";
import { changed, type Raw } from "../sample.ts";

/** What people write for a unit, by the unit that is meant. */
const written: { readonly [unit: string]: readonly string[] } = {
	mL: ["cc", "ccs", "ML", "Ml", "mls", "mL.", "ccm", "millilitres", "milliliter"],
	L: ["litre", "litres", "Liter", "ltr", "lt"],
	min: ["mins", "mins.", "minute", "minutes", "MIN", "Min", "m"],
	h: ["hr", "hrs", "Hrs", "hour", "hours", "H", "hr."],
	s: ["sec", "secs", "seconds", "S"],
	d: ["day", "days", "D", "Days"],
	mmHg: ["mmhg", "MMHG", "mmHG", "mm hg", "mm of Hg", "MmHg"],
	kPa: ["kpa", "KPA", "kilopascals", "KPa"],
	cmH2O: ["cmh2o", "cm H2o", "cm of water", "cmH20"],
	mbar: ["mBar", "MBAR", "millibars"],
	cm2: ["cm^2", "sq cm", "sqcm", "square centimetres", "qcm", "CM2", "cm**2", "sq. cm"],
	cm: ["CM", "cms", "centimetre", "centimeters"],
	mm: ["MM", "millimetres"],
	"mL/cm2/d": [
		"ml/cm²/day",
		"mL/cm^2/d",
		"ml/cm2/24h",
		"ml per cm² per day",
		"cc/cm2/day",
		"ML/cm²/d",
		"ml cm-2 d-1",
		"mL/sq cm/day",
	],
	"mL/d": ["ml/day", "ML/d", "cc/day", "ml per day", "mL/24 h", "ml a day", "mls/day"],
	"L/d": ["litres/day", "L per day", "l/24h"],
	"mL/h": ["ml/hr", "cc/hour", "mL per hour"],
};

/** A place of a scenario, the units that people write there, and whether the sign is a minus. */
const places: readonly {
	readonly name: string;
	readonly units: readonly string[];
	readonly numbers: readonly (readonly [wrong: string, right: string])[];
	readonly put: (raw: Raw, value: string) => void;
}[] = [
	{
		name: "exudate",
		units: ["mL/cm2/d", "mL/d", "L/d", "mL/h"],
		numbers: [
			["0,9", "0.9"],
			["0.9", "0.9"],
			["1", "1"],
			[",5", "0.5"],
		],
		put: (raw, value) => {
			raw.dressings[0].wound.area = "180 cm2";
			raw.dressings[0].wound.exudate = value;
		},
	},
	{
		name: "fill",
		units: ["mL", "L"],
		numbers: [
			["0,9", "0.9"],
			["1", "1"],
			["1.25", "1.25"],
			["1,25", "1.25"],
		],
		put: (raw, value) => {
			raw.dressings[0].regimen.fill = value;
		},
	},
	{
		name: "suction",
		units: ["min", "h", "s", "d"],
		numbers: [
			["90", "90"],
			["2,5", "2.5"],
			["3", "3"],
		],
		put: (raw, value) => {
			raw.dressings[0].regimen.suction = value;
		},
	},
	{
		name: "depth",
		units: ["mmHg", "kPa", "cmH2O", "mbar"],
		numbers: [
			["-12", "-12"],
			["−12,5", "−12.5"],
			["12", "-12"],
			["12,5", "-12.5"],
		],
		put: (raw, value) => {
			raw.dressings[0].regimen.depth = value;
		},
	},
	{
		name: "area",
		units: ["cm2"],
		numbers: [
			["180", "180"],
			["180,5", "180.5"],
		],
		put: (raw, value) => {
			raw.dressings[0].foam[0].area = value;
		},
	},
	{
		name: "thickness",
		units: ["cm", "mm"],
		numbers: [
			["1", "1"],
			["1,6", "1.6"],
		],
		put: (raw, value) => {
			raw.dressings[0].foam[0].thickness = value;
		},
	},
];

const problemsOf = (put: (raw: Raw, value: string) => void, value: string) =>
	checkScenario(changed((raw) => put(raw, value))).problems;

const cases = places.flatMap(({ name, units, numbers, put }) =>
	units.flatMap((unit) =>
		written[unit].flatMap((spelling) =>
			numbers.map(([wrong, right]) => ({ name, unit, put, text: `${wrong} ${spelling}`, meant: `${right} ${unit}` })),
		),
	),
);

describe("the spelling of quantities", () => {
	test("is corrected in a suggestion that is itself accepted and means the same", () => {
		expect(cases.length).toBeGreaterThan(250);
		for (const { name, unit, put, text, meant } of cases) {
			const problems = problemsOf(put, text);
			// 90 days of suction are too many however they are spelled.
			if (problemsOf(put, meant).length > 0) continue;
			expect(problems.length, `${name}: ${text}`).toBe(1);
			const suggested = (problems[0].suggestion ?? "").replace(/^"|"$/gu, "");
			expect(suggested, `${name}: ${text}`).not.toBe("");
			expect(problemsOf(put, suggested), `${text}: ${suggested}`).toEqual([]);
			const [a, b] = [suggested, meant].map((one) => readQuantity(one, unit));
			expect(a, `${text}: ${suggested}`).toMatchObject({ ok: true, value: b.ok ? b.value : Number.NaN });
		}
	});

	test("without a space, with spaces around strokes and in any case, too", () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...cases),
				fc.constantFrom("", " ", "  "),
				fc.constantFrom("/", " / ", "/ "),
				(one, space, stroke) => {
					const text = one.text.replace(" ", space).replaceAll("/", stroke);
					for (const { suggestion } of problemsOf(one.put, text)) {
						if (suggestion === undefined) continue;
						const value = suggestion.replace(/^"|"$/gu, "");
						expect(problemsOf(one.put, value), `${text}: ${value}`).toEqual([]);
					}
				},
			),
			{ numRuns: 150 },
		);
	});

	test("whatever is suggested for any text is accepted", () => {
		const piece = fc.constantFrom(
			..."0 9 1 , . - ml cc cm ² ^2 / per day hr h mmhg % sq in of 24 L mins · ( )".split(" "),
		);
		fc.assert(
			fc.property(
				fc.array(piece, { minLength: 1, maxLength: 8 }),
				fc.constantFrom("", " "),
				fc.constantFrom(...places),
				(pieces, space, { put }) => {
					for (const { suggestion } of problemsOf(put, pieces.join(space))) {
						if (suggestion === undefined || !suggestion.startsWith('"')) continue;
						const value = suggestion.slice(1, -1);
						// How deep the pump holds joins several values of a file, and is another rule.
						const wrong = problemsOf(put, value).filter(({ expected }) => !expected.includes("the pump holds"));
						expect(wrong, value).toEqual([]);
					}
				},
			),
			{ numRuns: 400 },
		);
	});

	test.each([
		["1,500 mL", "a thousand and a half, or one and a half"],
		["50 degrees", "no volume"],
		["50 drops", "no unit that is known"],
		["5 kg", "no volume"],
	])("%s is not corrected: %s", (text) => {
		const [problem] = problemsOf(places[1].put, text);
		expect(problem).toBeDefined();
		expect(problem.suggestion).toBeUndefined();
	});

	test("the writings that beginners use most", () => {
		const said = (place: number, text: string) => problemsOf(places[place].put, text)[0].suggestion;
		expect(said(0, "0.9 ml/cm²/day")).toBe('"0.9 mL/cm2/d"');
		expect(said(0, "160 ml/day")).toBe('"160 mL/d"');
		expect(said(1, "0,9 mL")).toBe('"0.9 mL"');
		expect(said(1, "50 cc")).toBe('"50 mL"');
		expect(said(2, "2 hrs")).toBe('"2 h"');
		expect(said(2, "90 mins")).toBe('"90 min"');
		expect(said(3, "125 mmhg")).toBe('"-125 mmHg"');
	});
});

test("a comma for a point is seen between braces, too, where it ends the value", () => {
	const problems = (regimen: string) => {
		const checked = checkScenario(`slackwater: 1
title: t
dressings:
  - id: w
    wound: { tissue: soft-tissue, exudate: 90 mL/d }
    foam: [{ area: 150 cm2, thickness: 1.6 cm }]
    regimen: ${regimen}
`);
		return checked.problems;
	};
	expect(problems("{ depth: -125 mmHg, fill: 30 mL, dwell: 4,5 min, suction: 2 h }")).toContainEqual(
		expect.objectContaining({ received: 'the key "5 min"', suggestion: '"4.5 min"' }),
	);
	// An unknown key that follows no bare number is an unknown key.
	expect(problems("{ depth: -125 mmHg, fill: 30 mL, dwel: 4 min, suction: 2 h }")).toContainEqual(
		expect.objectContaining({ suggestion: "dwell" }),
	);
});
