import { describe, expect, test } from "vitest";
import {
	type ConstantFact,
	constantFacts,
	constantNames,
	constantsWith,
	convert,
	sameDimension,
} from "../../src/physics/index.ts";

const several = (group: string, ...names: string[]) => names.map((name) => `${group}.${name}`);

/** The names that a scenario may override, as the model lists them. */
const listed = [
	"air.ambient",
	...several("pump", "freeFlow", "maxDepth", "drawdown", "drawdownLimit"),
	"line.volume",
	...several("foam", "capacity", "suggested", "retained"),
	"fill.flow",
	...several("drain", "conductance", "limit", "factor"),
	"path.closedLimit",
	"fill.stallLimit",
	...several("leak", "sound", "limit", "delay"),
	...several("depth", "low", "delay"),
	"absent.limit",
	...several("output", "limit", "window"),
	"weep.perLeak",
	...several("breach", "dry", "wetScale", "wetShape", "age", "overfill", "sizeMedian", "sizeSigma"),
	...several("difficulty", "easy", "ordinary", "awkward"),
	...several("turn", "held", "wet", "between", "jitter"),
	...several("transfer", "held", "wet", "between"),
	...several("debris", "perDrain", "dwellScale", "perDay", "every"),
	...several("clump", "chance", "mean"),
	...several("slough", "clean", "ordinary", "heavy"),
	...several("kink", "rate", "suctionShare"),
	...several("exudate", "patientCv", "blockCv", "correlation", "block"),
	...several("hands", "canister", "source", "kink", "port", "patch", "round", "change"),
	"port.pumpOff",
	...several("round", "canisterAbove", "leakAbove"),
	"source.hang",
	"off.caution",
	"notice.canister",
];

const facts: (readonly [string, ConstantFact])[] = constantNames.map((name) => [name, constantFacts[name]] as const);

describe("the constants", () => {
	test("are those of the model, no more and no fewer", () => {
		expect(constantNames.toSorted()).toEqual(listed.toSorted());
		expect(new Set(listed).size).toBe(listed.length);
	});

	describe.each(facts)("%s", (_, fact) => {
		test("says what it means, in a phrase", () => {
			expect(fact.meaning).toMatch(/^(?:[a-z]|Weibull ).{8,}[^.\s]$/);
		});

		test("is a finite number, not below nought, in a unit that can be read", () => {
			expect(Number.isFinite(fact.value) && fact.value >= 0).toBe(true);
			expect(convert(1, fact.unit, fact.unit)).toBe(1);
		});

		test("says where it comes from, and does not claim more", () => {
			if (fact.provenance === "assumed") expect(fact.source).toBe("placeholder until a site calibrates it");
			else if (fact.provenance === "common practice") expect(fact.source).toMatch(/^common practice, no source/);
			else expect(fact.source).toMatch(/\d/);
		});
	});

	test("are published only where a source is named", () => {
		expect(facts.filter(([, fact]) => fact.provenance === "published").map(([name]) => name)).toEqual(["air.ambient"]);
	});

	test("keep shares and chances within 0…1", () => {
		for (const name of constantNames)
			if (
				/^(turn|transfer)\.(held|wet|between)$|^clump|Share$|Above$|^pump\.drawdown$|^depth\.low$|^notice|^exudate\.corr/.test(
					name,
				)
			)
				if (constantFacts[name].unit === "") expect(constantFacts[name].value, name).toBeLessThanOrEqual(1);
	});

	test("rank as their names do", () => {
		const c = constantsWith();
		expect(c["difficulty.easy"]).toBeLessThan(c["difficulty.ordinary"]);
		expect(c["difficulty.ordinary"]).toBeLessThan(c["difficulty.awkward"]);
		expect(c["slough.clean"]).toBeLessThan(c["slough.ordinary"]);
		expect(c["slough.ordinary"]).toBeLessThan(c["slough.heavy"]);
		for (const move of ["turn", "transfer"] as const) {
			expect(c[`${move}.held`]).toBeLessThan(c[`${move}.between`]);
			expect(c[`${move}.between`]).toBeLessThan(c[`${move}.wet`]);
		}
		expect(c["foam.retained"]).toBeLessThan(1);
		expect(c["foam.suggested"]).toBeLessThan(c["foam.capacity"]);
	});

	test("an override changes its own number and no other, and not the defaults", () => {
		const changed = constantsWith({ "turn.wet": 0.5 });
		for (const name of constantNames) expect(changed[name]).toBe(name === "turn.wet" ? 0.5 : constantFacts[name].value);
		expect(constantsWith()["turn.wet"]).toBe(0.1);
	});

	test("times are in minutes, hours or days, depths in mmHg, volumes in mL or L", () => {
		const kinds = ["min", "mmHg", "mL", "/d", "mL/min", "L/min/mmHg", "", "mL/min/(L/min/mmHg)"];
		for (const [name, { unit }] of facts)
			expect(
				kinds.some((kind) => sameDimension(kind, unit)),
				name,
			).toBe(true);
	});
});
