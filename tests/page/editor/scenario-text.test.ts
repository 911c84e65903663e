import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { expect, test } from "vitest";
import { dataOf, withValue } from "../../../src/page/editor/scenario-text.ts";
import { checkScenario, readScenario } from "../../../src/scenario/index.ts";
import { names, scenario } from "../../cli/program.ts";

const dwell = ["dressings", 0, "regimen", "dwell"];
const demo = readFileSync(scenario("thigh-short-dwell"), "utf8");

test("a value is changed where it stands, and every remark stays", () => {
	const changed = withValue(demo, dwell, "9 min") ?? "";
	expect(changed).toContain("dwell: 9 min");
	for (const remark of demo.match(/#.*$/gmu) ?? []) expect(changed).toContain(remark);
	expect(readScenario(changed).dressings[0]?.regimens[0]?.dwellMin).toBe(9);
});

test.each(names.map((name) => basename(name, ".yaml")))(
	"putting a value where it stands already changes nothing of what the scenario says: %s",
	(name) => {
		const text = readFileSync(scenario(name), "utf8");
		const again = withValue(text, ["title"], readScenario(text).title) ?? "";
		expect(readScenario(again)).toEqual(readScenario(text));
	},
);

test("a value that is taken out takes the map along that it leaves empty, but not a list's item", () => {
	const text = "a: 1\ncare:\n  response: { day: 4 min }\nlist: [ { b: 1 } ]\n";
	expect(dataOf(withValue(text, ["care", "response", "day"], undefined) ?? "")).toEqual({ a: 1, list: [{ b: 1 }] });
	expect(dataOf(withValue(text, ["list", 0, "b"], undefined) ?? "")).toEqual({
		a: 1,
		care: { response: { day: "4 min" } },
		list: [{}],
	});
});

test("what is missing on the way is made", () => {
	const changed = withValue(demo, ["compare", "long", "dwell"], "10 min") ?? "";
	expect(readScenario(changed).compare.map(({ name }) => name)).toEqual(["long"]);
});

test("an alias or an empty value in the way does not stop it", () => {
	const text = "one: &x { dwell: 5 min }\ntwo: *x\ncare:\n";
	expect(dataOf(withValue(text, ["two", "dwell"], "6 min") ?? "")).toEqual({
		one: { dwell: "5 min" },
		two: { dwell: "6 min" },
	});
	expect(dataOf(withValue(text, ["care", "turning"], "2 h") ?? "")).toMatchObject({ care: { turning: "2 h" } });
});

test("JSON stays JSON", () => {
	const text = JSON.stringify(dataOf(demo));
	const changed = withValue(text, dwell, "9 min") ?? "";
	expect(JSON.parse(changed).dressings[0].regimen.dwell).toBe("9 min");
});

test("a text that cannot be read is left alone", () => {
	expect(withValue("a: [1,\n b: }", dwell, "9 min")).toBe(null);
	expect(withValue("just words", dwell, "9 min")).toBe(null);
	expect(withValue("", dwell, "9 min")).toBe(null);
});

test("what was quoted is not quoted on", () => {
	const text = demo.replace("dwell: 5 min", "dwell: 5");
	const changed = withValue(text, dwell, "5 min") ?? "";
	expect(changed).toContain("dwell: 5 min");
	expect(checkScenario(changed).problems).toEqual([]);
});

test("a text that would unfold without end is no data", () => {
	const nested = Array.from({ length: 12 }, (_, i) => `a${i + 1}: &a${i + 1} [${`*a${i}, `.repeat(9)}*a${i}]`);
	expect(dataOf(["a0: &a0 [x]", ...nested].join("\n"))).toBe(undefined);
});
