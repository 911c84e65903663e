import { describe, expect, test } from "vitest";
import { constantsWith } from "../../src/physics/index.ts";
import { checkScenario, readScenario } from "../../src/scenario/index.ts";
import { least, readChanged } from "./sample.ts";

describe("the least scenario", () => {
	const scenario = readScenario(least);
	const [dressing] = scenario.dressings;

	test("takes the stated defaults", () => {
		expect(scenario).toMatchObject({
			seed: "slackwater",
			start: "2026-01-05T07:00",
			startClockMin: 420,
			horizonMin: 1440,
			replications: 400,
			chance: true,
			happenings: [],
			compare: [],
			prices: null,
			packs: {},
			overridden: [],
			solution: { named: false },
		});
		expect(scenario.constants).toEqual(constantsWith());
	});

	test("has a dressing of the stated defaults", () => {
		expect(dressing).toMatchObject({
			patient: "patient",
			areaCm2: null,
			exudateMlPerDay: 160,
			slough: "ordinary",
			difficulty: "ordinary",
			outflow: null,
			foamVolumeMl: 240,
			canisterMl: 1000,
			sourceMl: 1000,
			canisterHoldsMl: 0,
			sourceLeftMl: null,
			ageMin: 0,
		});
	});

	test("begins in suction with a drawdown of 15 %", () => {
		expect(dressing?.regimens).toEqual([
			{
				fromMin: 0,
				begin: "suction",
				depthMmHg: 125,
				fillMl: 50,
				fillSuggested: false,
				dwellMin: 5,
				suctionMin: 120,
				drawdown: 0.15,
				drawdownGiven: false,
			},
		]);
	});

	test("is cared for by the stated defaults", () => {
		expect(scenario.care).toEqual({
			response: { dayMin: 4, nightMin: 7, spread: 0.6 },
			roundsClockMin: [180, 420, 660, 900, 1140, 1380],
			turningMin: 240,
			nurses: null,
			dressingChange: { everyMin: 2880 },
			avoid: {
				handOver: [
					{ fromMin: 390, toMin: 450 },
					{ fromMin: 1110, toMin: 1170 },
				],
				meals: [
					{ fromMin: 480, toMin: 510 },
					{ fromMin: 720, toMin: 780 },
					{ fromMin: 1050, toMin: 1110 },
				],
				smallHours: [{ fromMin: 60, toMin: 300 }],
			},
		});
	});

	test("names every default that it took, with its provenance", () => {
		const paths = scenario.defaulted.map(({ path }) => path);
		expect(paths).toContain("dressings[0].unit.canister");
		expect(paths).toContain("dressings[0].regimen.begin");
		expect(paths).toContain("care.response.night");
		expect(paths).toHaveLength(new Set(paths).size);
		expect(scenario.defaulted.find(({ path }) => path === "care.turning")).toEqual({
			path: "care.turning",
			value: "4 h",
			provenance: "common practice",
			source: "common practice, no source",
		});
	});

	test("leaves nothing to note", () => {
		expect(checkScenario(least).notes).toEqual([]);
	});
});

describe("what a scenario may say", () => {
	test("a value that is given is not listed as a default", () => {
		const { defaulted } = readChanged((raw) => {
			raw.care = { turning: "none" };
		});
		expect(defaulted.map(({ path }) => path)).not.toContain("care.turning");
	});

	test("exudate per area is multiplied by the area", () => {
		const { dressings } = readChanged((raw) => {
			raw.dressings[0].wound = { tissue: "soft-tissue", area: "180 cm2", exudate: "0.9 mL/cm2/d" };
		});
		expect(dressings[0]?.exudateMlPerDay).toBe(162);
	});

	test("exudate in mL per day stands as it is, beside an area too", () => {
		const { dressings } = readChanged((raw) => {
			raw.dressings[0].wound.area = "180 cm2";
			raw.dressings[0].wound.exudate = "5 mL/h";
		});
		expect(dressings[0]).toMatchObject({ exudateMlPerDay: 120, areaCm2: 180 });
	});

	test("the suggested fill goes by the volume of all pieces of foam", () => {
		const { dressings } = readChanged((raw) => {
			raw.dressings[0].foam.push({ area: "50 cm2", thickness: "16 mm" });
			raw.dressings[0].regimen.fill = "suggested";
		});
		expect(dressings[0]?.foamVolumeMl).toBe(320);
		expect(dressings[0]?.regimens[0]).toMatchObject({ fillSuggested: true });
		expect(dressings[0]?.regimens[0]?.fillMl).toBeCloseTo(0.26 * 320, 9);
	});

	test("the suggested fill goes by an overridden assumption", () => {
		const { dressings, overridden } = readChanged((raw) => {
			raw.dressings[0].regimen.fill = "suggested";
			raw.assumptions = { "foam.suggested": 0.2 };
		});
		expect(dressings[0]?.regimens[0]?.fillMl).toBeCloseTo(48, 9);
		expect(overridden).toEqual(["foam.suggested"]);
	});

	test("no fill is suction alone, a dwell beside it is accepted", () => {
		const { dressings } = readChanged((raw) => {
			raw.dressings[0].regimen = { begin: "fill", depth: "-125 mmHg", fill: "none", dwell: "5 min" };
		});
		expect(dressings[0]?.regimens[0]).toMatchObject({
			begin: "suction",
			fillMl: 0,
			dwellMin: 0,
			suctionMin: Number.POSITIVE_INFINITY,
		});
	});

	test("a depth in kPa becomes mmHg", () => {
		const { dressings } = readChanged((raw) => {
			raw.dressings[0].regimen.depth = "-16.6653 kPa";
		});
		expect(dressings[0]?.regimens[0]?.depthMmHg).toBeCloseTo(125, 3);
	});

	test("a list of regimens keeps its order and its times", () => {
		const { dressings } = readChanged((raw) => {
			raw.dressings[0].regimen = [raw.dressings[0].regimen, { from: "48 h", depth: "-100 mmHg", fill: "none" }];
		});
		expect(dressings[0]?.regimens.map(({ fromMin }) => fromMin)).toEqual([0, 2880]);
	});

	test("rounds, turning and dressing changes can be switched off", () => {
		const { care } = readChanged((raw) => {
			raw.care = { rounds: [], turning: "none", dressingChange: "none" };
		});
		expect(care).toMatchObject({ roundsClockMin: [], turningMin: null, dressingChange: null });
	});

	test("dressing changes can be listed, and come in order", () => {
		const { care } = readChanged((raw) => {
			raw.care = { dressingChange: ["20 h", "8 h"] };
		});
		expect(care.dressingChange).toEqual({ atMin: [480, 1200] });
	});

	test("rounds come in the order of the clock", () => {
		const { care } = readChanged((raw) => {
			raw.care = { rounds: ["19:00", "07:00"] };
		});
		expect(care.roundsClockMin).toEqual([420, 1140]);
	});

	test("a number of nurses is a number", () => {
		expect(
			readChanged((raw) => {
				raw.care = { nurses: 2 };
			}).care.nurses,
		).toBe(2);
	});

	test.each([
		["off", false],
		["on", true],
		[false, false],
		[true, true],
	])("chance: %s is %s", (written, chance) => {
		expect(
			readChanged((raw) => {
				raw.chance = written;
			}).chance,
		).toBe(chance);
	});

	test("every kind of happening carries its own details", () => {
		const { happenings } = readChanged((raw) => {
			raw.happenings = [
				{ at: "1 h", dressing: "thigh", what: "transfer" },
				{ at: "2 h", dressing: "thigh", what: "breach", size: "20 mL/min/mmHg" },
				{ at: "3 h", dressing: "thigh", what: "clog", share: "60 %" },
				{ at: "4 h", dressing: "thigh", what: "off", for: "30 min" },
				{ at: "5 h", dressing: "thigh", what: "bleed", volume: "0.2 L", for: "45 min" },
			];
		});
		expect(happenings).toEqual([
			{ atMin: 60, dressing: "thigh", what: "transfer" },
			{ atMin: 120, dressing: "thigh", what: "breach", size: 0.02 },
			{ atMin: 180, dressing: "thigh", what: "clog", share: 0.6 },
			{ atMin: 240, dressing: "thigh", what: "off", forMin: 30 },
			{ atMin: 300, dressing: "thigh", what: "bleed", volumeMl: 200, forMin: 45 },
		]);
	});

	test("a happening after the end is accepted with a note", () => {
		const text = `${least}happenings: [{ at: 30 h, dressing: thigh, what: turn }]\n`;
		expect(checkScenario(text).notes).toEqual([
			"happenings[0]: turn of thigh comes at 30 h, not before the end at 24 h, and so never.",
		]);
	});

	test("an assumption may come in another unit of its kind", () => {
		const { constants, overridden } = readChanged((raw) => {
			raw.assumptions = { "breach.dry": "0.096 /d", "source.hang": "2880 min" };
		});
		expect(constants["breach.dry"]).toBeCloseTo(0.004, 15);
		expect(constants["source.hang"]).toBe(48);
		expect(overridden).toContain("source.hang");
	});

	test("the hang time of the solution overrides the constant", () => {
		const { constants, solution } = readChanged((raw) => {
			raw.solution = { name: "saline", hang: "12 h" };
		});
		expect(constants["source.hang"]).toBe(12);
		expect(solution).toEqual({ name: "saline", named: true });
	});

	test("prices and packs are taken as they are", () => {
		const { prices, packs } = readChanged((raw) => {
			raw.prices = { currency: "EUR", asOf: "2026-01", canister: 38 };
			raw.packs = { canister: 10 };
		});
		expect(prices).toEqual({ currency: "EUR", asOf: "2026-01", items: { canister: 38 } });
		expect(packs).toEqual({ canister: 10 });
	});

	test("an outflow is a total and a number of bursts per day", () => {
		const { dressings } = readChanged((raw) => {
			raw.dressings[0].wound.outflow = { total: "0.4 L/d", bursts: "0.5 /h" };
		});
		expect(dressings[0]?.outflow).toEqual({ totalMlPerDay: 400, burstsPerDay: 12 });
	});

	test("an id or a seed that is a whole number is text", () => {
		const { seed, dressings, happenings } = readChanged((raw) => {
			raw.seed = 42;
			raw.dressings[0].id = 1;
			raw.happenings = [{ at: "1 h", dressing: 1, what: "turn" }];
		});
		expect([seed, dressings[0]?.id, happenings[0]?.dressing]).toEqual(["42", "1", "1"]);
	});

	test("the same scenario reads the same as JSON", () => {
		const json = JSON.stringify({
			slackwater: 1,
			title: "Least",
			dressings: [
				{
					id: "thigh",
					wound: { tissue: "soft-tissue", exudate: "160 mL/d" },
					foam: [{ area: "240 cm2", thickness: "1 cm" }],
					regimen: { depth: "-125 mmHg", fill: "50 mL", dwell: "5 min", suction: "2 h" },
				},
			],
		});
		expect(readScenario(json)).toEqual(readScenario(least));
		expect(readScenario(JSON.stringify(JSON.parse(json), null, "\t"), { format: "json" })).toEqual(readScenario(least));
	});

	test("a byte order mark and Windows line ends do no harm", () => {
		expect(readScenario(`\uFEFF${least.replaceAll("\n", "\r\n")}`)).toEqual(readScenario(least));
	});

	test("an anchor and its alias read as the value twice", () => {
		const text = least
			.replace("foam: [", "foam: &f [")
			.concat(
				"  - { id: calf, wound: { tissue: soft-tissue, exudate: 9 mL/d }, foam: *f, regimen: { depth: -75 mmHg, fill: none } }\n",
			);
		expect(readScenario(text).dressings[1]?.foamVolumeMl).toBe(240);
	});
});
