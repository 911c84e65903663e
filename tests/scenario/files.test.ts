import { describe, expect, test } from "vitest";
import { checkScenario, readScenario, sentence } from "../../src/scenario/index.ts";
import { happenings } from "../../src/vocabulary/index.ts";
import { keptFiles, keptText } from "./kept.ts";

describe("the scenarios of the project", () => {
	test("are ten at least", () => {
		expect(keptFiles.length).toBeGreaterThanOrEqual(10);
	});

	test.each(keptFiles)("%s is sound and leaves nothing to note", (name) => {
		const { problems, notes } = checkScenario(keptText(name));
		expect(problems.map(sentence)).toEqual([]);
		// A regimen is set against itself on purpose there, and a fistula is not treated in the model.
		const noted = ["compare-thigh.yaml", "abdomen-fistula.yaml"];
		expect(notes.length).toBe(noted.includes(name) ? 1 : 0);
	});

	test.each(keptFiles)("%s tells an editor its schema and a reader who, why and what to look for", (name) => {
		const text = keptText(name);
		expect(text).toMatch(/^# yaml-language-server: \$schema=schema\.json\n/u);
		for (const lead of ["# Who: ", "# Why: ", "# Look: "]) expect(text).toContain(lead);
	});

	test("the twins differ in how they begin and in nothing else", () => {
		const [fill, suction] = ["fill", "suction"].map((begin) => readScenario(keptText(`transfer-begin-${begin}.yaml`)));
		const even = JSON.stringify(suction)
			.replaceAll('"begin":"suction"', '"begin":"fill"')
			.replace("beginning in suction", "beginning in fill");
		expect(JSON.parse(even)).toEqual(JSON.parse(JSON.stringify(fill)));
	});

	test("one of each scripted happening is in the day of failures", () => {
		const whats = readScenario(keptText("scripted-failures.yaml")).happenings.map(({ what }) => what);
		expect(whats.toSorted()).toEqual(happenings.toSorted());
	});

	test("the short and the long dwell are of one wound", () => {
		const [short, long] = ["short", "long"].map((dwell) => readScenario(keptText(`thigh-${dwell}-dwell.yaml`)));
		const [a, b] = [short?.dressings[0], long?.dressings[0]].map((dressing) => ({ ...dressing, regimens: [] }));
		expect(a).toEqual(b);
	});
});
