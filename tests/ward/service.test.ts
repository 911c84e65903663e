import { describe, expect, test } from "vitest";
import {
	findRules,
	orderRules,
	runWardBlocks,
	SupplyGathering,
	supplyResult,
	wardBlocks,
} from "../../src/studies/index.ts";
import { wardWith } from "./sample.ts";

/** Small canisters, so that one more or less on the shelf is a small step. */
const ward = (seed: string, replications: number) =>
	wardWith((raw) => {
		raw.seed = seed;
		raw.horizon = "364 d";
		raw.replications = replications;
		raw.chance = "on";
		raw.care = { rounds: ["07:00"], turning: "none", dressingChange: "96 h" };
		raw.ward.units = 3;
		raw.ward.beds = [];
		raw.ward.census = { thigh: 3 };
		raw.ward.arrivals = { rate: "1.2 /d" };
		raw.ward.length = { median: "6 d", spread: 0.4 };
		const [kind] = raw.ward.kinds;
		kind.wound.exudate = "500 mL/d";
		kind.regimen = { depth: "-125 mmHg", fill: "none" };
		kind.unit = { canister: "200 mL" };
		raw.stores = [
			{ item: "canister", size: "200 mL", stock: 90, pack: 2, lead: "5 d", service: "98 %" },
			{ item: "kit", stock: "unlimited" },
			{ item: "port", stock: "unlimited" },
		];
	});

describe("the reorder point found for a service level of 98 %", () => {
	const sought = ward("sought", 10);
	const found = findRules(sought);
	const [rule] = found.rules;
	if (rule === null || rule === undefined) throw new Error("no rule was found");

	test("keeps a piece on the shelf for 98 % ± 0.5 of the time in an independent run of ten years of the whole ward, shortages and all", () => {
		const other = ward("independent", 10);
		const gathered = new SupplyGathering(other);
		gathered.add(runWardBlocks(other, orderRules(found), 0, wardBlocks(other)));
		const [canister] = supplyResult(gathered, found, "test").items;
		const served = canister?.store?.ready.mean ?? 0;
		expect(canister?.demand.total.mean).toBeGreaterThan(1500);
		expect(Math.abs(served - 0.98)).toBeLessThan(0.005);
	});

	test("is the least one that does: others about it reach the less, the lower they are", () => {
		expect(rule.origin).toBe("found");
		const served = rule.ladder.map(({ service }) => service);
		expect(served).toEqual(served.toSorted((a, b) => a - b));
		expect((served.at(-1) ?? 0) - served[0]).toBeGreaterThan(0.03);
		expect(rule.ladder.find((one) => one.reorder === rule.reorder)).toEqual({
			reorder: rule.reorder,
			service: rule.reached.mean,
		});
	});

	test("stands beside the text-book formula, which is not far off", () => {
		// μ·T + z·σ·√T for independent days; canisters of one patient are not quite that.
		expect(rule.exposureDays).toBe(5);
		expect(rule.textBook.reorder / rule.reorder).toBeGreaterThan(0.9);
		expect(rule.textBook.reorder / rule.reorder).toBeLessThan(1.3);
		expect(rule.textBook.service).toBeGreaterThan(0.97);
	});
});
