import { describe, expect, test } from "vitest";
import {
	checkScenario,
	expectedEvents,
	maxExpectedEvents,
	maxScenarioBytes,
	readScenario,
	scenarioText,
	UnusableInput,
} from "../../../src/scenario/index.ts";
import { readings } from "../../processor-time.ts";
import { changed, faultOf, faults, least, readChanged } from "../sample.ts";

/**
 * Work that a text of up to a megabyte may make before it is refused, in readings of the least scenario: some take 200, what
 * a parser choked on once took as good as for ever.
 */
const mostReadings = 4000;
const deep = 20_000;
const mega = (piece: string) => piece.repeat(Math.floor(999_000 / piece.length));

const bomb = [
	"a0: &a0 [x, x, x, x, x, x, x, x, x, x]",
	...Array.from({ length: 20 }, (_, i) => {
		const alias = `*a${i}`;
		return `a${i + 1}: &a${i + 1} [${Array(10).fill(alias).join(", ")}]`;
	}),
].join("\n");

/** Texts that a parser may choke on, and what is said about them. */
const hostile: [string, string, RegExp][] = [
	["nothing at all", "", /an empty file/u],
	["white space", " \n\t\n", /an empty file/u],
	["a comment alone", "# nothing\n", /an empty file/u],
	["a null", "~", /a scenario, a map/u],
	["a word", "hello", /a map with the keys.*received "hello"/u],
	["a number", "7", /received 7/u],
	["a bare list", "- 1\n- 2\n", /received a list/u],
	["a map of nothing", "{}", /slackwater .*received nothing/u],
	["two documents", `${least}---\n${least}`, /one document, received 2/u],
	[
		"a repeated key",
		least.replace("title: Least", "title: Least\ntitle: More"),
		/title \(line 3\): expected each key once/u,
	],
	["a map that says how long it is", "slackwater: 1\ndressings: { length: { a: 1 } }\n", /dressings .*received a map/u],
	["a schema that says how long it is", `${least}$schema: { length: { a: 1 } }\n`, /\$schema.*received a map/u],
	["a repeated key in JSON", '{"slackwater":1,"slackwater":1}', /slackwater .*each key once/u],
	[
		"a key of the prototype",
		least.replace("title: Least", "title: Least\n__proto__: { a: 1 }"),
		/__proto__.*another name/u,
	],
	["a key of the prototype in JSON", '{"__proto__":{"title":"x"}}', /__proto__.*another name/u],
	[
		"a dressing of the prototype",
		changed((raw) => {
			raw.dressings[0].id = "__proto__";
		}),
		/dressings\[0\]\.id .*another name/u,
	],
	["a key that is a number", `${least}5: 6\n`, /keys that are text, received 5/u],
	["a key that is a list", `${least}? [a, b]\n: 6\n`, /keys that are text, received a list/u],
	["a key that is nothing", `${least}? \n: 6\n`, /keys that are text/u],
	["a tag of the host", least.replace("Least", "!!js/function 'x'"), /title .*plain data, received the tag/u],
	["a tag of one's own", least.replace("Least", "!mine x"), /title .*plain data, received the tag !mine/u],
	["an alias to nothing", least.replace("Least", "*gone"), /title .*an anchor that stands before it, received \*gone/u],
	["an alias in itself", "a: &x { b: *x }", /alias of a map or list that it stands in/u],
	["a bomb of aliases", bomb, /at most 11000 values.*alias counts/u],
	["a merge key", `${least}<<: { seed: x }\n`, /<<.*one of the keys/u],
	["a NUL byte", least.replace("Least", "Le\u0000ast"), /control character \(U\+0000\)/u],
	["an escape character", least.replace("Least", "Le\u001B[31mast"), /control character \(U\+001B\)/u],
	["a control character of the second set", least.replace("Least", "Le\u0085ast"), /control character \(U\+0085\)/u],
	["an escaped NUL", least.replace("Least", '"\\0"'), /title .*text with a control character/u],
	["half a surrogate pair", least.replace("Least", "\uD800"), /half of a surrogate pair/u],
	[
		"an escaped half of a surrogate pair",
		least.replace("Least", '"\\ud800"'),
		/title .*text with a control character/u,
	],
	["a byte order mark inside", least.replace("Least", "Le\uFEFFast"), /byte order mark inside/u],
	["not a number", least.replace("slackwater: 1", "slackwater: .nan"), /slackwater .*received NaN/u],
	["an endless number", `${least}replications: .inf\n`, /replications .*received Infinity/u],
	["a number too large for JSON", '{"slackwater":1e999}', /slackwater .*received Infinity/u],
	["JSON with a comma too many", '{"slackwater":1,}', /JSON/u],
	["JSON cut off", '{"slackwater":1', /readable JSON, received a fault/u],
	["JSON behind which something stands", '{"slackwater":1} x', /JSON/u],
	["YAML that is out of line", "a: 1\n b: 2\n", /readable YAML, received a fault/u],
	["a quote that never ends", `${least}seed: "x`, /a fault/u],
	["flow lists, very deep", "[".repeat(deep), /32 deep/u],
	["flow lists, very deep and closed", "[".repeat(deep) + "]".repeat(deep), /32 deep/u],
	["JSON maps, very deep", `${'{"a":'.repeat(deep)}1${"}".repeat(deep)}`, /32 deep/u],
	["flow maps without braces, very deep", `[${"a: ".repeat(deep)}`, /.+/u],
	["flow keys, very deep", `[${"? ".repeat(deep)}`, /32 deep/u],
	["block lists on one line, very deep", `${"- ".repeat(deep)}x`, /32 deep/u],
	["block maps on one line, very deep", `${"a: ".repeat(deep)}x`, /32 deep/u],
	["block keys on one line, very deep", `${"? ".repeat(deep)}x`, /32 deep/u],
	[
		"block maps, deeper by a space a line",
		Array.from({ length: 1300 }, (_, i) => `${" ".repeat(i)}a:`).join("\n"),
		/32 deep/u,
	],
	[
		"block lists, deeper by a space a line",
		Array.from({ length: 1300 }, (_, i) => `${" ".repeat(i)}-`).join("\n"),
		/32 deep/u,
	],
	[
		"lists 40 deep in blocks",
		Array.from({ length: 40 }, (_, i) => `${" ".repeat(i)}a:`).join("\n"),
		/at most 11000 values, 32 deep/u,
	],
	["a deep list in an otherwise good file", `${least}seed: ${"[".repeat(40)}${"]".repeat(40)}\n`, /32 deep/u],
];

describe("hostile input is refused in words", () => {
	test.each(hostile)("%s", (_, text, sentence) => {
		const work = readings(() => {
			expect(faults(text).join("\n")).toMatch(sentence);
		});
		expect(work).toBeLessThan(mostReadings);
	});

	test.each([
		"a",
		"a: ",
		"a: b\n",
		"- ",
		"-\n",
		"[",
		"[]",
		"{}",
		'"',
		"'",
		"&a ",
		"!a ",
		"*a ",
		"%a\n",
		"---\n",
		"...\n",
		"#\n",
		"a: |\n",
		"? ",
		"?\n",
		":\n",
		"]",
		"}",
		"- ]\n",
		"&a !b ",
		"{[(",
		'\\"',
		"\t",
		"\n",
		"\r",
		"`",
		"|",
		"a:\n\n",
		",",
	])("a megabyte of %j is refused with little work", (piece) => {
		for (const lead of ["", "["]) {
			const work = readings(() => {
				const { scenario, problems } = checkScenario(mega(piece).replace(/^./u, lead || "$&"));
				expect(scenario).toBeNull();
				expect(problems.length).toBeGreaterThan(0);
			});
			expect(work).toBeLessThan(mostReadings);
		}
	});

	test("a file over a megabyte is refused by its size", () => {
		const text = `${least}# ${"x".repeat(maxScenarioBytes)}`;
		expect(faults(text)).toEqual([`the file: expected at most 1000000 bytes, received ${text.length} bytes`]);
	});

	test("its size is that of its bytes", () => {
		expect(faults(`${least}# ${"ä".repeat(600_000)}`).join()).toMatch(/at most 1000000 bytes/u);
	});

	test("bytes that are no UTF-8 are refused with their line", () => {
		const bytes = new TextEncoder().encode(least.replace("Least", "L?st"));
		const broken = bytes.map((byte) => (byte === 63 ? 0xe4 : byte));
		expect(faults(scenarioText(broken))).toEqual([
			"the file (line 2): expected text in UTF-8, received a byte that is not UTF-8",
		]);
	});

	test("a file in UTF-16 is refused", () => {
		const bytes = new Uint8Array(Buffer.from(`\uFEFF${least}`, "utf16le"));
		expect(checkScenario(scenarioText(bytes)).scenario).toBeNull();
	});

	test("what is thrown is a list of problems and nothing of the program", () => {
		for (const [, text] of hostile) {
			expect(() => readScenario(text)).toThrow(UnusableInput);
			for (const line of faults(text)) {
				expect(line).not.toMatch(/\n|\bat .*\.[jt]s|undefined|\[object|RangeError|TypeError/u);
				expect(line.length).toBeLessThan(800);
			}
		}
	});

	test("a sentence repeats no more than sixty characters of the file", () => {
		expect(
			faultOf((raw) => {
				raw.start = "9".repeat(5000);
			}).length,
		).toBeLessThan(200);
	});
});

describe("an endless scenario", () => {
	test("is refused by the events that it would lead to", () => {
		expect(
			faultOf((raw) => {
				raw.horizon = "28 d";
				raw.dressings = Array.from({ length: 100 }, (_, i) => ({
					...raw.dressings[0],
					id: `d${i}`,
					regimen: { depth: "-125 mmHg", fill: "0.1 mL", dwell: "0.1 min", suction: "1 min" },
				}));
			}),
		).toMatch(/^horizon .*at most 2000000 events a replication, received one of about/u);
	});

	test("is refused too where an assumption makes breaches without end", () => {
		expect(
			faultOf((raw) => {
				raw.dressings[0].regimen.dwell = "24 h";
				raw.horizon = "28 d";
				raw.assumptions = { "breach.wetScale": "1 min", "breach.wetShape": 20 };
			}),
		).toMatch(/^horizon .*events a replication/u);
	});

	test("a hundred ordinary dressings over a fortnight are not", () => {
		const scenario = readChanged((raw) => {
			raw.horizon = "14 d";
			raw.dressings = Array.from({ length: 100 }, (_, i) => ({ ...raw.dressings[0], id: `d${i}` }));
		});
		expect(expectedEvents(scenario)).toBeLessThan(maxExpectedEvents);
	});

	test("twice the horizon is about twice the events", () => {
		const of = (horizon: string) =>
			expectedEvents(
				readChanged((raw) => {
					raw.horizon = horizon;
				}),
			);
		const ratio = of("28 d") / of("14 d");
		expect(ratio).toBeGreaterThan(1.9);
		expect(ratio).toBeLessThan(2.3);
	});
});
