import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse, stringify } from "yaml";
import { readWard } from "../../src/scenario/index.ts";
import {
	findRules,
	foundFits,
	mergedPart,
	orderRules,
	partFits,
	runWardBlocks,
	wardBlocks,
} from "../../src/studies/index.ts";
import { supplyLayout } from "../../src/studies/supply/run/layout.ts";
import { besideScenarios, changedWard, type Raw } from "./sample.ts";
import { smallWard } from "./small-ward.ts";

const small = (change: (raw: Raw) => void): string => {
	const raw = parse(smallWard());
	raw.replications = 8;
	change(raw);
	return stringify(raw);
};
const hospital = () => {
	const raw = parse(readFileSync("scenarios/ward/hospital.yaml", "utf8"));
	for (const kind of raw.ward.kinds) if (kind.file !== undefined) kind.file = kind.file.replace("../", "");
	return stringify({ ...raw, horizon: "1 w", replications: 6 });
};

/** What a part of JSON says once it has been written and read. */
const read = (data: unknown): unknown => JSON.parse(JSON.stringify(data));

describe("what a ward's blocks come to fits that ward", () => {
	test.each<readonly [string, string]>([
		["of stores without end", changedWard((raw) => (raw.replications = 7))],
		["the demo's hospital", hospital()],
		[
			"that lacks everything",
			small((raw) => {
				for (const store of raw.stores) Object.assign(store, { stock: 0, lead: "6 d" });
			}),
		],
		["where nothing is left to chance", small((raw) => (raw.chance = "off"))],
		[
			"without prices and other regimens",
			small((raw) => {
				delete raw.prices;
				delete raw.compare;
				for (const store of raw.stores) delete store.price;
			}),
		],
		["where hardly anybody comes", small((raw) => (raw.ward.arrivals.rate = "0.01 /d"))],
		["that many wait for", small((raw) => (raw.ward.arrivals.rate = "3 /d"))],
		["that sends patients away", small((raw) => (raw.ward.full = "away"))],
	])("%s", (_, text) => {
		const ward = readWard(text, besideScenarios);
		const found = findRules(ward);
		expect(foundFits(ward, read(found))).toBe(true);
		const blocks = wardBlocks(ward);
		for (const [first, last] of [
			[0, blocks],
			[0, 1],
			[1, blocks],
			[1, 1],
		] as const) {
			// Merged as a shard is, which brings the bins into their order.
			const ran = runWardBlocks(ward, orderRules(found), first, last);
			const part = mergedPart(ward, [ran], first);
			const span = `${first} to ${last}`;
			expect(partFits(ward, read(part), first, last), span).toBe(true);
			expect(partFits(ward, read(part), first, last + 1), span).toBe(false);
			expect(partFits(ward, read(part), first + 1, last + 1), span).toBe(false);
		}
	});
});

describe("what no search can find does not fit", () => {
	const ward = readWard(small(() => {}));
	const whole = findRules(ward);
	test.each<readonly [string, (found: Raw) => void]>([
		["a rule too few", (found) => found.rules.pop()],
		["a share above one", (found) => (found.rules[0].reached.mean = 1.1)],
		["an interval beside its point", (found) => (found.rules[0].high95 = found.rules[0].reorder - 1)],
		["an interval of a point that was given", (found) => Object.assign(found.rules[3], { low95: 0, high95: 9 })],
		["an order of an item of another ward", (found) => (found.orders[0].item = "x")],
		["half a pack", (found) => (found.orders[0].packs = 0.5)],
		["a cost beside the price", (found) => (found.orders[0].cost += 1)],
		[
			"a chance that an order makes greater",
			(found) => (found.orders[0].with.probability = found.orders[0].without.probability + 0.01),
		],
		["orders in no order", (found) => found.orders.reverse()],
		["an order after the end", (found) => (found.orders.at(-1).atMin = ward.horizonMin)],
		["pieces of no item", (found) => found.plenty.used.push({})],
		["a cost that is no number", (found) => (found.plenty.cost.p50 = null)],
		["no word on what is needed", (found) => (found.plenty = null)],
	])("%s", (_, change) => {
		const found: Raw = read(whole);
		expect(foundFits(ward, found)).toBe(true);
		expect(found.orders.length).toBeGreaterThan(1);
		change(found);
		expect(foundFits(ward, found)).toBe(false);
	});
});

describe("what no run can come to does not fit", () => {
	const ward = readWard(small(() => {}));
	const layout = supplyLayout(ward);
	const [item] = layout.items;
	const blocks = wardBlocks(ward);
	const ran = runWardBlocks(ward, orderRules(findRules(ward)), 0, blocks);
	const whole = mergedPart(ward, [ran], 0);
	const { replications } = whole;
	test.each<readonly [string, (part: Raw) => void]>([
		["a day on which an item was out twice", (part) => (part.tallies[item.outOnDay] = [2, replications])],
		["more pieces short than were asked for", (part) => (part.tallies[item.short] = [1e6, replications])],
		["more patients who waited than who began", (part) => (part.tallies[layout.waited] = [1e6, replications])],
		["fewer than no pieces", (part) => (part.tallies[item.used] = [-1, replications])],
		["a replication too many", (part) => (part.tallies[item.used] = [1, replications + 1])],
		["a mean outside of what was seen", (part) => (part.sums[0][item.ready].mean = 2)],
		["a value in another's bin", (part) => (part.measures[item.ready].bins[0].bin -= 1)],
		["no number", (part) => (part.sums[0][item.ready].squares = null)],
	])("%s", (_, change) => {
		const part: Raw = read(whole);
		expect(partFits(ward, part, 0, blocks)).toBe(true);
		change(part);
		expect(partFits(ward, part, 0, blocks)).toBe(false);
	});
});
