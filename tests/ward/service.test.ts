import { describe, expect, test } from "vitest";
import { demandCourses } from "../../src/analysis/find-rules.ts";
import {
	findRules,
	orderRules,
	runWardBlocks,
	SupplyGathering,
	supplyResult,
	tryShelf,
	wardBlocks,
} from "../../src/analysis/index.ts";
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
			{
				item: "canister",
				size: "200 mL",
				stock: 90,
				pack: 2,
				lead: "5 d",
				service: "98 %",
			},
			{ item: "kit", stock: "unlimited" },
			{ item: "port", stock: "unlimited" },
		];
	});

describe("the reorder point found for a service level of 98 %", () => {
	const sought = ward("sought", 10);
	const rules = findRules(sought);
	const [rule] = rules;
	if (rule === null || rule === undefined) throw new Error("no rule was found");

	test("keeps a piece on the shelf for 98 % ± 0.5 of the time in an independent run of ten years of the whole ward, shortages and all", () => {
		const other = ward("independent", 10);
		const gathered = new SupplyGathering(other);
		gathered.add(runWardBlocks(other, orderRules(rules), 0, wardBlocks(other)));
		const [canister] = supplyResult(gathered, rules, "test").items;
		const served = canister?.store?.ready.mean ?? 0;
		expect(canister?.demand.total.mean).toBeGreaterThan(1500);
		expect(Math.abs(served - 0.98)).toBeLessThan(0.005);
	});

	test("is the least one that does: one less comes to less than 98 %", () => {
		expect(rule.origin).toBe("found");
		const [course] = demandCourses(sought);
		if (course === undefined) throw new Error("no demand");
		const serve = (reorder: number) => {
			const upTo = reorder + (rule.upTo - rule.reorder);
			const { ready } = tryShelf(
				{ ...sought.stores[0], stock: upTo },
				{ reorder, upTo },
				sought,
				course,
				`${sought.seed}: levels`,
			);
			return ready;
		};
		expect(serve(rule.reorder)).toBeGreaterThanOrEqual(0.98);
		expect(serve(rule.reorder - 1)).toBeLessThan(0.98);
		// Lowered step by step, the share of the time falls and never rises.
		const served = [0, 3, 6, 9, 12, 15, 18, 21, 24].map((less) =>
			serve(rule.reorder - less),
		);
		expect(served).toEqual(served.toSorted((a, b) => b - a));
		expect(served[0] - (served.at(-1) ?? 0)).toBeGreaterThan(0.03);
	});

	test("stands beside the text-book formula, which is not far off", () => {
		// μ·T + z·σ·√T for independent days; canisters of one patient are not quite that.
		expect(rule.exposureDays).toBe(5);
		expect(rule.textBook.reorder / rule.reorder).toBeGreaterThan(0.9);
		expect(rule.textBook.reorder / rule.reorder).toBeLessThan(1.3);
		expect(rule.textBook.service).toBeGreaterThan(0.97);
	});
});
