// What a day's papers are made from, each worked out again from days traced one by one.
import { describe, expect, test } from "vitest";
import type { DressingDay } from "../../../src/results/index.ts";
import type { Scenario } from "../../../src/scenario/index.ts";
import { drawnOf } from "../../../src/studies/day/drawn.ts";
import { blockCount, dayResult, ProjectionGathering, runBlocks, traceDay } from "../../../src/studies/index.ts";
import { continuousSuction, reference, shortDwell, thigh } from "../../therapy/example.ts";

const horizonMin = 2880;
/** Two days from 13:30, two unlike dressings, a small canister, a planned stretch without therapy, a step-down. */
const odd: Scenario = {
	...reference,
	title: "odd",
	seed: "odd",
	start: "2026-03-10T13:30",
	startClockMin: 810,
	horizonMin,
	replications: 120,
	chance: true,
	dressings: [
		{ ...thigh, canisterMl: 500, regimens: [shortDwell, { ...continuousSuction, fromMin: 1800, depthMmHg: 100 }] },
		{
			...thigh,
			id: "flank",
			exudateMlPerDay: 480,
			slough: "heavy",
			foamVolumeMl: 800,
			regimens: [{ ...shortDwell, begin: "fill", depthMmHg: 150, fillMl: 190, dwellMin: 10, suctionMin: 210 }],
		},
	],
	care: {
		...reference.care,
		roundsClockMin: [180, 420, 660, 900, 1140, 1380],
		turningMin: 240,
		dressingChange: { everyMin: 2880 },
	},
	happenings: [
		{ atMin: 70, dressing: "thigh", what: "transfer" },
		{ atMin: 720, dressing: "flank", what: "off", forMin: 45 },
		{ atMin: 1000, dressing: "thigh", what: "breach", size: 0.03 },
	],
};

const gathered = (scenario: Scenario): ProjectionGathering => {
	const gathering = new ProjectionGathering(scenario);
	for (let block = 0; block < blockCount(scenario); block++) gathering.add(runBlocks(scenario, block, block + 1));
	return gathering;
};
const gathering = gathered(odd);
const result = dayResult(odd, gathering, "test");
const days = Array.from({ length: odd.replications }, (_, replication) => traceDay(odd, undefined, replication));
const of = (dressing: number): DressingDay[] => days.map((day) => day.dressings[dressing]);

/** Type 7 of Hyndman and Fan, from the sorted values themselves. */
function quantile(values: readonly number[], p: number): number {
	const sorted = values.toSorted((a, b) => a - b);
	const place = (sorted.length - 1) * p;
	const low = Math.floor(place);
	const high = Math.min(low + 1, sorted.length - 1);
	return sorted[low] + (sorted[high] - sorted[low]) * (place - low);
}

/** Content on the way to a time, before whatever happens at it. */
function canisterBefore(day: DressingDay, atMin: number): number {
	const { atMin: times, canisterMl } = day.curve;
	const after = times.findIndex((time) => time >= atMin);
	const [from, to] = [times[after - 1], times[after]];
	const share = to > from ? (atMin - from) / (to - from) : 1;
	return canisterMl[after - 1] + share * (canisterMl[after] - canisterMl[after - 1]);
}

describe("the content of a canister at a round", () => {
	test("is that just before the round, the last drain and all, and not that of half an hour ago", () => {
		const rounds = result.projection.dressings[0].rounds;
		expect(rounds.map(({ atMin }) => (atMin + 810) % 1440)).toEqual([
			900, 1140, 1380, 180, 420, 660, 900, 1140, 1380, 180, 420, 660,
		]);
		for (const dressing of [0, 1])
			for (const round of result.projection.dressings[dressing].rounds) {
				const contents = of(dressing).map((day) => canisterBefore(day, round.atMin));
				// Quantiles are known to a bin of 1 mL, a drain between two rows of the curve to less.
				expect(round.p10Ml).toBeLessThan(quantile(contents, 0.1) + 1.5);
				expect(round.p10Ml).toBeGreaterThan(quantile(contents, 0.1) - 1.5);
				expect(Math.abs(round.p90Ml - quantile(contents, 0.9))).toBeLessThan(1.5);
			}
	});
});

describe("the content of a canister at the end", () => {
	test("is what is in it then, not what was drained: what it held at the start counts, what a listed change took away does not", () => {
		const scenario: Scenario = {
			...odd,
			horizonMin: 1000,
			replications: 60,
			dressings: [{ ...thigh, canisterHoldsMl: 120 }],
			happenings: [{ atMin: 400, dressing: "thigh", what: "canister-change" }],
		};
		const { canisterAtEnd, totals } = gathered(scenario).projection().dressings[0];
		const contents = Array.from(
			{ length: 60 },
			(_, replication) => traceDay(scenario, undefined, replication).dressings[0].curve.canisterMl.at(-1) ?? 0,
		);
		expect(Math.abs(canisterAtEnd.p10Ml - quantile(contents, 0.1))).toBeLessThan(1);
		expect(Math.abs(canisterAtEnd.p90Ml - quantile(contents, 0.9))).toBeLessThan(1);
		expect(canisterAtEnd.p90Ml).toBeLessThan(totals.toCanisterMl.p10);
	});
});

describe("the undisturbed schedule", () => {
	const [first, second] = result.dressings.map(({ schedule }) => schedule);

	test("has every fill at its time by the clock, whatever canister and bag ask for", () => {
		const fills = first.phases.filter(({ phase }) => phase === "fill").map(({ startMin }) => startMin);
		const cycle = 120 + 50 / 60 + 5;
		expect(fills.length).toBe(15);
		fills.forEach((startMin, i) => {
			expect(startMin).toBeCloseTo(120 + i * cycle, 6);
		});
		expect(first.alarms).toEqual([]);
	});

	test("lets a planned stretch without therapy move what comes after it, and tells its alarm", () => {
		const fills = second.phases.filter(({ phase }) => phase === "fill").map(({ startMin }) => startMin);
		const cycle = 190 / 60 + 10 + 210;
		fills.forEach((startMin, i) => {
			expect(startMin).toBeCloseTo(i * cycle + (i >= 4 ? 45 : 0), 6);
		});
		expect(second.pauses).toEqual([{ reason: "off", startMin: 720, endMin: 765 }]);
		expect(second.alarms).toMatchObject([{ condition: "suction-absent", startMin: 740, endMin: 765 }]);
	});

	test("says when a step-down takes over: at the end of the dwell that runs at its time", () => {
		const cycle = 120 + 50 / 60 + 5;
		expect(first.takeovers).toEqual([{ regimen: 1, fromMin: 1800, atMin: expect.closeTo(15 * cycle, 6) }]);
	});

	test("depends on no seed, on no failure and not on how many days are drawn", () => {
		const other = dayResult(
			{ ...odd, seed: "another", replications: 3, happenings: odd.happenings.slice(0, 2) },
			gathered({ ...odd, seed: "another", replications: 3, happenings: odd.happenings.slice(0, 2) }),
			"test",
		);
		expect(other.dressings.map(({ schedule }) => schedule)).toEqual(result.dressings.map(({ schedule }) => schedule));
	});
});

describe("when fills begin", () => {
	test("is counted over the days, fill by fill", () => {
		for (const dressing of [0, 1])
			for (const fill of result.projection.dressings[dressing].fills) {
				const starts = of(dressing).flatMap(
					({ phases }) => phases.filter(({ phase }) => phase === "fill")[fill.ordinal - 1]?.startMin ?? [],
				);
				expect(fill.probabilityWithinHorizon).toBe(starts.length / odd.replications);
				expect(Math.abs(fill.p10Min - quantile(starts, 0.1))).toBeLessThan(0.2);
				expect(Math.abs(fill.p90Min - quantile(starts, 0.9))).toBeLessThan(0.2);
			}
	});
});

/** When a canister of a day was due: at capacity, or changed at a round without having been. */
function needsOf(day: DressingDay): number[] {
	const full = day.alarms
		.filter(({ condition }) => condition === "canister-at-capacity")
		.map(({ startMin, endMin }) => ({ startMin, endMin }));
	const atRounds = day.canisterChanges
		.filter(({ reason }) => reason === "round")
		.filter(({ atMin }) => !full.some((alarm) => alarm.startMin <= atMin && atMin <= alarm.endMin))
		// A round that finds the pump running takes a minute.
		.map(({ atMin }) => Math.floor(atMin / 30) * 30);
	return [...full.map(({ startMin }) => startMin), ...atRounds].sort((a, b) => a - b);
}

describe("when a canister is due", () => {
	test("is when it is at capacity or a round would change it, not when the change is finished", () => {
		for (const dressing of [0, 1]) {
			const all = of(dressing).map(needsOf);
			for (const need of result.projection.dressings[dressing].canisterNeeds) {
				const times = all.flatMap((needs) => needs[need.ordinal - 1] ?? []);
				expect(need.probabilityWithinHorizon).toBeCloseTo(times.length / odd.replications, 10);
				expect(Math.abs(need.p50Min - quantile(times, 0.5))).toBeLessThan(0.2);
			}
		}
	});

	test("has its likeliest windows, each with its share of all days", () => {
		let windows = 0;
		for (const dressing of [0, 1]) {
			const all = of(dressing).map(needsOf);
			for (const need of result.projection.dressings[dressing].canisterNeeds)
				for (const window of need.windows) {
					windows++;
					const inside = all.filter((needs) => {
						const at = needs[need.ordinal - 1];
						return at >= window.startMin - 1e-9 && at <= window.endMin + 1e-9;
					});
					expect(inside.length / odd.replications).toBeCloseTo(window.probability, 10);
					expect(window.probability).toBeGreaterThanOrEqual(0.1);
				}
		}
		expect(windows).toBeGreaterThan(3);
	});
});

describe("alarms by chance", () => {
	const chances = (dressing: number, condition: string) =>
		result.projection.dressings[dressing].alarms.find((alarm) => alarm.condition === condition);

	test("leave out what a planned stretch without therapy brings", () => {
		const absent = chances(1, "suction-absent");
		const bin = absent?.bins.find(({ startMin }) => startMin === 720);
		// It may be off already, or in a fill, when the stretch begins; nearly always the alarm comes.
		expect(bin?.probability).toBeGreaterThan(0.9);
		expect(bin?.chance).toBe(0);
		expect(absent?.windows).toEqual([]);
		expect(absent?.byChance.meanPerDay).toBeLessThan((absent?.meanPerDay ?? 0) - 0.45);
	});

	test("leave out what a listed break of the seal brings, until it is mended", () => {
		const leak = chances(0, "seal-leak");
		const bin = leak?.bins.find(({ startMin }) => startMin === 990);
		expect(bin?.probability).toBeGreaterThan(0.8);
		expect(bin?.chance).toBeLessThan(0.05);
		const later = leak?.bins.filter(({ startMin }) => startMin > 1100) ?? [];
		expect(later.every((one) => one.chance === one.probability)).toBe(true);
		expect(later.some(({ chance }) => chance > 0)).toBe(true);
	});

	test("are all alarms where nothing is listed", () => {
		const scenario = { ...odd, happenings: [] };
		const { alarms } = gathered(scenario).projection().dressings[0];
		for (const alarm of alarms) {
			expect(alarm.byChance.meanPerDay).toBe(alarm.meanPerDay);
			for (const bin of alarm.bins) expect(bin.chance).toBe(bin.probability);
		}
	});
});

describe("the day that is drawn", () => {
	/** Canister content, exudate and alarms so far of every traced day at every half-hour, from the lists of the day. */
	const courses = (day: DressingDay, stepMin: number): number[][] => {
		const steps = Array.from({ length: horizonMin / stepMin + 1 }, (_, i) => i * stepMin);
		return [
			steps.map((at) => (at === 0 ? 0 : canisterBefore(day, at))),
			steps.map((at) => day.alarms.filter(({ startMin }) => startMin <= at).length),
		];
	};

	test("is a common one: its canister keeps within the courses of the middle half for most of the day", () => {
		const { replication, typicalOf } = result.trace;
		expect(typicalOf).toBe(odd.replications);
		const stepMin = 30;
		for (const dressing of [0, 1]) {
			const all = of(dressing).map((day) => courses(day, stepMin));
			for (const course of [0, 1]) {
				const length = all[0][course].length;
				const area = (day: number): number =>
					Array.from({ length }, (_, i) =>
						Math.abs(
							all[day][course][i] -
								quantile(
									all.map((one) => one[course][i]),
									0.5,
								),
						),
					).reduce((sum, value) => sum + value, 0);
				const areas = all.map((_, day) => area(day));
				// Nearest jointly: nearer than half of the days in each course of each dressing.
				expect(areas[replication]).toBeLessThanOrEqual(quantile(areas, 0.5));
			}
		}
	});

	test("is what a trace of its number is, or another one by its number", () => {
		const traced = traceDay(odd, undefined, result.trace.replication);
		expect(result.trace.hash).toBe(traced.trace.hash);
		const asked = dayResult(odd, gathering, "test", [], 7);
		expect(asked.trace).toMatchObject({ replication: 7, typicalOf: null });
		expect(asked.trace.hash).toBe(traceDay(odd, undefined, 7).trace.hash);
	});

	test("is the same however the days were dealt out, and looked for among the first 400 alone", () => {
		const more = { ...odd, horizonMin: 300, replications: 500 };
		const whole = new ProjectionGathering(more);
		whole.add(runBlocks(more, 6, 10));
		whole.add(runBlocks(more, 0, 6));
		expect(whole.lookedAt).toBe(400);
		const few = { ...more, replications: 400 };
		expect(whole.typical()).toBe(gathered(few).typical());
		expect(drawnOf([more], 500)).toEqual({ replication: whole.typical(), typicalOf: 400 });
	});

	test("is one for all regimens of a comparison, and replication 0 where nothing varies", () => {
		const short = { ...odd, horizonMin: 300, replications: 60 };
		const long = {
			...short,
			dressings: short.dressings.map((dressing) => ({ ...dressing, regimens: [{ ...shortDwell, dwellMin: 20 }] })),
		};
		const { replication } = drawnOf([short, long], 60);
		expect(replication).toBeGreaterThanOrEqual(0);
		expect(replication).toBeLessThan(60);
		expect(drawnOf([long, short], 60).replication).toBe(replication);
		expect(drawnOf([{ ...short, chance: false }], 60).replication).toBe(0);
		expect(drawnOf([short], 60, 12)).toEqual({ replication: 12, typicalOf: null });
	});
});
