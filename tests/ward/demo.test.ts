import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { version } from "../../src/cli/files/own.ts";
import { reportFiles } from "../../src/cli/threads/report-files.ts";
import { Trace } from "../../src/engine/index.ts";
import type { SupplyResult } from "../../src/results/index.ts";
import { readWard } from "../../src/scenario/index.ts";
import {
	type Found,
	findRules,
	orderRules,
	runWardBlocks,
	SupplyGathering,
	supplyResult,
	wardBlocks,
} from "../../src/studies/index.ts";
import { WardRun } from "../../src/ward/index.ts";
import { dressingsOf } from "./sample.ts";

const folder = "reports/hospital-stores";
const kept = (name: string) => readFileSync(`${folder}/${name}`, "utf8");
const stale = `${folder} is stale: npm run build && node dist/cli/main.js supply scenarios/ward/hospital.yaml --out ${folder}`;

const ward = readWard(readFileSync("scenarios/ward/hospital.yaml", "utf8"), (file) => ({
	text: readFileSync(`scenarios/ward/${file}`, "utf8"),
}));
const result: SupplyResult = JSON.parse(kept("supply.json"));
/** What the kept result says was found; what is needed of an item without a price it does not keep. */
const found: Found = {
	rules: result.items.map(({ store }) => store?.rule ?? null),
	orders: result.orders,
	plenty: { used: (result.cost?.items ?? []).map(({ needed }) => needed), cost: result.cost?.totalNeeded ?? null },
};

function expectKept(now: SupplyResult): void {
	for (const [name, text] of Object.entries(reportFiles({ kind: "supply", result: now })))
		expect(kept(name) === text, `${name}: ${stale}`).toBe(true);
}

test("the demo's first replication is still that of this version, event by event", () => {
	const trace = new Trace();
	const run = new WardRun(ward, dressingsOf(ward), orderRules(found), {});
	const events = run.run(0, trace);
	expect({ events, hash: trace.hash }, stale).toEqual(result.trace);
	expect(result.scenario.version, stale).toBe(version());
});

test("every file of the demo is what this version writes of its result", () => {
	expectKept(result);
});

/** Keys of everything inside, without the numbers. */
function form(value: unknown): unknown {
	if (Array.isArray(value)) return value.slice(0, 1).map(form);
	if (typeof value !== "object" || value === null) return "plain";
	return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, form(inner)]));
}

test("the demo says and assumes what a run of one block does now, number by number where nothing is drawn", () => {
	const few = { ...ward, replications: 5 };
	const gathered = new SupplyGathering(few);
	gathered.add(runWardBlocks(few, orderRules(found), 0, wardBlocks(few)));
	const now: SupplyResult = JSON.parse(JSON.stringify(supplyResult(gathered, found, version())));
	expect(now.assumptions, stale).toEqual(result.assumptions);
	expect({ ...now.scenario, replications: 0 }, stale).toEqual({ ...result.scenario, replications: 0 });
	expect(form(now.items), stale).toEqual(form(result.items));
	expect(form(now.nurses), stale).toEqual(form(result.nurses));
	expect(form(now.waste), stale).toEqual(form(result.waste));
	expect(form(now.policies), stale).toEqual(form(result.policies));
});

// Four hundred weeks of a ward, six times over, take a minute; LONG=1 holds the numbers themselves against a fresh run.
test.runIf(process.env.LONG !== undefined)("the demo's result is what this version works out", () => {
	const fresh = findRules(ward);
	const gathered = new SupplyGathering(ward);
	gathered.add(runWardBlocks(ward, orderRules(fresh), 0, wardBlocks(ward)));
	expectKept(supplyResult(gathered, fresh, version()));
});
