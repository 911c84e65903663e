import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Happening, readScenario } from "../../src/scenario/index.ts";
import {
	coinciding,
	dayInOrder,
	dayOnGrid,
	exchangeable,
	exchanged,
	type GridDay,
	gridDay,
	type Kind,
	pairOf,
	usual,
} from "./coincidence.ts";
import days from "./days.json" with { type: "json" };
import { deciding } from "./pairs.ts";

/** A day of one dressing, six hours, chance off, to which something happens. */
function dayOf(happenings: readonly Happening[], rounds: readonly string[] = []) {
	const scenario = readScenario(
		JSON.stringify({
			slackwater: 1,
			title: "order",
			horizon: "6 h",
			start: "2026-03-02T07:00",
			chance: "off",
			replications: 1,
			dressings: [
				{
					id: "thigh",
					wound: { tissue: "soft-tissue", exudate: "160 mL/d" },
					foam: [{ area: "240 cm2", thickness: "1 cm" }],
					regimen: { depth: "-125 mmHg", fill: "60 mL", dwell: "5 min", suction: "1 h" },
				},
			],
			care: { rounds, turning: "none" },
		}),
	);
	return { ...scenario, happenings };
}
const on = { dressing: "thigh" } as const;

describe("at one instant", () => {
	test("a round comes before a script: a leak that comes with the round waits for the next", () => {
		const day = dayOf([{ ...on, atMin: 30, what: "breach", size: 0.01 }], ["07:30"]);
		const leaks = (told: string) => JSON.parse(told).totals.offSuctionMin;
		const [first, second] = [dayInOrder(day, usual), dayInOrder(day, exchanged("round", "scripted"))];
		expect(first.told).not.toBe(second.told);
		expect(leaks(first.told)).toBeGreaterThanOrEqual(leaks(second.told));
	});

	test("a timer that runs out comes before the start of a fill: the alarm withholds it", () => {
		// The suction line is kinked three minutes before the first fill is due: the path has been closed for 3 min then.
		const day = dayOf([{ ...on, atMin: 57, what: "kink-suction" }]);
		const fillsAt = (told: string) =>
			JSON.parse(told).phases.find(({ phase }: { phase: string }) => phase === "fill").startMin;
		expect(fillsAt(dayInOrder(day, usual).told)).toBeGreaterThan(60);
		expect(fillsAt(dayInOrder(day, exchanged("alarmTimer", "fillStart")).told)).toBe(60);
	});

	test("a script comes before the start of a fill: a pump that is switched off then starts none", () => {
		const day = dayOf([{ ...on, atMin: 60, what: "off", forMin: 20 }]);
		const told = (ranks: readonly Kind[]) => JSON.parse(dayInOrder(day, ranks).told).phases[1].startMin;
		expect(told(usual)).toBe(80);
		expect(told(exchanged("scripted", "fillStart"))).toBe(60);
	});

	test("a boundary comes before a script: a dressing change at the end of a fill finds the set volume in", () => {
		const day = dayOf([{ ...on, atMin: 61, what: "dressing-change" }]);
		const { totals, phases } = JSON.parse(dayInOrder(day, usual).told);
		expect(totals.instilledMl).toBeGreaterThanOrEqual(60);
		expect(phases[1]).toMatchObject({ phase: "fill", startMin: 60, endMin: 61 });
	});
});

describe("every pair that is listed decides: on a day of its own, to exchange it changes what is told", () => {
	test.each(Object.keys(deciding))("%s", (pair) => {
		const day = dayOnGrid(days[pair as keyof typeof days] as GridDay); // a key of one is held to be one of the other below
		const [early, late] = pair.split(" < ") as [Kind, Kind]; // so they are written
		const base = dayInOrder(day, usual);
		expect(exchangeable(coinciding(base))).toContainEqual([early, late]);
		expect(dayInOrder(day, exchanged(early, late)).told).not.toBe(base.told);
	});

	test("and each day belongs to a pair", () => {
		expect(Object.keys(days).toSorted()).toEqual(Object.keys(deciding).toSorted());
	});
});

test("only pairs that are documented change a day when they change places", () => {
	const undocumented = new Set<string>();
	let changed = 0;
	fc.assert(
		fc.property(gridDay, fc.nat(), (of, pick) => {
			const day = dayOnGrid(of);
			const base = dayInOrder(day, usual);
			const pure = exchangeable(coinciding(base));
			if (pure.length === 0) return;
			const [early, late] = pure[pick % pure.length];
			if (dayInOrder(day, exchanged(early, late)).told === base.told) return;
			changed++;
			const pair = pairOf(early, late);
			if (deciding[pair] === undefined) undocumented.add(pair);
		}),
		{ numRuns: process.env.LONG === undefined ? 150 : 5000, seed: 91 },
	);
	expect([...undocumented]).toEqual([]);
	expect(changed).toBeGreaterThan(10);
});
