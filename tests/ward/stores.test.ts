import { describe, expect, test } from "vitest";
import type { StoreItem } from "../../src/scenario/index.ts";
import { protectionDays, tryShelf } from "../../src/studies/index.ts";
import { supplyLayout } from "../../src/studies/supply/run/layout.ts";
import { playable } from "../../src/studies/supply/run/ward-counts.ts";
import { type ShelfTold, WardRun } from "../../src/ward/index.ts";
import { dressingsOf, type Raw, wardWith } from "./sample.ts";

const item: StoreItem = {
	name: "piece",
	kind: "kit",
	sizeMl: null,
	solution: null,
	stock: 10,
	pack: 1,
	price: null,
	weightG: null,
	shelfMin: null,
	lead: { medianMin: 2880, spread: 0 },
	orderDays: null,
	cutOffClockMin: 14 * 60,
	reviewMin: null,
	reorder: null,
	upTo: null,
	service: 0.99,
	substitute: null,
};
/** Monday, 07:00. */
const monday = { startClockMin: 420, startWeekday: 0 };

/** Everything that a shelf tells, in words. */
function story(
	change: Partial<StoreItem>,
	rule: { reorder: number; upTo: number },
	timesMin: readonly number[],
	endMin: number,
) {
	const told: string[] = [];
	const hour = (at: number) => Math.round(at / 6) / 10;
	const listen: ShelfTold = {
		ordered: (pieces, at, arrives) => told.push(`${hour(at)} h: ${pieces} ordered for ${hour(arrives)} h`),
		received: (pieces, at) => told.push(`${hour(at)} h: ${pieces} received`),
		expired: (pieces, at) => told.push(`${hour(at)} h: ${pieces} expired`),
		waited: (minutes) => told.push(`waited ${hour(minutes)} h`),
	};
	const trial = tryShelf({ ...item, ...change }, rule, monday, { timesMin, endMin }, null, { told: listen });
	return { told, ...trial };
}

describe("a shelf", () => {
	test("orders in whole packs as soon as the position is at the reorder point, and counts what is on its way", () => {
		const { told } = story({ stock: 5, pack: 4 }, { reorder: 3, upTo: 6 }, [60, 120, 180, 240], 6000);
		// 5, 4, 3: an order of 3 is a pack of 4; then 2 + 4 and 1 + 4 stay above 3.
		expect(told).toEqual(["2 h: 4 ordered for 50 h", "50 h: 4 received"]);
	});

	test("sends its orders at the cut-off of an order day", () => {
		// Monday 08:00 to 09:00 brings it to the reorder point; orders go out on Thursdays at 14:00.
		const { told } = story({ stock: 5, orderDays: [3] }, { reorder: 4, upTo: 8 }, [60, 120], 10_000);
		expect(told[0]).toBe("79 h: 5 ordered for 127 h");
	});

	test("looks only at its reviews where it is reviewed now and then", () => {
		const { told } = story({ stock: 5, reviewMin: 1440 }, { reorder: 4, upTo: 8 }, [60, 120], 4000);
		expect(told[0]).toBe("24 h: 5 ordered for 72 h");
	});

	test("gives its oldest pieces first and throws away what has kept too long", () => {
		const { told, shelf } = story({ stock: 4, shelfMin: 4000 }, { reorder: 3, upTo: 6 }, [60], 7500);
		// 3 left of the first lot expire at 66.7 h; the order of 1 h brought 3, which keep until 115.7 h; the expiry orders again.
		expect(told).toEqual([
			"1 h: 3 ordered for 49 h",
			"49 h: 3 received",
			"66.7 h: 3 expired",
			"66.7 h: 3 ordered for 114.7 h",
			"114.7 h: 3 received",
			"115.7 h: 3 expired",
			"115.7 h: 3 ordered for 163.7 h",
		]);
		expect(shelf.expired).toBe(6);
	});

	test("lets those wait who find it empty, in their order, and counts how long", () => {
		const { told, asked, atOnce } = story({ stock: 1 }, { reorder: 1, upTo: 3 }, [60, 120, 180], 4000);
		expect(told).toEqual(
			[
				"0 h: 2 ordered for 48 h",
				"2 h: 2 ordered for 50 h",
				"48 h: 2 received",
				"waited 46 h",
				"waited 45 h",
				"50 h: 2 received",
			].map((line) => line),
		);
		expect([asked, atOnce]).toEqual([3, 1]);
	});

	test("may be without a delivery for its lead time, its review and the longest wait for an order day", () => {
		expect(protectionDays(item)).toBe(2);
		expect(protectionDays({ ...item, orderDays: [0, 3], reviewMin: 1440 })).toBe(2 + 1 + 4);
	});
});

/** One bed on suction alone, with a canister that fills in about eight hours. */
const thirsty = (more: (raw: Raw) => void) =>
	wardWith((raw) => {
		raw.chance = "off";
		raw.horizon = "7 d";
		raw.care = { rounds: [], turning: "none", dressingChange: "none" };
		raw.ward.beds = [raw.ward.beds[0]];
		raw.ward.beds[0].end = "7 d";
		const [kind] = raw.ward.kinds;
		kind.wound.exudate = "600 mL/d";
		kind.regimen = { depth: "-125 mmHg", fill: "none" };
		kind.unit = { canister: "200 mL" };
		raw.stores = [
			{ item: "canister", size: "200 mL", stock: 2, lead: "3 d", reorder: 1, upTo: 40 },
			{ item: "kit", stock: "unlimited" },
			{ item: "port", stock: "unlimited" },
		];
		more(raw);
	});

function played(change: (raw: Raw) => void) {
	const ward = thirsty(change);
	const rules = ward.stores.map(({ reorder, upTo }) => ({ reorder: reorder ?? 0, upTo: upTo ?? 1 }));
	const { seen: counts } = playable(ward, supplyLayout(ward), rules)(0);
	const run = new WardRun(ward, dressingsOf(ward), rules, {});
	run.run(0);
	return { ward, counts, run };
}

describe("a shortage", () => {
	test("leaves the therapy off until the delivery, and nothing reaches a canister meanwhile", () => {
		const short = played(() => {});
		const plenty = played((raw) => {
			raw.stores[0].stock = 99;
		});
		// Canisters at 0 h and about 8 h; the second is full at about 16 h; the order of 0 h comes at 72 h.
		const offHours = (short.counts.offMin[0] ?? 0) / 60;
		expect(offHours).toBeGreaterThan(50);
		expect(offHours).toBeLessThan(57);
		expect(plenty.counts.offMin[0]).toBe(0);
		expect(short.counts.short[0]?.reduce((a, b) => a + b, 0)).toBe(1);
		// Off is not gone: what the wound gave meanwhile drains when suction is back.
		expect(short.run.totals().toCanisterMl).toBeLessThanOrEqual(plenty.run.totals().toCanisterMl + 1e-6);
		expect(short.run.nurses.busy).toBe(0);
	});

	test("is bridged by another size where the scenario allows it, which is used up sooner", () => {
		const { counts, run } = played((raw) => {
			raw.stores[0].substitute = "100 mL";
			raw.stores.push({ item: "canister", size: "100 mL", stock: 40 });
		});
		expect(counts.offMin[0]).toBe(0);
		expect(counts.substitutes[0]).toBeGreaterThan(10);
		expect(run.storeroom.shelves[3]?.used).toBe(counts.substitutes[0]);
		expect(run.storeroom.shelves[0]?.used).toBeGreaterThan(2);
	});

	test("of a kit keeps a patient from being started until one comes", () => {
		const { counts, run } = played((raw) => {
			raw.stores[0].stock = 99;
			raw.stores[1] = { item: "kit", stock: 0, lead: "2 d", reorder: 0, upTo: 3 };
		});
		expect(counts.offMin[1]).toBe(2880);
		expect(run.totals().therapyMin).toBe(5 * 1440);
	});
});

describe("patients", () => {
	test("are the same under every policy: when they come, what they wear, how long they stay", () => {
		const ward = wardWith((raw) => {
			raw.ward.beds = [];
			raw.ward.arrivals = { rate: "2 /d", weekdays: { sun: 0 } };
			raw.ward.length = { median: "2 d", spread: 0.7 };
			raw.compare = { alone: { fill: "none" } };
		});
		const seen = [dressingsOf(ward), ward.policies[0]?.dressings ?? []].map((dressings) => {
			const begun: number[] = [];
			const run = new WardRun(ward, dressings, null, { begins: (waitMin, atMin) => begun.push(waitMin, atMin) });
			run.run(3);
			return { begun, therapyMin: run.totals().therapyMin, instilled: run.totals().instilledMl };
		});
		expect(seen[1]?.begun).toEqual(seen[0]?.begun);
		expect(seen[1]?.therapyMin).toBe(seen[0]?.therapyMin);
		expect(seen[0]?.instilled).toBeGreaterThan(0);
		expect(seen[1]?.instilled).toBe(0);
	});

	test("come on the days on which patients come: none on a Sunday of factor 0", () => {
		const ward = wardWith((raw) => {
			raw.start = "2026-03-02T00:00";
			raw.ward.units = "unlimited";
			raw.ward.beds = [];
			raw.ward.arrivals = { rate: "5 /d", weekdays: { sun: 0, sat: 0.5 } };
			raw.ward.length = { mean: "2 h" };
		});
		const byDay = [0, 0, 0, 0, 0, 0, 0];
		const run = new WardRun(ward, dressingsOf(ward), null, {
			begins: (_wait, atMin) => {
				byDay[Math.floor(atMin / 1440) % 7]++;
			},
		});
		for (let r = 0; r < 20; r++) run.run(r);
		// 80 of each day of the week, 5 a day.
		expect(byDay[6]).toBe(0);
		for (const count of byDay.slice(0, 5)) expect(Math.abs(count - 400)).toBeLessThan(80);
		expect(Math.abs((byDay[5] ?? 0) - 200)).toBeLessThan(57);
	});

	test("who are there at the start are those of a ward in balance: a warm-up changes nothing", () => {
		const meanLeft = (census: number, warmUp: string) => {
			const ward = wardWith((raw) => {
				raw.chance = "on";
				raw.horizon = "7 d";
				raw.care = { rounds: [], turning: "none", dressingChange: "none" };
				raw.ward.units = "unlimited";
				raw.ward.beds = [];
				raw.ward.census = { thigh: census };
				raw.ward.arrivals = { rate: "5 /d" };
				raw.ward.length = { median: "4 d", spread: 0.6 };
				raw.ward.warmUp = warmUp;
				raw.ward.kinds[0].regimen = { depth: "-125 mmHg", fill: "none" };
			});
			const run = new WardRun(ward, dressingsOf(ward), null, {});
			let sum = 0;
			for (let r = 0; r < 30; r++) {
				run.run(r);
				sum += run.units.busy;
			}
			return sum / 30;
		};
		// λ·E(L) = 5 · 4·e^0.18 = 23.95 patients, warmed up from empty or there from the start.
		expect(Math.abs(meanLeft(24, "0 d") - 23.95)).toBeLessThan(2.7);
		expect(Math.abs(meanLeft(0, "42 d") - 23.95)).toBeLessThan(2.7);
	});
});
