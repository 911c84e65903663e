import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { constantFacts, constantNames } from "../../src/physics/index.ts";
import { fullScenario, readScenario, UnusableInput } from "../../src/scenario/index.ts";
import { keptFiles, keptText } from "./kept.ts";
import { meaning } from "./meant.ts";
import { changed, least } from "./sample.ts";

describe("a scenario with every default filled in", () => {
	test.each(keptFiles)("%s reads back to the same scenario", (name) => {
		const text = keptText(name);
		const full = fullScenario(text);
		expect(meaning(readScenario(full))).toEqual(meaning(readScenario(text)));
	});

	test("leaves nothing to the defaults", () => {
		expect(readScenario(fullScenario(least)).defaulted).toEqual([]);
	});

	test("filled in again it does not change but for what it says of the first filling", () => {
		const values = (text: string) => parse(text);
		const once = fullScenario(least);
		expect(values(fullScenario(once))).toEqual(values(once));
	});

	test("says of every default where it comes from", () => {
		const full = fullScenario(least);
		expect(full).toContain("seed: slackwater # default of the project\n");
		expect(full).toContain("turning: 4 h # common practice, no source\n");
		expect(full).toMatch(/night: 7 min # assumed\n/u);
		expect(full).toMatch(/air\.ambient: 760 mmHg # published \(/u);
	});

	test("says nothing of what was given", () => {
		expect(fullScenario(least)).toMatch(/dwell: 5 min\n/u);
	});

	test("lists every constant in its own unit", () => {
		const { assumptions } = parse(fullScenario(least));
		expect(Object.keys(assumptions)).toEqual([...constantNames]);
		expect(assumptions["fill.flow"]).toBe("60 mL/min");
		expect(assumptions["drain.factor"]).toBe(constantFacts["drain.factor"].value);
	});

	test("an override stands as it was written, with the default behind it", () => {
		const full = fullScenario(`${least}assumptions: { breach.dry: 0.1 /d }\n`);
		expect(full).toMatch(/breach\.dry: 0\.1 \/d # .*; 0\.004 \/h by default\n/u);
	});

	test("keys come in the order of a reader, names of the author in his", () => {
		const full = fullScenario(
			changed((raw) => {
				raw.compare = { title: {}, id: {} };
				raw.seed = "z";
			}),
		);
		expect(Object.keys(parse(full)).slice(0, 5)).toEqual(["slackwater", "title", "seed", "start", "horizon"]);
		expect(Object.keys(parse(full).compare)).toEqual(["title", "id"]);
	});

	test("the defaults of every item of a list of regimens are filled in", () => {
		const full = fullScenario(
			changed((raw) => {
				raw.dressings[0].regimen = [raw.dressings[0].regimen, { from: "9 h", depth: "-75 mmHg", fill: "none" }];
			}),
		);
		expect(parse(full).dressings[0].regimen).toMatchObject([
			{ begin: "suction", drawdown: "15 %" },
			{ begin: "suction", drawdown: "15 %" },
		]);
	});

	test("a hundred dressings and a thousand happenings read back too", () => {
		const text = changed((raw) => {
			const item = { depth: "-125 mmHg", fill: "none" };
			raw.dressings = Array.from({ length: 100 }, (_, i) => ({
				...raw.dressings[0],
				id: `d${i}`,
				regimen: ["0 h", "8 h", "16 h"].map((from) => ({ from, ...item })),
			}));
			raw.happenings = Array.from({ length: 1000 }, (_, i) => ({
				at: `${i} min`,
				dressing: `d${i % 100}`,
				what: "turn",
			}));
		});
		const scenario = readScenario(text);
		expect(meaning(readScenario(fullScenario(text)))).toEqual(meaning(scenario));
	});

	test("of an unusable file nothing is printed", () => {
		expect(() => fullScenario("- 1")).toThrow(UnusableInput);
	});
});
