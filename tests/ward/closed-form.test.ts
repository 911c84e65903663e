import { describe, expect, test } from "vitest";
import type { WardScenario } from "../../src/scenario/index.ts";
import { runWardBlocks, SupplyGathering, wardBlocks } from "../../src/studies/index.ts";
import type { OrderRule } from "../../src/ward/index.ts";
import { type Raw, wardWith } from "./sample.ts";

/** Chance off, nobody makes rounds, nothing is turned: only what the model's equations say. */
const calm = (raw: Raw) => {
	raw.chance = "off";
	raw.replications = 1;
	raw.care = { rounds: [], turning: "none", dressingChange: "none" };
};

/** Demand of every day for one item, all causes or one. */
function dailyDemand(
	ward: WardScenario,
	name: string,
	rules: readonly OrderRule[] = ward.stores.map(() => ({ reorder: 0, upTo: 1 })),
): { readonly demand: readonly number[]; readonly onHand: readonly number[] } {
	const gathered = new SupplyGathering(ward);
	gathered.add(runWardBlocks(ward, rules, 0, wardBlocks(ward)));
	const at = ward.stores.findIndex((item) => item.name === name);
	const places = gathered.layout.items[at];
	const { days } = gathered.layout;
	return { demand: gathered.series(places.demand.days, days).p50, onHand: gathered.series(places.onHand, days).p50 };
}

const counted = (days: number, timesMin: readonly number[]): number[] => {
	const counts = Array.from({ length: days }, () => 0);
	for (const at of timesMin) counts[Math.floor(at / 1440)]++;
	return counts;
};

describe("with chance off and a constant census", () => {
	test("canisters are those of the closed form, day by day: the k-th is full when exudate has wetted the foam and filled k of them", () => {
		const starts = [0, 1, 2, 3];
		const ward = wardWith((raw) => {
			calm(raw);
			const [kind] = raw.ward.kinds;
			kind.wound.exudate = "600 mL/d";
			kind.regimen = { depth: "-125 mmHg", fill: "none" };
			kind.unit = { canister: "500 mL" };
			raw.stores = [
				{ item: "canister", size: "500 mL", stock: "unlimited" },
				{ item: "kit", stock: "unlimited" },
				{ item: "port", stock: "unlimited" },
			];
			raw.ward.beds = starts.map((start) => ({ id: `bed ${start}`, kind: "thigh", start: `${start} d`, end: "28 d" }));
		});
		const perMin = 600 / 1440;
		// What suction leaves in 240 mL of foam: 0.08 of 0.34 of it.
		const retainedMl = 0.08 * 0.34 * 240;
		const times = starts.flatMap((start) => {
			const list = [start * 1440];
			for (let k = 1; ; k++) {
				const full = start * 1440 + (retainedMl + 500 * k) / perMin;
				const clock = (420 + full) % 1440;
				const night = clock < 420 || clock >= 1140;
				// The nurse comes after 4 min by day, 7 by night, and takes 3.
				const changed = full + (night ? 7 : 4) + 3;
				if (changed >= 28 * 1440) return list;
				list.push(changed);
			}
		});
		expect(times.length).toBeGreaterThan(100);
		expect(dailyDemand(ward, "canister 500 mL").demand).toEqual(counted(28, times));
	});

	test("sources are one at the start and one every 24 h, lines one a patient", () => {
		const ward = wardWith((raw) => {
			calm(raw);
			raw.ward.beds[1].end = "10 d";
			raw.ward.beds[2].start = "5 d";
		});
		const spans = [
			[0, 28],
			[0, 10],
			[5, 28],
			[0, 28],
		] as const;
		const wanted = counted(
			28,
			spans.flatMap(([from, to]) => Array.from({ length: to - from }, (_, i) => (from + i) * 1440)),
		);
		expect(dailyDemand(ward, "the prescribed solution 1000 mL").demand).toEqual(wanted);
		expect(dailyDemand(ward, "fill line").demand).toEqual(
			counted(
				28,
				spans.map(([from]) => from * 1440),
			),
		);
	});

	test("kits are one at the start and one every 48 h of age, which begins anew 30 min after each change", () => {
		const ward = wardWith((raw) => {
			calm(raw);
			raw.care.dressingChange = "48 h";
		});
		const one = [0];
		for (let n = 1; n * 2880 + (n - 1) * 30 < 28 * 1440; n++) one.push(n * 2880 + (n - 1) * 30);
		expect(dailyDemand(ward, "dressing kit").demand).toEqual(counted(28, [...one, ...one, ...one, ...one]));
	});

	test("the stock at the end of each day is that of a table worked out by hand", () => {
		const ward = wardWith((raw) => {
			calm(raw);
			raw.horizon = "14 d";
			raw.ward.beds = raw.ward.beds.slice(0, 2);
			Object.assign(raw.stores[1], { stock: 8, pack: 5, lead: "2 d", reorder: 4, upTo: 10 });
		});
		// Two sources at 07:00 of every day. At 4 (day 1, day 6, day 11) two packs of 5 are ordered, since 10 − 4 = 6 takes
		// two; they come 48 h later, just after that morning's two were taken.
		//            day: 0  1  2  3   4  5  6  7  8   9  10 11 12 13
		const byHand = [6, 4, 2, 10, 8, 6, 4, 2, 10, 8, 6, 4, 2, 10];
		const { demand, onHand } = dailyDemand(
			ward,
			"the prescribed solution 1000 mL",
			ward.stores.map(() => ({ reorder: 4, upTo: 10 })),
		);
		expect(demand).toEqual(Array.from({ length: 14 }, () => 2));
		expect(onHand).toEqual(byHand);
	});
});
