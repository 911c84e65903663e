import { describe, expect, test } from "vitest";
import { checkScenario, sentence } from "../../src/scenario/index.ts";
import { changedWard, type Raw, wardFaults, wardWith } from "./sample.ts";

/** What is done to the least ward, and the only sentence that may come of it. */
// biome-ignore format: a table
const refused: [string, (raw: Raw) => void, RegExp][] = [
	["a lead time below zero", (raw) => (raw.stores[0].lead = "-2 d"), /^stores\[0\]\.lead .*from 0 h/u],
	["an item used but not stocked", (raw) => raw.stores.shift(), /^stores .*canister 1000 mL \(the kind thigh\), received none of it$/u],
	["a size used but not stocked", (raw) => (raw.ward.kinds[0].unit = { source: "500 mL" }), /^stores .*the prescribed solution 500 mL/u],
	["a pack of 0", (raw) => (raw.stores[0].pack = 0), /^stores\[0\]\.pack .*from 1 to 1000000, received 0$/u],
	["an end before a start", (raw) => (raw.ward.beds[1] = { id: "b", kind: "thigh", start: "3 d", end: "2 d" }), /^ward\.beds\[1\]\.end .*after the start, "3 d", received "2 d"$/u],
	["a price without a currency", (raw) => (raw.stores[0].price = 38), /^stores\[0\]\.price .*a currency for it, under prices:, received none$/u],
	["a census above capacity", (raw) => { raw.ward.census = { thigh: 5 }; raw.ward.length = { mean: "6 d" }; }, /^ward\.census .*at most 4 patients, one a unit, received 5 of them$/u],
	["a kind that is not there", (raw) => (raw.ward.beds[0].kind = "thihg"), /^ward\.beds\[0\]\.kind .*did you mean thigh\?$/u],
	["arrivals without a length", (raw) => (raw.ward.arrivals = { rate: "2 /d" }), /^ward\.length .*received nothing$/u],
	["a horizon of half days", (raw) => (raw.horizon = "36 h"), /^horizon .*whole days, received "36 h"$/u],
	["a horizon of 53 weeks", (raw) => (raw.horizon = "53 w"), /^horizon .*1 d to 52 w/u],
	["an order-up-to below the reorder point", (raw) => Object.assign(raw.stores[0], { stock: 5, reorder: 9, upTo: 9 }), /^stores\[0\]\.upTo .*more than the reorder point, 9/u],
	["a substitute that is not there", (raw) => (raw.stores[0].substitute = "300 mL"), /^stores\[0\]\.substitute .*another item of the stores/u],
	["a key misspelt", (raw) => (raw.stores[0].stok = 3), /^stores\[0\]\.stok .*did you mean stock\?$/u],
	["a weekday misspelt", (raw) => (raw.stores[0].orderDays = ["mon", "thr"]), /did you mean thu\?$/u],
	["an item twice", (raw) => raw.stores.push({ item: "kit", stock: 3 }), /^stores\[5\] .*each item once, received dressing kit again|^stores\[5\] .*kit again/u],
	["a shift twice", (raw) => (raw.care = { nurses: [{ from: "07:00", nurses: 2 }, { from: "07:00", nurses: 3 }] }), /^care\.nurses\[1\]\.from .*each time once/u],
	["a kind without a wound", (raw) => delete raw.ward.kinds[0].wound, /^ward\.kinds\[0\]\.wound .*wound, where no file is named, received nothing$/u],
	["a fill without a dwell", (raw) => delete raw.ward.kinds[0].regimen.dwell, /^ward\.kinds\[0\]\.regimen\.dwell .*since there is a fill/u],
	["a policy of a size that is not stocked", (raw) => (raw.compare = { small: { canister: "300 mL" } }), /^stores .*canister 300 mL \(the policy small\)/u],
	["a file that is a ward itself", (raw) => (raw.ward.kinds[0] = { id: "thigh", file: "ward/hospital.yaml" }), /^ward\.kinds\[0\]\.file .*a sound scenario of dressings/u],
	["nobody to treat", (raw) => (raw.ward.beds = []), /^ward .*arrivals, a census or beds, received none of them$/u],
];

describe("a ward is refused in one clear sentence", () => {
	test.each(refused)("%s", (_, change, wanted) => {
		const faults = wardFaults(change);
		expect(faults.join("\n")).toMatch(wanted);
		expect(faults).toHaveLength(1);
	});

	test("all at once: one sentence each", () => {
		const faults = wardFaults((raw) => {
			raw.stores[0].lead = "-2 d";
			raw.stores[0].price = 3;
			raw.stores[2].pack = 0;
			raw.stores.pop();
			raw.ward.beds[1].start = "29 d";
			raw.ward.census = { thigh: 9 };
			raw.ward.length = { mean: "6 d" };
		});
		for (const part of [
			/stores\[0\]\.lead/,
			/stores\[0\]\.price .*currency/,
			/stores\[2\]\.pack/,
			/stores .*line/,
			/beds\[1\]\.end/,
			/census .*at most 4/,
		])
			expect(
				faults.filter((fault) => part.test(fault)),
				String(part),
			).toHaveLength(1);
		expect(faults).toHaveLength(6);
	});

	test("a day's commands send a ward to supply, and a ward's reader a day to day", () => {
		const [fault] = checkScenario(changedWard()).problems.map(sentence);
		expect(fault).toMatch(/a ward, which the command supply simulates/u);
		expect(
			wardFaults((raw) => {
				delete raw.ward;
				raw.dressings = [];
			}).join(),
		).toMatch(/which the command day simulates/u);
	});
});

describe("a kind may be taken from another file", () => {
	test("with its dressing, and the care of the ward", () => {
		const ward = wardWith((raw) => {
			raw.ward.kinds[0] = { id: "thigh", file: "thigh-long-dwell.yaml" };
		});
		expect(ward.kinds[0]?.dressing.regimens[0]?.dwellMin).toBe(10);
		expect(ward.kinds[0]?.dressing.tissue).toBe("necrotic-soft-tissue");
	});

	test("and of several dressings one is named", () => {
		const faults = wardFaults((raw) => {
			raw.ward.kinds[0] = { id: "thigh", file: "two-dressings.yaml" };
		});
		expect(faults.join("\n")).toMatch(/^ward\.kinds\[0\]\.dressing .*the id of a dressing of that file/u);
	});
});
