import { readFileSync } from "node:fs";
import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { reportHtml } from "../../src/report/index.ts";
import { traceDay } from "../../src/studies/trace/trace-day.ts";
import { callsNurse, conditions, priorityOf } from "../../src/vocabulary/index.ts";
import { troubledDay } from "../charts/fixture.ts";
import { pacesOf } from "../oracles/flashes.ts";
import { reference } from "../therapy/example.ts";

/** IEC 60601-1-8 knows three priorities, highest first (from memory; the standard has no open page). */
const categories = ["high", "medium", "low"];

describe("alarm priorities after IEC 60601-1-8", () => {
	test.each(conditions)("'%s' is of a category of the standard", (condition) => {
		expect(categories).toContain(priorityOf(condition));
	});

	test("large output alone is high, the rest are medium, none is low", () => {
		// the model's own choice (common practice, no source): a large sudden output needs a clinician now
		const by = (priority: string) => conditions.filter((condition) => priorityOf(condition) === priority);
		expect(by("high")).toEqual(["large-output"]);
		expect(by("medium").length).toBe(conditions.length - 1);
	});

	test("each alarm of a day carries the priority of its condition, whatever else stands", () => {
		// cl. 6.3.2.2: one visual signal shows the priority of the highest-priority alarm condition that stands,
		// standards.har-el.com, 60601-1-8, 6.3.2 visual generation (read): it must be told for each
		const { alarms } = traceDay({
			...reference,
			happenings: [
				{ atMin: 30, dressing: "thigh", what: "breach", size: 0.03 },
				{ atMin: 31, dressing: "thigh", what: "bleed", volumeMl: 250, forMin: 3 },
			],
		}).dressings[0];
		const standing = alarms.filter((alarm) => alarm.startMin <= 34 && alarm.endMin > 34);
		expect(standing.map((alarm) => alarm.condition).toSorted()).toEqual(["large-output", "seal-leak"]);
		for (const alarm of alarms) expect(alarm.priority).toBe(priorityOf(alarm.condition));
		expect(standing.map((alarm) => alarm.priority).toSorted()).toEqual(["high", "medium"]);
	});

	test("what calls a nurse has a cause that a nurse can mend", () => {
		// two symptoms call nobody: their causes do (the model's own)
		expect(conditions.filter((condition) => !callsNurse(condition))).toEqual(["suction-absent", "large-output"]);
	});
});

describe("nothing that is shown may be taken for an alarm light", () => {
	test("a report moves nothing at all", () => {
		const html = reportHtml(troubledDay(), new JSDOM("").window.document);
		const { document } = new JSDOM(html).window;
		expect(document.querySelectorAll("animate, animateTransform, set, marquee, blink").length).toBe(0);
		const styles = [...document.querySelectorAll("style")].map((style) => style.textContent ?? "").join("\n");
		expect(styles.length).toBeGreaterThan(0);
		expect(styles).not.toMatch(/@keyframes|text-decoration:[^;]*blink/u);
		expect(pacesOf(styles)).toEqual([]);
	});

	test("the workbench moves nothing again and again, and what it moves once has no such pace", () => {
		const styles = readFileSync(new URL("../../src/page/workbench.css", import.meta.url), "utf8");
		expect(styles).not.toMatch(/@keyframes|animation|blink/u);
		const paces = pacesOf(styles);
		expect(paces.length).toBeGreaterThan(0);
		for (const { like } of paces) expect(like).toBe("none");
	});
});
