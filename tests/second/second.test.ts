import { describe, expect, it } from "vitest";
import { constantsWith } from "../../src/physics/constants.ts";
import { type SecondDay, type SecondInput, second } from "./second.ts";
import type { SecondDressing, SecondHappening, SecondRegimen } from "./shape.ts";

/** A small seeded generator for these tests: mulberry32, from memory. */
function mulberry32(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let t = state;
		t = Math.imul(t ^ (t >>> 15), t | 1);
		t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
		return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
	};
}

const regimen = (over: Partial<SecondRegimen> = {}): SecondRegimen => ({
	fromMin: 0,
	begin: "suction",
	depthMmHg: 125,
	fillMl: 50,
	dwellMin: 5,
	suctionMin: 120,
	drawdown: 0.15,
	...over,
});

const dressing = (over: Partial<SecondDressing> = {}): SecondDressing => ({
	id: "thigh",
	foamVolumeMl: 240,
	exudateMlPerDay: 162,
	slough: 1,
	difficulty: 1,
	outflow: null,
	canisterMl: 1000,
	sourceMl: 1000,
	holdsMl: 0,
	leftMl: over.sourceMl ?? 1000,
	ageMin: 0,
	regimens: [regimen()],
	...over,
});

const day = (over: Partial<SecondInput> = {}): SecondInput => ({
	horizonMin: 1440,
	startClockMin: 8 * 60,
	chance: false,
	dressings: [dressing()],
	care: {
		dayMin: 4,
		nightMin: 7,
		spread: 0.6,
		roundsClockMin: [],
		turningMin: null,
		nurses: null,
		changeEveryMin: null,
		changeAtMin: [],
	},
	happenings: [],
	constants: constantsWith(),
	...over,
});

const at = (atMin: number, what: SecondHappening["what"], over: Partial<SecondHappening> = {}): SecondHappening => ({
	atMin,
	what,
	dressing: "thigh",
	...over,
});

const run = (input: SecondInput, dtMin = 0.05, seed = 1): SecondDay[] =>
	second(input, { dtMin, random: mulberry32(seed) });

/** The day of an input with one dressing. */
function only(input: SecondInput, dtMin = 0.05): SecondDay {
	const [first] = run(input, dtMin);
	if (first === undefined) throw new Error("no dressing");
	return first;
}

const starts = (result: SecondDay, phase: string): number[] =>
	result.phases.filter((item) => item.phase === phase).map((item) => item.startMin);

const spans = (result: SecondDay, condition: string): number[] =>
	result.alarms.filter((item) => item.condition === condition).flatMap((item) => [item.startMin, item.endMin]);

function expectTimes(actual: number[], expected: number[], digits = 2) {
	expect(actual).toHaveLength(expected.length);
	expected.forEach((time, i) => {
		expect(actual[i]).toBeCloseTo(time, digits);
	});
}

describe("the model's reference figures", () => {
	it("5 min with 2 h gives 11 fills, 550 mL, 705.47 mL to the canister and a share of 0.625", () => {
		const result = only(day());
		expect(result.totals.fills).toBe(11);
		expect(result.totals.instilledMl).toBeCloseTo(550, 9);
		expect(starts(result, "fill")[0]).toBeCloseTo(120, 6);
		expect(starts(result, "drain")[0]).toBeCloseTo(125 + 50 / 60, 6);
		const drain = result.phases.find((item) => item.phase === "drain");
		expect((drain?.endMin ?? 0) - (drain?.startMin ?? 0)).toBeCloseTo(0.51, 2);
		expect(result.totals.toCanisterMl).toBeCloseTo(705.47, 2);
		expect(result.totals.meanExudateShare).toBeCloseTo(0.625, 3);
		expect(result.alarms).toEqual([]);
	});

	it("10 min with 3.5 h gives 6 fills, 300 mL and a share of 0.759", () => {
		const result = only(day({ dressings: [dressing({ regimens: [regimen({ dwellMin: 10, suctionMin: 210 })] })] }));
		expect(result.totals.fills).toBe(6);
		expect(result.totals.instilledMl).toBeCloseTo(300, 9);
		expect(starts(result, "fill")[0]).toBeCloseTo(210, 6);
		expect(starts(result, "drain")[0]).toBeCloseTo(220 + 50 / 60, 6);
		expect(result.totals.meanExudateShare).toBeCloseTo(0.759, 3);
	});

	it("a breach of 0.025 at 200 min is a seal leak from 201 to 215", () => {
		const result = only(day({ happenings: [at(200, "breach", { size: 0.025 })] }));
		expectTimes(spans(result, "seal leak"), [201, 215], 6);
		expect(result.alarms).toHaveLength(1);
	});

	it("a suction-line kink at 300 min is an obstruction from 303 to 308", () => {
		const result = only(day({ happenings: [at(300, "kink-suction")] }));
		expectTimes(spans(result, "suction path obstructed"), [303, 308], 6);
	});

	it("a fill-line kink at 100 min is noticed from 120.5 to 125.5 and the dwell comes at 126.33", () => {
		const result = only(day({ happenings: [at(100, "kink-fill")] }));
		expectTimes(spans(result, "fill path obstructed"), [120.5, 125.5], 6);
		expect(starts(result, "dwell")[0]).toBeCloseTo(126.33, 2);
	});

	it("a source of 230 mL is empty at 623.83 and renewed at 630.83, by night after 10 min", () => {
		const dressings = [dressing({ sourceMl: 230 })];
		const byDay = only(day({ dressings }));
		expectTimes(spans(byDay, "source empty").slice(0, 2), [623.83, 630.83]);
		expect(byDay.sourceChanges[0]?.atMin).toBeCloseTo(630.83, 2);
		const byNight = only(day({ dressings, startClockMin: 12 * 60 }));
		expectTimes(spans(byNight, "source empty").slice(0, 2), [623.83, 633.83]);
	});
});

const rounds = [3, 7, 11, 15, 19, 23].map((hour) => hour * 60);
const busyCare: SecondInput["care"] = { ...day().care, roundsClockMin: rounds, turningMin: 240, changeEveryMin: 2880 };
const fistula = { totalMlPerDay: 450, burstsPerDay: 24 };
const stepDown = [
	regimen(),
	regimen({ fromMin: 900, depthMmHg: 75, fillMl: 0 }),
	regimen({ fromMin: 1500, dwellMin: 10, suctionMin: 90, drawdown: 0.5 }),
];

/** A dozen days that differ in what goes wrong. */
const varied: [string, SecondInput][] = [
	["an ordinary day", day({ care: busyCare })],
	["two days to a dressing change, and one after it", day({ horizonMin: 4320, care: busyCare })],
	["a fistula", day({ care: busyCare, dressings: [dressing({ outflow: fistula })] })],
	[
		"heavy slough under an awkward seal",
		day({
			horizonMin: 2880,
			care: busyCare,
			dressings: [dressing({ slough: 3, difficulty: 1.5, regimens: [regimen({ suctionMin: 30, dwellMin: 15 })] })],
		}),
	],
	[
		"breaches while wet and dry",
		day({
			care: busyCare,
			happenings: [
				at(110, "breach", { size: 0.05 }),
				at(122, "breach", { size: 0.1 }),
				at(500, "breach", { size: 0.02 }),
				at(700, "breach"),
			],
		}),
	],
	[
		"clogs and kinks",
		day({
			care: busyCare,
			happenings: [
				at(100, "clog", { share: 0.9 }),
				at(372, "kink-suction"),
				at(600, "kink-fill"),
				at(900, "clog", { share: 2 }),
			],
		}),
	],
	[
		"small canisters, small sources and one nurse for two dressings",
		day({
			care: { ...busyCare, nurses: 1, roundsClockMin: [7 * 60] },
			dressings: [
				dressing({ canisterMl: 150, sourceMl: 120 }),
				dressing({ id: "flank", canisterMl: 130, sourceMl: 110 }),
			],
		}),
	],
	[
		"a step-down to suction alone and back",
		day({ horizonMin: 2880, care: busyCare, dressings: [dressing({ regimens: stepDown })] }),
	],
	[
		"a day that begins in fill and is off for a while",
		day({
			care: busyCare,
			dressings: [dressing({ regimens: [regimen({ begin: "fill" })] })],
			happenings: [at(2, "off", { forMin: 12 }), at(60, "off", { forMin: 45 }), at(250, "transfer"), at(254, "turn")],
		}),
	],
	[
		"changes by script",
		day({
			care: { ...busyCare, changeAtMin: [123, 600] },
			happenings: [
				at(50, "canister-change"),
				at(300, "source-change"),
				at(610, "bleed", { volumeMl: 90, forMin: 60 }),
				at(900, "dressing-change"),
				at(910, "canister-change"),
			],
		}),
	],
	[
		"a bleed that overfills the foam and the canister",
		day({
			care: busyCare,
			dressings: [dressing({ canisterMl: 300 })],
			happenings: [at(119, "bleed", { volumeMl: 500, forMin: 40 })],
		}),
	],
	[
		"an old dressing, gently drawn down",
		day({
			care: busyCare,
			dressings: [
				dressing({
					ageMin: 2400,
					foamVolumeMl: 600,
					regimens: [regimen({ begin: "fill", depthMmHg: 150, fillMl: 156, suctionMin: 60, drawdown: 0.05 })],
				}),
			],
		}),
	],
];

describe("a dozen days with chance on", () => {
	const results = varied.flatMap(([name, input], i) =>
		[1, 2, 3].flatMap((replication) =>
			run({ ...input, chance: true }, 0.05, 100 * i + replication).map((result) => ({ name, input, result })),
		),
	);

	it("end with what came in equal to what is anywhere", () => {
		for (const { name, result } of results) {
			const t = result.totals;
			const out = t.toCanisterMl + t.inDressingMl + t.weptMl + t.discardedMl;
			expect(Math.abs(t.instilledMl + t.exudateMl - out), name).toBeLessThan(1e-6);
		}
	});

	it("list phases without gap or overlap from the start to the horizon", () => {
		for (const { name, input, result } of results) {
			let endMin = 0;
			for (const item of result.phases) {
				expect(Math.abs(item.startMin - endMin), name).toBeLessThan(1e-6);
				expect(item.endMin).toBeGreaterThan(item.startMin);
				endMin = item.endMin;
			}
			expect(endMin).toBeCloseTo(input.horizonMin, 6);
		}
	});

	it("close every alarm and pause, the latest at the horizon", () => {
		for (const { name, input, result } of results)
			for (const item of [...result.alarms, ...result.pauses]) {
				expect(item.endMin, name).toBeGreaterThanOrEqual(item.startMin);
				expect(item.endMin, name).toBeLessThanOrEqual(input.horizonMin + 1e-6);
			}
	});

	it("start no fill while an alarm stands, but for absent suction", () => {
		for (const { name, result } of results)
			for (const fillMin of starts(result, "fill"))
				for (const alarm of result.alarms)
					if (alarm.condition !== "suction absent")
						expect(
							alarm.startMin < fillMin - 1e-6 && alarm.endMin > fillMin + 1e-6,
							`${name}: ${alarm.condition} at the fill of ${fillMin}`,
						).toBe(false);
	});

	it("hold wet, suction and off minutes within the horizon", () => {
		for (const { name, input, result } of results) {
			const t = result.totals;
			const wet = result.phases
				.filter((item) => item.phase === "fill" || item.phase === "dwell")
				.reduce((sum, item) => sum + item.endMin - item.startMin, 0);
			expect(t.wetMin, name).toBeCloseTo(wet, 5);
			expect(t.underSuctionMin + t.wetMin).toBeLessThanOrEqual(input.horizonMin + 1e-6);
			expect(t.meanExudateShare).toBeGreaterThan(0);
			expect(t.meanExudateShare).toBeLessThanOrEqual(1);
			expect(t.woundOutputMl).toBeLessThanOrEqual(t.exudateMl + 1e-6);
			expect(t.washes).toBeLessThanOrEqual(t.fills);
		}
	});

	it("between them bring on everything that the balance has to survive", () => {
		const all = results.map(({ result }) => result);
		const conditions = new Set(all.flatMap((result) => result.alarms.map((item) => item.condition)));
		expect([...conditions].sort()).toEqual([
			"canister at capacity",
			"depth not held",
			"fill path obstructed",
			"large output",
			"seal leak",
			"source empty",
			"suction absent",
			"suction path obstructed",
		]);
		const reasons = new Set(all.flatMap((result) => result.pauses.map((item) => item.reason)));
		expect([...reasons].sort()).toEqual(["canister", "off", "port", "round"]);
		const phases = new Set(all.flatMap((result) => result.phases.map((item) => item.phase)));
		expect(phases.size).toBe(5);
		expect(all.some((result) => result.totals.weptMl > 1)).toBe(true);
		expect(all.some((result) => result.totals.discardedMl > 1)).toBe(true);
	});

	it("come out the same from the same generator and not from another", () => {
		const input = { ...day({ care: busyCare }), chance: true };
		expect(run(input, 0.1, 5)).toEqual(run(input, 0.1, 5));
		expect(run(input, 0.1, 6)).not.toEqual(run(input, 0.1, 5));
	});
});

describe("figures worked out by hand from the text", () => {
	it("a port of which a twentieth is open drains too slowly: alarm after 2·(1 + 50.1/125) or 6 min above 100 mmHg", () => {
		const result = only(day({ happenings: [at(50, "clog", { share: 0.95 })] }));
		// p∞ = 240 mmHg by then, so 100 mmHg is passed τ·ln(240/140) after the pump start
		const airL = 0.15 + (0.34 * 240 + 1000 - 0.1125 * 125.8333 + 6.528) / 1000;
		const slope = (0.15 * 8) / 250 + 0.0002;
		const lowMin = (airL / (760 * slope)) * Math.log(240 / 140);
		const startMin = 125 + 50 / 60 + lowMin + 6;
		expectTimes(spans(result, "suction path obstructed"), [startMin, startMin + 4 + 15], 3);
		expectTimes(
			result.pauses.flatMap((item) => [item.startMin, item.endMin]),
			[startMin + 14, startMin + 19],
			3,
		);
	});

	it("a closed port is an obstruction after 3 min, and 20 min of low suction are suction absent", () => {
		const result = only(day({ happenings: [at(50, "clog", { share: 1 })] }));
		expectTimes(spans(result, "suction path obstructed"), [53, 72], 6);
		const decayMin = (0.0816 / (760 * 0.0002)) * Math.log(1 / 0.8);
		expectTimes(spans(result, "suction absent"), [50 + decayMin + 20, 72], 4);
		expect(starts(result, "fill")[0]).toBeCloseTo(125, 6); // 5 min of the port count for no period
	});

	it("an off of 20 min is no suction absent and one of 21 min is", () => {
		const off = (forMin: number) => only(day({ happenings: [at(50, "off", { forMin })] }));
		expect(off(20).alarms).toEqual([]);
		expectTimes(spans(off(21), "suction absent"), [70, 71], 6);
		expect(off(21).totals.offSuctionMin).toBeCloseTo(21, 6);
		expect(starts(off(21), "fill")[0]).toBeCloseTo(141, 6);
	});

	it("one nurse frees the line only after she has patched the seal", () => {
		const happenings = [at(50, "breach", { size: 0.025 }), at(52, "kink-suction")];
		const care = { ...day().care, nurses: 1 };
		const result = only(day({ care, happenings }));
		expectTimes(spans(result, "seal leak"), [51, 65], 6);
		expectTimes(spans(result, "suction path obstructed"), [55, 66], 6);
		expect(result.totals.nurseMin).toBe(11);
	});

	it("a bleed of 10 mL/min is large output when the hour holds 200 mL, and withholds the fill", () => {
		const happenings = [at(50, "bleed", { volumeMl: 300, forMin: 30 })];
		const result = only(day({ happenings }), 0.01);
		const e = 162 / 1440;
		const startMin = 50 + (200 - 60 * e) / 10;
		const endMin = 50 + 60 + 30 - (200 - 60 * e) / 10;
		expectTimes(spans(result, "large output").slice(0, 2), [startMin, endMin], 1);
		expect(starts(result, "fill")[0]).toBeCloseTo(endMin, 1);
	});

	it("a dressing change in a fill discards it and begins again in suction", () => {
		const result = only(day({ happenings: [at(120.5, "dressing-change")] }));
		expect(result.totals.discardedMl).toBeCloseTo(6.528 + 30 + (0.5 + 30) * (162 / 1440), 6);
		expect(starts(result, "fill")[1]).toBeCloseTo(150.5 + 120, 6);
		expect(result.totals.nurseMin).toBe(30);
	});

	it("a step-down takes over at the next start of suction, and one from it at its own time", () => {
		const regimens = [
			regimen(),
			regimen({ fromMin: 300, fillMl: 0, depthMmHg: 75 }),
			regimen({ fromMin: 600, suctionMin: 60 }),
		];
		const result = only(day({ dressings: [dressing({ regimens })] }));
		// the fill at 371.67 is still the old one's; from 600 on a period of 60 min
		const fills = starts(result, "fill").slice(0, 5);
		const cycleMin = 120 + 5 + 50 / 60;
		expectTimes(fills, [120, 120 + cycleMin, 120 + 2 * cycleMin, 660, 660 + 65 + 50 / 60], 6);
	});

	it("a source that has hung 24 h is renewed, and what it held is waste", () => {
		const result = only(day({ horizonMin: 2000 }));
		expect(result.sourceChanges).toHaveLength(1);
		expect(result.sourceChanges[0]?.atMin).toBeCloseTo(1440, 6);
		expect(result.totals.solutionWastedMl).toBeCloseTo(1000 - 11 * 50, 6);
	});
});

describe("the laws of chance", () => {
	/** Nothing fails but what a test lets fail. */
	const quiet = {
		...constantsWith(),
		"breach.dry": 0,
		"breach.wetScale": 1e9,
		"breach.age": 0,
		"breach.sizeMedian": 0,
		"kink.rate": 1e-12,
		"debris.perDrain": 0,
		"debris.perDay": 0,
		"clump.chance": 0,
	};
	const daysOf = (constants: Record<string, number>) => {
		const input = {
			...day({ dressings: [dressing({ regimens: [regimen({ suctionMin: 20 })] })] }),
			chance: true,
			constants,
		};
		return Array.from({ length: 150 }, (_, i) => run(input, 0.5, 1000 + i)).flat();
	};
	const sum = (values: number[]) => values.reduce((a, b) => a + b, 0);

	it("wet breaches come as often as the square of the wet time over 57.7 min says", () => {
		const results = daysOf({ ...quiet, "breach.wetScale": 5.77 });
		let expected = 0;
		for (const { phases } of results) {
			let startMin = 0;
			phases.forEach((item, i) => {
				if (item.phase === "fill") startMin = item.startMin;
				const next = phases[i + 1]?.phase ?? "suction";
				if (item.phase !== "suction" && next === "suction") expected += ((item.endMin - startMin) / 5.77) ** 2;
			});
		}
		const seen = sum(results.map((result) => result.totals.breaches));
		expect(expected).toBeGreaterThan(5000);
		expect(Math.abs(seen - expected)).toBeLessThan(4 * Math.sqrt(expected));
	});

	it("dry breaches come at their rate and exudate has its mean", () => {
		const results = daysOf({ ...quiet, "breach.dry": 0.5 });
		const suctionMin = sum(
			results.flatMap((result) =>
				result.phases.filter((item) => item.phase === "suction").map((item) => item.endMin - item.startMin),
			),
		);
		const expected = (0.5 * suctionMin) / 60;
		const seen = sum(results.map((result) => result.totals.breaches));
		expect(Math.abs(seen - expected)).toBeLessThan(4 * Math.sqrt(expected));
		// the sd of a day is about 0.4 of its mean
		const exudateMl = sum(results.map((result) => result.totals.exudateMl));
		const error = exudateMl / (150 * 162) - 1;
		expect(Math.abs(error)).toBeLessThan((4 * 0.4) / Math.sqrt(150));
	});
});

describe("convergence", () => {
	const rough = day({
		dressings: [dressing({ outflow: fistula, regimens: [regimen({ suctionMin: 47, drawdown: 0.5 })] })],
		happenings: [
			at(30, "clog", { share: 0.6 }),
			at(90, "bleed", { volumeMl: 120, forMin: 50 }),
			at(200, "breach", { size: 0.06 }),
			at(400, "kink-suction"),
			at(500, "off", { forMin: 35 }),
			at(800, "breach", { size: 0.004 }),
			at(803, "clog", { share: 0.95 }),
		],
	});
	const finest = only(rough, 0.005);
	const numbers = (result: SecondDay) => Object.entries(result.totals);

	it("the totals of half the step are nearer to those of a tiny one", () => {
		const errors = [0.4, 0.2, 0.1, 0.05].map((dtMin) => {
			const coarse = only(rough, dtMin).totals;
			return numbers(finest).reduce(
				(sum, [name, fine]) => sum + Math.abs(coarse[name as keyof typeof coarse] - fine) / Math.max(1, Math.abs(fine)), // entries forget their keys
				0,
			);
		});
		for (let i = 1; i < errors.length; i++) expect(errors[i]).toBeLessThan(0.6 * errors[i - 1]);
	});

	it("at 0.01 min every boundary is within 0.1 min and every total within 0.1 %", () => {
		const result = only(rough, 0.01);
		expect(result.phases.map((item) => item.phase)).toEqual(finest.phases.map((item) => item.phase));
		result.phases.forEach((item, i) => {
			expect(Math.abs(item.endMin - (finest.phases[i]?.endMin ?? 0))).toBeLessThan(0.1);
		});
		expect(result.alarms.map((item) => item.condition)).toEqual(finest.alarms.map((item) => item.condition));
		expect(result.alarms.length).toBeGreaterThan(4);
		for (const [name, fine] of numbers(finest))
			expect(
				Math.abs(result.totals[name as keyof typeof result.totals] - fine), // as above
				name,
			).toBeLessThanOrEqual(0.001 * Math.abs(fine) + 1e-9);
	});
});
