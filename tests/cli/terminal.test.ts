import { join } from "node:path";
import { stripVTControlCharacters } from "node:util";
import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { spokenWords } from "../../src/cli/commands/spoken-words.ts";
import { terminalOf } from "../../src/cli/terminal/terminal.ts";
import { mainDifferences } from "../../src/report/compare/pairs/difference-rows.ts";
import { pairsOf } from "../../src/report/compare/pairs/pairs.ts";
import { answers } from "../../src/report/day/answers/answers.ts";
import { dressingParts } from "../../src/report/day/dressing/dressing-parts.ts";
import { compareHtml, reportHtml, supplyHtml, sweepHtml } from "../../src/report/index.ts";
import { type Spoken, spokenComparison, spokenDay, spokenSupply, spokenSweep } from "../../src/report/spoken.ts";
import { sentenceText } from "../../src/words/index.ts";
import { pairedDay, troubledDay } from "../charts/fixture.ts";
import { comparison } from "../report/compare/compare-fixture.ts";
import { sweep } from "../report/sweep-fixture.ts";
import { smallResult } from "../ward/small-result.ts";
import { smallWard } from "../ward/small-ward.ts";
import { canTerminal, inTerminal, program } from "./in-terminal.ts";
import { here, type Ran, scenario, temporary, written } from "./program.ts";

const { document } = new JSDOM("").window;

/** The text of what a report's page shows at a place, blanks as a terminal has them. */
const shown = (html: string, selector: string): string[] =>
	[...new JSDOM(html).window.document.querySelectorAll(selector)].map((element) =>
		(element.textContent ?? "").replaceAll("\u00A0", " "),
	);

/** Words broken into lines, on one line again. */
const flowing = (text: string) => text.replaceAll(/\s*\n\s*/gu, " ");

/** A day of two dressings, one of which has a caution of its own. */
const twoDressings = () => {
	const result = pairedDay();
	const [, { id: dressing }] = result.scenario.dressings;
	const own = { code: "deep", text: "Deeper than is usual there.", dressing };
	return { ...result, cautions: [...result.cautions, own] };
};

const spokenOfAll: readonly (readonly [string, () => Spoken])[] = [
	["a day", () => spokenDay(troubledDay())],
	["a day of two dressings", () => spokenDay(twoDressings())],
	["a comparison", () => spokenComparison(comparison({}).result)],
	["a sweep", () => spokenSweep(sweep())],
	["a ward", () => spokenSupply(smallResult())],
];

describe("which terminal it is", () => {
	test("a pipe or a file is none", () => {
		const pipe = { isTTY: false, columns: 120 };
		expect(terminalOf(pipe, {})).toBeNull();
	});

	test("it is as wide as it says, and 80 columns where it says nothing", () => {
		const screen = (columns: number) => ({ isTTY: true, columns });
		expect(terminalOf(screen(132), {})?.columns).toBe(132);
		expect(terminalOf(screen(0), {})?.columns).toBe(80);
		expect(
			// a stream that does not know its width has none
			terminalOf({ isTTY: true } as NodeJS.WriteStream, {})?.columns,
		).toBe(80);
	});

	test("nothing is bold where NO_COLOR is set, or where the terminal is dumb", () => {
		const bold = (env: Record<string, string>) => terminalOf({ isTTY: true, columns: 80 }, env)?.bold;
		expect(bold({ TERM: "xterm" })).toBe(true);
		expect(bold({ TERM: "xterm", NO_COLOR: "" })).toBe(true); // no-color.org: not empty
		expect(bold({ TERM: "xterm", NO_COLOR: "1" })).toBe(false);
		expect(bold({ TERM: "dumb" })).toBe(false);
	});
});

describe("what a terminal is told are the report's own sentences", () => {
	const told = (spoken: Spoken) => flowing(spokenWords(spoken, { columns: 80, bold: false }));

	test("of a day, those of its answers and the cautions of its dressings", () => {
		const result = twoDressings();
		const text = told(spokenDay(result));
		const said = shown(reportHtml(result, document), "[aria-labelledby*=answers-heading] li");
		expect(said.length).toBeGreaterThan(6);
		for (const sentence of said) expect(text).toContain(sentence);
		for (const { id } of result.scenario.dressings) expect(text).toContain(` Dressing ${id} - `);
		expect(text).toContain("! Deeper than is usual there.");
		expect(told(spokenDay(troubledDay()))).not.toContain("Dressing");
	});

	test("of a comparison, the differences of its first page with their verdicts", () => {
		const { result, drawings } = comparison({});
		const text = told(spokenComparison(result));
		const [pair] = pairsOf(result);
		const main = mainDifferences(pair);
		expect(text).toContain(main.why);
		const html = compareHtml(result, drawings, document);
		const rows = shown(html, ".brief .difference-rows tbody tr");
		const sentences = spokenComparison(result).parts[0].sentences.slice(0, -1);
		expect(sentences.length).toBe(main.differences.length);
		expect(rows.length).toBe(sentences.length);
		sentences.forEach((sentence, i) => {
			// The row's cells are the sentence's words: measure, both means, verdict.
			const verdict = sentence.find((piece) => typeof piece !== "string");
			expect(rows[i]).toContain(sentenceText([verdict ?? ""]));
			expect(rows[i].startsWith(sentenceText(sentence).split(":")[0])).toBe(true);
			expect(text).toContain(sentenceText(sentence));
		});
		expect(text.startsWith(shown(html, "h1")[0])).toBe(true);
	});

	test("of a sweep and of a ward, all of their answers", () => {
		const [grid, ward] = [sweep(), smallResult()];
		for (const [text, html] of [
			[told(spokenSweep(grid)), sweepHtml(grid, document)],
			[told(spokenSupply(ward)), supplyHtml(ward, document)],
		]) {
			const said = shown(html, "[aria-labelledby=answers-heading] li");
			expect(said.length).toBeGreaterThan(3);
			for (const sentence of said) expect(text).toContain(sentence);
		}
	});

	test.each(spokenOfAll)("of %s, with the caution that every report carries", (_, spoken) => {
		expect(told(spoken())).toContain("For planning and teaching, not for");
	});
});

describe.each(spokenOfAll)("the lines of %s", (_, make) => {
	const spoken = make();
	test.each([24, 60, 80, 200])("are no longer than the %d columns there are", (columns) => {
		const text = spokenWords(spoken, { columns, bold: false });
		for (const line of text.split("\n"))
			if ([...line].length > columns)
				expect(line.trim().replace(/^[-!] /u, "")).not.toMatch(/\s(?!mL|L|min|h|d|s|%|mmHg)/u);
		expect(flowing(text)).toBe(flowing(spokenWords(spoken, { columns: 1e6, bold: false })));
	});

	test("are the same with and without bold, which is set for what is strong alone", () => {
		const plain = spokenWords(spoken, { columns: 50, bold: false });
		const bold = spokenWords(spoken, { columns: 50, bold: true });
		expect(plain).not.toContain("\u001B");
		expect(stripVTControlCharacters(bold)).toBe(plain);
		const set = flowing(
			bold
				.split("\u001B[1m")
				.slice(1)
				.map((text) => text.split("\u001B[22m")[0])
				.join(" "),
		);
		const strong = [
			spoken.title,
			...spoken.parts.flatMap(({ heading, sentences }) => [
				heading ?? "",
				...sentences.flatMap((sentence) => sentence.map((piece) => (typeof piece === "string" ? "" : piece.strong))),
			]),
		];
		const words = (text: string) => text.split(/[\s\u00A0]+/u).filter((w) => w !== "");
		expect(words(set)).toEqual(words(strong.join(" ")));
	});
});

test("what would steer a terminal is written as its code", () => {
	const words = spokenWords(
		{ title: "a\u001B[2Jb", parts: [{ heading: null, sentences: [["c\u202Ed"]], cautions: [] }], cautions: [] },
		{ columns: 80, bold: false },
	);
	expect(words).toContain("a\\u{1b}[2Jb");
	expect(words).toContain("c\\u{202e}d");
});

/** Runs the program in this process as if its standard output were a terminal of so many columns. */
async function asTerminal(columns: number, ...words: string[]): Promise<Ran> {
	const { stdout } = process;
	const before = { isTTY: stdout.isTTY, columns: stdout.columns };
	Object.assign(stdout, { isTTY: true, columns });
	try {
		return await here(...words);
	} finally {
		Object.assign(stdout, before);
	}
}

describe("each command that answers", () => {
	const folder = temporary();
	const ward = written(folder, "ward.yaml", smallWard());
	const commands: readonly (readonly [string, readonly string[], RegExp])[] = [
		["day", [scenario("thigh-short-dwell"), "--replications", "50"], /^- /mu],
		[
			"compare",
			[scenario("compare-thigh"), "--replications", "50", "--rests-on", "off", "--between", "short,long"],
			/: short .*, long /u,
		],
		[
			"sweep",
			[scenario("thigh-short-dwell"), "--replications", "50", "--dwell", "5 min, 10 min"],
			/None of them is the best of all/u,
		],
		["supply", [ward], /takes, in\s+eight\s+of\s+ten\s+replications/u],
	];

	test.each(commands)(
		"%s tells a terminal its answers, then where the report is; a pipe and --quiet hear what they heard before",
		async (name, words, answer) => {
			const out = join(folder, name);
			const place = `The report is in ${join(out, "report.html")}\n`;
			const all = [name, ...words, "--out", out];
			const told = await asTerminal(60, ...all);
			expect(told.status).toBe(0);
			expect(told.out.endsWith(`\n\n${place}`)).toBe(true);
			expect(told.out).toMatch(answer);
			const lines = stripVTControlCharacters(told.out.slice(0, -place.length)).split("\n");
			expect(lines.length).toBeGreaterThan(8);
			for (const line of lines) expect([...line].length).toBeLessThan(61);
			expect((await here(...all)).out).toBe(place);
			expect((await asTerminal(60, ...all, "--quiet")).out).toBe("");
			const json = await asTerminal(60, ...all, "--json");
			expect(json.out).toBe((await here(...all, "--json")).out);
			expect(JSON.parse(json.out)).toHaveProperty("format");
		},
	);

	test("gather tells the answers of the whole", async () => {
		const out = join(folder, "gathered");
		// A part answers nothing.
		for (const shard of ["1/2", "2/2"])
			expect((await asTerminal(60, "supply", ward, "--shard", shard, "--out", folder)).out).toMatch(
				/^The part is in .*\n$/u,
			);
		const parts = [1, 2].map((part) => join(folder, `part-${part}-of-2.json`));
		const told = await asTerminal(60, "gather", ...parts, "--out", out);
		expect(told.out).toMatch(/eight\s+of\s+ten\s+replications[\s\S]*\n\nThe report is in /u);
	});

	test("drill debriefs in lines as wide as the terminal, and as ever in a pipe", async () => {
		const acts = written(folder, "acts.txt", "next\nlook suction-line\nend\n");
		const all = ["drill", scenario("rehearse-02"), "--script", acts];
		const longest = ({ out }: Ran) => Math.max(...out.split("\n").map((line) => [...line].length));
		const piped = await here(...all);
		const [narrow, wide] = [await asTerminal(50, ...all), await asTerminal(160, ...all)];
		expect(narrow.out).toContain("DEBRIEF");
		expect(longest(narrow)).toBeLessThanOrEqual(50);
		expect(longest(piped)).toBeGreaterThan(80);
		expect(longest(piped)).toBeLessThanOrEqual(100);
		expect(longest(wide)).toBeGreaterThan(100);
		expect(flowing(narrow.out)).toBe(flowing(piped.out));
	});
});

describe.skipIf(!canTerminal)("in a real terminal", () => {
	const folder = temporary();
	const out = join(folder, "thigh");
	const words = ["day", scenario("thigh-short-dwell"), "--replications", "50", "--out", out];
	const result = async () => JSON.parse((await here(...words.slice(0, 4), "--json")).out);

	test("a day is told in its columns, what is strong in bold", async () => {
		const told = inTerminal(program(...words), { columns: 72 });
		expect(told.status).toBe(0);
		expect(told.text).toBe(
			`${spokenWords(spokenDay(await result()), { columns: 72, bold: true })}The report is in ${join(out, "report.html")}\n`,
		);
		const [parts] = dressingParts(await result());
		const first = sentenceText(answers(parts)[0]);
		expect(flowing(stripVTControlCharacters(told.text))).toContain(first);
	});

	test("without bold where NO_COLOR is set", () => {
		const told = inTerminal(program(...words), { columns: 72, env: { NO_COLOR: "1" } });
		expect(told.text).not.toContain("\u001B[1m");
		expect(told.text).toContain("The report is in ");
	});

	test("through npm, as npm start runs it", () => {
		written(
			folder,
			"package.json",
			JSON.stringify({
				scripts: {
					start: program(...words)
						.map((w) => `"${w}"`)
						.join(" "),
				},
			}),
		);
		const told = inTerminal(["npm", "start", "--silent"], { columns: 100, cwd: folder });
		expect(told.status).toBe(0);
		expect(told.text).toContain("\u001B[1m");
		expect(told.text.trimEnd().split("\n").at(-1)).toBe(`The report is in ${join(out, "report.html")}`);
	});
});

test("npm start hands the terminal on: the day is its last word, and nothing takes what it says", async () => {
	const { default: manifest } = await import("../../package.json", { with: { type: "json" } });
	const last = manifest.scripts.start.split("&&").at(-1) ?? "";
	expect(last).toMatch(/main\.js day /u);
	expect(last).not.toMatch(/[|>]|--quiet|--json/u);
});
