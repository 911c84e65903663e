import { expect, test } from "vitest";
import { Substream, Trace } from "../../src/engine/index.ts";
import type { StoreItem, WardScenario } from "../../src/scenario/index.ts";
import { type OrderRule, WardRun } from "../../src/ward/index.ts";
import { dressingsOf, wardWith } from "./sample.ts";

const wards = 2000;

const base = wardWith((raw) => {
	raw.chance = "on";
	raw.care = { rounds: ["07:00", "19:00"], turning: "none" };
	raw.ward.beds = [];
	raw.ward.arrivals = { rate: "1 /d" };
	raw.ward.length = { mean: "1 d" };
	const [kind] = raw.ward.kinds;
	raw.ward.kinds.push({
		...kind,
		id: "drip",
		wound: { tissue: "soft-tissue", exudate: "900 mL/d" },
		regimen: { depth: "-125 mmHg", fill: "none" },
		unit: { canister: "300 mL" },
	});
	raw.stores.push({ item: "canister", size: "300 mL", stock: 3 });
	for (const item of raw.stores) item.stock = 3;
});

/** A small ward that lacks everything now and then. */
function randomWard(stream: Substream): { readonly ward: WardScenario; readonly rules: readonly OrderRule[] } {
	const u = () => stream.uniform();
	const whole = (from: number, to: number) => from + Math.floor(u() * (to - from + 1));
	const stores = base.stores.map((item, i): StoreItem => {
		const limited = u() < 0.85;
		return {
			...item,
			stock: limited ? whole(0, 5) : null,
			pack: whole(1, 4),
			shelfMin: u() < 0.5 ? 300 + 4000 * u() : null,
			lead: { medianMin: 2000 * u(), spread: u() < 0.5 ? 0 : u() },
			orderDays: u() < 0.5 ? null : [whole(0, 3), whole(4, 6)],
			cutOffClockMin: whole(0, 1439),
			reviewMin: u() < 0.5 ? null : 60 + 2000 * u(),
			substitute: item.kind === "canister" && u() < 0.5 ? (i === 0 ? 5 : 0) : null,
		};
	});
	const rules = stores.map(() => {
		const reorder = whole(0, 4);
		return { reorder, upTo: reorder + whole(1, 6) };
	});
	const units = whole(1, 3);
	return {
		ward: {
			...base,
			seed: `ward ${u()}`,
			units,
			full: u() < 0.3 ? "away" : "wait",
			horizonMin: 1440 * whole(1, 3),
			warmUpMin: u() < 0.3 ? 1440 : 0,
			arrivals: { perDay: 0.5 + 4 * u(), factors: [1, 1, 0.5, 0, 1, 2, 1] },
			length: { form: "exponential", meanMin: 300 + 2000 * u() },
			census: [whole(0, units), 0],
			chance: u() < 0.85,
			shifts: [
				{ fromClockMin: 420, nurses: whole(1, 2) },
				{ fromClockMin: 1140, nurses: 1 },
			],
			stores,
		},
		rules,
	};
}

test(`in ${wards} random wards, at every event: opening + received = used + expired + on hand, and every patient who came has left, waits, is in a bed or is treated elsewhere`, () => {
	const stream = new Substream("random wards", "ward", 0);
	stream.reset(0);
	let events = 0;
	let shortages = 0;
	let expired = 0;
	for (let n = 0; n < wards; n++) {
		const { ward, rules } = randomWard(stream);
		const run = new WardRun(ward, dressingsOf(ward), rules, {
			asked: (_item, _cause, _at, atOnce) => {
				if (!atOnce) shortages++;
			},
		});
		let broken = "";
		const look = (where: string) => {
			for (const shelf of run.storeroom.shelves) {
				const { opening, received, used, expired: gone, onHand } = shelf;
				if (opening + received !== used + gone + onHand || onHand < 0)
					broken ||= `ward ${n}, ${where}: ${opening} + ${received} ≠ ${used} + ${gone} + ${onHand}`;
			}
			const { arrived, left, turnedAway } = run.totals();
			if (arrived !== left + turnedAway + run.units.busy + run.units.waiting)
				broken ||= `ward ${n}, ${where}: ${arrived} ≠ ${left} + ${turnedAway} + ${run.units.busy} + ${run.units.waiting}`;
			if (run.units.busy > (ward.units ?? 0)) broken ||= `ward ${n}, ${where}: ${run.units.busy} in bed`;
		};
		class Watch extends Trace {
			override note(time: number, hashed: number, name: string): void {
				super.note(time, hashed, name);
				look(`${name} at ${time}`);
			}
		}
		events += run.run(0, new Watch());
		look("the end");
		for (const shelf of run.storeroom.shelves) expired += shelf.expired;
		expect(broken).toBe("");
	}
	// The wards did lack, waste and work.
	expect(events).toBeGreaterThan(50 * wards);
	expect(shortages).toBeGreaterThan(wards);
	expect(expired).toBeGreaterThan(wards / 4);
});
