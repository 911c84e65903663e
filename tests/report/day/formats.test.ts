import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { daySvg, dayTables } from "../../../src/report/index.ts";
import { type DayResult, dayJson, dayJsonSchema } from "../../../src/results/index.ts";
import { dayResult, longWash, pairedDay, quietDay, stepDown, troubledDay } from "../../charts/fixture.ts";
import { hostileResult } from "../hostile.ts";
import { expectSoundSvg, expectSoundTables, rowsOfCsv } from "../sound-report.ts";

// ajv's build of draft 2020-12 is CommonJS; its class is the default of the module.
const { Ajv2020 } = await import("ajv/dist/2020.js");

const results: [string, () => DayResult][] = [
	["quiet", quietDay],
	["troubled", troubledDay],
	["paired", pairedDay],
	["step-down", stepDown],
	["long", longWash],
	["hostile", hostileResult],
];

describe("the tables", () => {
	test.each(results)("of the %s day are RFC 4180: CRLF, one width, nothing lost in reading", (_, result) =>
		expectSoundTables(dayTables(result())),
	);

	test("hold every phase, alarm, change, total, bin and assumption", () => {
		const result = troubledDay();
		const tables = dayTables(result);
		const [day, projection] = [result.dressings[0], result.projection.dressings[0]];
		const count = (name: string): number => rowsOfCsv(tables[name]).length - 1;
		expect(count("phases.csv")).toBe((day?.phases.length ?? 0) + (day?.pauses.length ?? 0));
		expect(count("alarms.csv")).toBe(5);
		// One traced, one projected; it is due before it is done.
		expect(count("changes.csv")).toBe(3);
		expect(count("schedule.csv")).toBe((day?.schedule.phases.length ?? 0) + (day?.schedule.pauses.length ?? 0));
		expect(count("totals.csv")).toBe(Object.keys(day?.totals ?? {}).length);
		expect(count("alarm-bins.csv")).toBe(projection?.alarms.reduce((sum, alarm) => sum + alarm.bins.length, 0));
		expect(count("assumptions.csv")).toBe(5);
	});

	test("keep the full precision of a number", () => {
		const result = quietDay();
		const drain = result.dressings[0]?.phases.find((phase) => phase.phase === "drain");
		const row = rowsOfCsv(dayTables(result)["phases.csv"]).find((cells) => cells[2] === "drain");
		expect(Number(row?.[3])).toBe(drain?.startMin);
	});

	test("defuse cells that a spreadsheet would run, and leave negative numbers numbers", () => {
		const rows = rowsOfCsv(dayTables(hostileResult())["assumptions.csv"]);
		const [, evil, number] = rows;
		expect(evil?.[0]).toBe("'=cmd");
		expect(evil?.[1]).toBe("'\t=1");
		expect(evil?.[2]).toBe("'\r");
		expect(evil?.[5]).toBe("'-");
		expect(evil?.[6]).toBe("' =HYPERLINK(1)");
		expect(number?.[1]).toBe("-0.25");
	});
});

describe("day.json", () => {
	test.each(results)("of the %s day reads back as it was, and obeys its schema", (_, result) => {
		const text = dayJson(result());
		expect(text.endsWith("}\n")).toBe(true);
		expect(JSON.parse(text)).toEqual(result());
		const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(dayJsonSchema);
		expect(validate(JSON.parse(text)) ? [] : validate.errors).toEqual([]);
	});

	test("is the same text however the keys were ordered", () => {
		const shuffled = (value: unknown): unknown => {
			if (Array.isArray(value)) return value.map(shuffled);
			if (typeof value !== "object" || value === null) return value;
			return Object.fromEntries(
				Object.entries(value)
					.toReversed()
					.map(([key, item]) => [key, shuffled(item)]),
			);
		};
		expect(dayJson(shuffled(troubledDay()) as DayResult)).toBe(dayJson(troubledDay())); // the same keys, by construction
		expect(dayJson(troubledDay()).startsWith('{\n  "format": "slackwater/day@1",\n  "scenario": {')).toBe(true);
	});

	test("refuses a number that JSON cannot hold, and says where", () => {
		const result = { ...quietDay(), trace: { ...quietDay().trace, events: Number.POSITIVE_INFINITY } };
		expect(() => dayJson(result)).toThrow("no JSON for Infinity at result.trace.events");
	});

	test("its schema refuses a wrong format, an unknown condition, a missing total and a probability above 1", () => {
		const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(dayJsonSchema);
		const good = JSON.stringify(troubledDay());
		const spoilt = (from: string | RegExp, to: string): boolean => {
			const text = good.replace(from, to);
			expect(text).not.toBe(good);
			return validate(JSON.parse(text));
		};
		expect(validate(JSON.parse(good))).toBe(true);
		expect(spoilt("slackwater/day@1", "slackwater/day@2")).toBe(false);
		expect(spoilt('"condition":"seal-leak"', '"condition":"something"')).toBe(false);
		expect(spoilt('"washes":', '"rinses":')).toBe(false);
		expect(spoilt(/"probability":0\.\d+/, '"probability":1.5')).toBe(false);
	});
});

describe("day.svg", () => {
	const { window } = new JSDOM("");
	const parse = (text: string): Document => new window.DOMParser().parseFromString(text, "image/svg+xml");

	test.each(results)("of the %s day is well-formed XML that draws every dressing", (_, result) => {
		const text = daySvg(result(), window.document);
		const file = expectSoundSvg(text, new window.DOMParser());
		expect(text.startsWith('<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg"')).toBe(
			true,
		);
		expect(file.querySelectorAll("svg[role=img]").length).toBe(result().dressings.length);
		expect(file.querySelectorAll("path.water").length).toBe(2 * result().dressings.length);
	});

	test("holds its own colours for light and dark, and paper behind them", () => {
		const text = daySvg(quietDay(), window.document);
		expect(text).toContain("prefers-color-scheme:dark");
		expect(parse(text).querySelectorAll("rect.paper").length).toBe(1);
		expect(text).not.toMatch(/https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
	});

	test("holds no character that XML forbids", () => {
		expect(daySvg(hostileResult(), window.document)).not.toMatch(
			/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u,
		);
	});

	test("of a day with no dressing is still a picture", () => {
		const empty = { ...dayResult([]), dressings: [] };
		expect(parse(daySvg(empty, window.document)).documentElement.localName).toBe("svg");
	});
});
