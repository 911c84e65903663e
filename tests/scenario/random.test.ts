import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { checkScenario, expectedEvents, fullScenario, readScenario, sentence } from "../../src/scenario/index.ts";
import { readings } from "../processor-time.ts";
import { rawScenario } from "./arbitrary.ts";
import { meaning } from "./meant.ts";
import { least, type Raw } from "./sample.ts";

/** Whatever a text is, it is read or refused in words, and with little work. */
function survives(text: string) {
	const work = readings(() => {
		const { scenario, problems } = checkScenario(text);
		expect(scenario === null).toBe(problems.length > 0);
		for (const problem of problems) expect(sentence(problem)).not.toMatch(/undefined|\[object/u);
	});
	expect(work).toBeLessThan(1000);
}

/** Every place of a tree, as a way to put something else there. */
function places(node: Raw): ((value: unknown) => void)[] {
	if (typeof node !== "object" || node === null) return [];
	return Object.keys(node).flatMap((key) => [
		(value: unknown) => {
			node[key] = value;
		},
		...places(node[key]),
	]);
}

describe("scenarios at random", () => {
	test("read the same from YAML, from JSON and with every default filled in", () => {
		fc.assert(
			fc.property(rawScenario, (raw) => {
				const yaml = stringify(raw);
				const scenario = readScenario(yaml);
				expect(readScenario(JSON.stringify(raw))).toEqual(scenario);
				expect(readScenario(stringify(raw, { collectionStyle: "flow" }), { format: "yaml" })).toEqual(scenario);
				expect(meaning(readScenario(fullScenario(yaml)))).toEqual(meaning(scenario));
			}),
			{ numRuns: 60 },
		);
	});

	test("have a finite number of expected events, more for a longer horizon", () => {
		fc.assert(
			fc.property(rawScenario, (raw) => {
				const [short, long] = ["24 h", "96 h"].map((horizon) =>
					expectedEvents(readScenario(stringify({ ...raw, horizon }))),
				);
				expect(short).toBeGreaterThan(0);
				expect(long).toBeGreaterThan(short ?? 0);
				expect(long).toBeLessThan(2_000_000);
			}),
			{ numRuns: 30 },
		);
	});

	test("with anything in any place are read or refused in words", () => {
		fc.assert(
			fc.property(
				rawScenario,
				fc.nat(),
				fc.oneof(
					fc.jsonValue({ maxDepth: 3 }),
					fc.constantFrom(
						undefined,
						"",
						"none",
						"5 min",
						"-1 h",
						"0 mL",
						"1e308 L",
						"NaN",
						-1,
						0,
						1e300,
						"__proto__",
						"constructor",
						{},
						[],
						[[]],
					),
				),
				(raw, at, value) => {
					const all = places(raw);
					all[at % all.length]?.(value);
					survives(JSON.stringify(raw));
				},
			),
			{ numRuns: 200 },
		);
	});

	test("with characters struck out or put in are read or refused in words", () => {
		fc.assert(
			fc.property(
				fc.array(
					fc.tuple(
						fc.nat(least.length),
						fc.nat(4),
						fc.oneof(
							fc.string({ maxLength: 4 }),
							fc.constantFrom(
								"&a ",
								"*a",
								"\n",
								"  ",
								"- ",
								": ",
								"{",
								"]",
								"!!map ",
								"|",
								"'",
								'"',
								"%",
								"---\n",
								"\t",
								"?",
							),
						),
					),
				),
				(edits) => {
					let text = least;
					for (const [at, gone, put] of edits) text = text.slice(0, at) + put + text.slice(at + gone);
					survives(text);
				},
			),
			{ numRuns: 400 },
		);
	});

	test("and text that is no scenario at all too", () => {
		fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 300 }), survives), { numRuns: 200 });
		fc.assert(
			fc.property(
				fc.array(
					fc.constantFrom(
						"a",
						":",
						" ",
						"\n",
						"-",
						"[",
						"]",
						"{",
						"}",
						",",
						"#",
						"&b",
						"*b",
						"!c",
						"|",
						">",
						"'",
						'"',
						"?",
						"  ",
						"\t",
						"%",
						"@",
					),
				),
				(parts) => survives(parts.join("")),
			),
			{ numRuns: 400 },
		);
	});
});
