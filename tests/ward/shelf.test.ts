import { describe, expect, test } from "vitest";
import { Simulation, Substream } from "../../src/engine/index.ts";
import type { StoreItem } from "../../src/scenario/index.ts";
import { type OrderRule, Shelf } from "../../src/ward/shelf.ts";

const item: StoreItem = {
	name: "canister 500 mL",
	kind: "canister",
	sizeMl: 500,
	solution: null,
	stock: 5,
	pack: 1,
	price: null,
	weightG: null,
	shelfMin: null,
	lead: { medianMin: 100, spread: 0 },
	orderDays: null,
	cutOffClockMin: 0,
	reviewMin: null,
	reorder: 2,
	upTo: 5,
	service: 0.95,
	substitute: null,
};

/** A shelf that has opened at 0 on a Monday at midnight, and all that it tells. */
function bench(
	other: Partial<StoreItem> = {},
	rule: OrderRule | null = { reorder: 2, upTo: 5 },
	lead: Substream | null = null,
	opens = true,
) {
	const sim = new Simulation();
	const told: string[] = [];
	const shelf = new Shelf(sim, { ...item, ...other }, rule, { startClockMin: 0, startWeekday: 0 }, lead, {
		ordered: (pieces, at, arrives) => told.push(`${at}: ${pieces} ordered for ${arrives}`),
		received: (pieces, at) => told.push(`${at}: ${pieces} received`),
		expired: (pieces, at) => told.push(`${at}: ${pieces} expired`),
		waited: (minutes) => told.push(`waited ${minutes}`),
	});
	if (opens) shelf.open();
	/** Runs to `at`, what is due then too, and takes so many pieces one by one; how many there were. */
	const take = (at: number, pieces = 1) => {
		sim.runThrough(at);
		let given = 0;
		for (let i = 0; i < pieces; i++) if (shelf.take()) given++;
		return given;
	};
	const counts = () => [
		shelf.opening,
		shelf.received,
		shelf.used,
		shelf.expired,
		shelf.onHand,
		shelf.onOrder,
		shelf.waiting,
	];
	return { sim, shelf, told, take, counts };
}

describe("a shelf", () => {
	test("orders up to its level when the position comes down to the reorder point, and not before", () => {
		const { told, take, counts } = bench();
		expect(take(10, 2)).toBe(2);
		expect(told).toEqual([]);
		take(20);
		expect(told).toEqual(["20: 3 ordered for 120"]);
		expect(counts()).toEqual([5, 0, 3, 0, 2, 3, 0]);
		take(119, 1);
		// What is on order counts: no second order at a position of 4.
		expect(told.length).toBe(1);
		take(120, 0);
		expect(told.at(-1)).toBe("120: 3 received");
		expect(counts()).toEqual([5, 3, 4, 0, 4, 0, 0]);
	});

	test("orders whole packs", () => {
		const { told, take } = bench({ pack: 4 });
		take(0, 3);
		expect(told).toEqual(["0: 4 ordered for 100"]);
	});

	test("has what it ordered at once where nobody has to bring it", () => {
		const { told, take, counts } = bench({ lead: { medianMin: 0, spread: 0 } });
		take(5, 3);
		expect(told).toEqual(["5: 3 ordered for 5", "5: 3 received"]);
		expect(counts()).toEqual([5, 3, 3, 0, 5, 0, 0]);
	});

	test("orders at its opening where it opens at or below the reorder point", () => {
		expect(bench({ stock: 2 }).told).toEqual(["0: 3 ordered for 100"]);
		expect(bench({ stock: 3 }).told).toEqual([]);
	});

	test("gives to those who wait in order of their coming, and says how long each has waited", () => {
		const { sim, shelf, told, take, counts } = bench({ stock: 0 });
		const served: string[] = [];
		sim.runThrough(10);
		expect([shelf.has, shelf.take()]).toEqual([false, false]);
		for (const name of ["a", "b"]) shelf.wait(() => served.push(`${name} at ${sim.now}`));
		// Who waits is owed a piece: the position is 5 − 2, above the reorder point of 2; a third brings it there.
		expect(told).toEqual(["0: 5 ordered for 100"]);
		shelf.wait(() => served.push(`c at ${sim.now}`));
		expect(told.at(-1)).toBe("10: 3 ordered for 110");
		expect(counts()).toEqual([0, 0, 0, 0, 0, 8, 3]);
		take(100, 0);
		expect(served).toEqual(["a at 100", "b at 100", "c at 100"]);
		expect(told.slice(2)).toEqual(["100: 5 received", "waited 90", "waited 90", "waited 90"]);
		expect(counts()).toEqual([0, 5, 3, 0, 2, 3, 0]);
	});

	test("gives what has come to the first who waits, and lets the others wait on", () => {
		const { sim, shelf, told, take, counts } = bench({ stock: 0 }, { reorder: 0, upTo: 1 });
		const served: string[] = [];
		sim.runThrough(10);
		shelf.wait(() => served.push("a"));
		shelf.wait(() => served.push("b"));
		expect(told).toEqual(["0: 1 ordered for 100", "10: 1 ordered for 110", "10: 1 ordered for 110"]);
		take(100, 0);
		expect(served).toEqual(["a"]);
		expect(counts()).toEqual([0, 1, 1, 0, 0, 2, 1]);
		take(110, 0);
		expect(served).toEqual(["a", "b"]);
		expect(counts()).toEqual([0, 3, 2, 0, 1, 0, 0]);
	});

	test("orders nothing where, by the time the orders go out, nothing is lacking any more", () => {
		const { sim, shelf, told } = bench({ stock: 3, orderDays: [0], cutOffClockMin: 720 }, { reorder: 2, upTo: 3 });
		const gone = shelf.wait(() => {});
		shelf.withdraw(gone);
		sim.runThrough(5000);
		expect(told).toEqual(["waited 0"]);
	});

	test("forgets who no longer waits, and says how long it was", () => {
		const { sim, shelf, told, take } = bench({ stock: 0 });
		const served: string[] = [];
		sim.runThrough(4);
		const gone = shelf.wait(() => served.push("gone"));
		sim.runThrough(10);
		shelf.wait(() => served.push("stays"));
		sim.runThrough(30);
		shelf.withdraw(gone);
		expect([shelf.waiting, told.at(-1)]).toEqual([1, "waited 26"]);
		const before = told.length;
		shelf.withdraw(gone);
		expect([shelf.waiting, told.length]).toEqual([1, before]);
		take(100, 0);
		expect(served).toEqual(["stays"]);
	});

	test("uses the oldest first, and what has kept too long expires", () => {
		const { sim, shelf, told, take, counts } = bench({ shelfMin: 500 });
		// Three of the five that were there at 0; three new ones come at 120.
		take(20, 3);
		take(200);
		expect(counts()).toEqual([5, 3, 4, 0, 4, 0, 0]);
		sim.runThrough(500);
		expect(told.slice(2)).toEqual(["500: 1 expired"]);
		expect(counts()).toEqual([5, 3, 4, 1, 3, 0, 0]);
		sim.runThrough(620);
		expect(told.slice(3)).toEqual(["620: 3 expired", "620: 5 ordered for 720"]);
		expect([shelf.has, shelf.onHand]).toEqual([false, 0]);
	});

	test("nothing expires of a lot that is used up", () => {
		const { sim, told, take } = bench({ shelfMin: 500 }, { reorder: -1, upTo: 0 });
		take(20, 5);
		sim.runThrough(2000);
		expect(told).toEqual([]);
	});

	test("counts the minutes with nothing on it", () => {
		const { sim, shelf, take } = bench({ stock: 0 });
		take(100, 0);
		expect(shelf.emptyMin).toBe(100);
		take(150, 3); // 2 left, 3 more come at 250
		take(200, 2);
		take(300, 0);
		expect(shelf.emptyMin).toBe(150);
		take(300, 3);
		sim.runThrough(330);
		shelf.close();
		expect(shelf.emptyMin).toBe(150 + 30);
	});

	test("is not empty while a piece is left, be it at a use, an expiry or the close", () => {
		const { sim, shelf, take } = bench({ shelfMin: 500 });
		take(20, 3); // 2 left, 3 more come at 120
		expect(shelf.has).toBe(true);
		take(130, 1);
		sim.runThrough(550); // the last of the old ones is gone, three new ones are left
		expect(shelf.onHand).toBe(3);
		shelf.close();
		expect(shelf.emptyMin).toBe(0);
		const bare = bench({ stock: 0 }, { reorder: -1, upTo: 0 });
		bare.sim.runThrough(40);
		bare.shelf.close();
		expect(bare.shelf.emptyMin).toBe(40);
	});

	test("is empty from its last piece on, whenever the one before went", () => {
		const { shelf, take } = bench();
		take(10, 4);
		take(60, 1);
		take(110, 0); // 3 come, ordered at 10
		expect(shelf.emptyMin).toBe(50);
	});

	test("is empty from the moment all of it has expired", () => {
		const { sim, shelf } = bench({ shelfMin: 500 });
		sim.runThrough(700);
		expect(shelf.emptyMin).toBe(100);
	});

	test("tells at the close of everybody who still waits", () => {
		const { sim, shelf, told } = bench({ stock: 0 }, { reorder: -9, upTo: 0 });
		shelf.wait(() => {});
		sim.runThrough(70);
		shelf.wait(() => {});
		sim.runThrough(90);
		shelf.close();
		expect(told).toEqual(["waited 90", "waited 20"]);
	});

	test("that is looked at now and then orders only when it is looked at", () => {
		const { sim, shelf, told, take } = bench({ reviewMin: 480 });
		take(0, 5);
		shelf.wait(() => {});
		take(479, 0);
		expect(told).toEqual([]);
		sim.runThrough(480);
		expect(told).toEqual(["480: 6 ordered for 580"]);
		sim.runThrough(580);
		expect(told.slice(1)).toEqual(["580: 6 received", "waited 580"]);
		take(590, 3);
		sim.runThrough(960);
		expect(told.at(-1)).toBe("960: 3 ordered for 1060");
	});

	test("that is looked at now and then orders what has expired at the next look too", () => {
		const { sim, told } = bench({ reviewMin: 480, shelfMin: 500 });
		sim.runThrough(959);
		expect(told).toEqual(["500: 5 expired"]);
		sim.runThrough(960);
		expect(told.at(-1)).toBe("960: 5 ordered for 1060");
	});

	test("whose orders go out on some days waits for the cut-off, and orders then what is lacking then", () => {
		// 0 is Monday; Tuesday at 12:00 is minute 2160.
		const { sim, told, take } = bench({ orderDays: [1], cutOffClockMin: 720 });
		take(100, 3);
		take(300, 1);
		expect(told).toEqual([]);
		sim.runThrough(2160);
		expect(told).toEqual(["2160: 4 ordered for 2260"]);
	});

	test("takes deliveries in order of their coming, however they were ordered", () => {
		const { sim, told, take, counts } = bench(
			{ stock: 6, lead: { medianMin: 1000, spread: 1 } },
			{ reorder: 5, upTo: 6 },
			new Substream("shelf", "lead", 0),
		);
		for (let at = 0; at < 6; at++) take(at);
		const due = told.map((line) => Number(line.split(" for ")[1]));
		expect(due.length).toBe(6);
		expect(due).not.toEqual(due.toSorted((a, b) => a - b));
		sim.runThrough(1e6);
		expect(told.slice(6)).toEqual(due.toSorted((a, b) => a - b).map((at) => `${at}: 1 received`));
		expect(counts()).toEqual([6, 6, 6, 0, 6, 0, 0]);
	});

	test("lead times are their median where they do not spread, whatever stream there is", () => {
		const stream = new Substream("shelf", "lead", 0);
		const { told, take } = bench({}, { reorder: 2, upTo: 5 }, stream);
		take(0, 3);
		expect(told).toEqual(["0: 3 ordered for 100"]);
	});

	test("without a rule or a stock nothing is ever lacking, and it comes as it is used", () => {
		for (const { shelf, told, take, counts } of [bench({}, null), bench({ stock: null })]) {
			expect(take(10, 1000)).toBe(1000);
			expect(shelf.has).toBe(true);
			expect(counts()).toEqual([0, 1000, 1000, 0, 0, 0, 0]);
			expect(told).toEqual([]);
		}
		expect(bench().take(10, 1000)).toBe(5);
	});

	test("before it opens gives what is asked and counts nothing", () => {
		const { shelf, take, counts } = bench({ stock: 0 }, undefined, null, false);
		expect([shelf.has, take(20, 9)]).toEqual([true, 9]);
		expect(counts()).toEqual([0, 0, 0, 0, 0, 0, 0]);
	});

	test("after a reset gives what is asked and counts nothing, until it opens as new", () => {
		const { sim, shelf, told, take, counts } = bench({ stock: 0 });
		shelf.wait(() => {});
		sim.runThrough(50);
		sim.reset();
		shelf.reset(1);
		told.length = 0;
		expect(counts()).toEqual([0, 0, 0, 0, 0, 0, 0]);
		expect([shelf.has, take(20, 9), shelf.emptyMin]).toEqual([true, 9, 0]);
		expect(counts()).toEqual([0, 0, 0, 0, 0, 0, 0]);
		shelf.open();
		expect(shelf.has).toBe(false);
		expect(told).toEqual(["20: 5 ordered for 120"]);
		sim.runThrough(120);
		expect(shelf.emptyMin).toBe(100);
		expect(counts()).toEqual([0, 5, 0, 0, 5, 0, 0]);
	});

	test("in another replication has the lead times of that replication", () => {
		const spread = { lead: { medianMin: 1000, spread: 1 } };
		const first = bench(spread, undefined, new Substream("shelf", "lead", 0));
		const again = (replication: number) => {
			first.sim.reset();
			first.shelf.reset(replication);
			first.told.length = 0;
			first.shelf.open();
			first.take(0, 3);
			return first.told[0];
		};
		const [one, two, one2] = [again(1), again(2), again(1)];
		expect(one2).toBe(one);
		expect(two).not.toBe(one);
	});
});
