import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { expect, test } from "vitest";
import { bare, root } from "./source.ts";

/** A sign that a test may look at the clock on the wall, or counts on a machine that has nothing else to do. */
const signs: readonly (readonly [name: string, pattern: RegExp])[] = [
	[
		"reads the clock",
		/\bperformance\s*\.\s*(?:now|mark|measure)\b|\bDate\.now\b|\bnew Date\(\)|\bhrtime\b|\bconsole\.time\b|%[UER]\b|\btimeLimit\b|AfterTimeLimit\b/u,
	],
	["reads the processor's time", /\b(?:cpuUsage|resourceUsage)\b/u],
	["waits for a fixed time", /\bwaitForTimeout\b|\bsetTimeout\(|\bsleep\b|timers\/promises|\bAtomics\.wait\b/u],
	["gives up after a time", /\b\w*[tT]imeout\w*:\s*[\d_]+|\.setDefault\w*Timeout\(\s*[\d_]/u],
	["gives a test less time than all have", /\}, (?:\d{4,}|\d+(?:_\d+)+)\);?$/u],
];

/** Where such a sign may stand, and why nothing fails on a busy machine for it. */
const allowed: readonly (readonly [file: string, sign: string, why: string])[] = [
	[
		"browser/page-tab.ts",
		"waits for a fixed time",
		"a timer behind a timer of the page's own, in one queue: the order counts",
	],
	["browser/page-tab.ts", "gives up after a time", "the button is pressed again, as anybody would"],
	[
		"cli/interrupted.ts",
		"waits for a fixed time",
		"only where the processor time of a process cannot be seen, and nothing is held against it",
	],
	["cli/kills.test.ts", "reads the clock", "to choose random moments of a run; nothing is held against it"],
	["cli/kills.test.ts", "waits for a fixed time", "for a random moment: whichever comes must do no harm"],
	["cluster/kubernetes.test.ts", "gives up after a time", "a wait without an end; every answer is there at once"],
	[
		"cluster/slurm.test.ts",
		"gives up after a time",
		"a queue that never starts; two small runs fit into five minutes many times",
	],
	["architecture.test.ts", "reads the clock", "is a list of such names itself"],
	["cli/day.test.ts", "reads the clock", "to see that what it says is in no output"],
	["cli/streams.test.ts", "waits for a fixed time", "a reader that is slow: the slower, the better"],
	["mutation/setup.ts", "reads the clock", "a mutant that never ends; no part of npm test"],
	[
		"fuzz/bounded.ts",
		"reads the processor's time",
		"the promise of the program is in processor time, and ten times what it takes",
	],
	["fuzz/scenario.test.ts", "gives a test less time than all have", "more than all have"],
	["fuzz/shard.test.ts", "gives a test less time than all have", "more than all have"],
	["fuzz/unfinished.test.ts", "gives a test less time than all have", "more than all have"],
	[
		"mutation/vitest.config.ts",
		"gives up after a time",
		"a mutant that never ends counts as noticed; no part of npm test",
	],
	["processor-time.ts", "reads the processor's time", "of one work in units of another on the same machine"],
	["ward/growth.test.ts", "reads the processor's time", "of the same work at two sizes, as a ratio"],
];

const folder = join(root, "tests");
const own = "wall-clock.test.ts";
const texts = readdirSync(folder, { recursive: true, encoding: "utf8" })
	.filter((name) => /\.(?:ts|mts|mjs)$/u.test(name) && name !== own)
	.map((name) => name.split(sep).join("/"))
	// A benchmark is for the clock.
	.filter((name) => !name.startsWith("benchmarks/"))
	.map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));

const signsIn = (text: string) =>
	bare(text)
		.split("\n")
		.flatMap((line, at) =>
			signs.filter(([, pattern]) => pattern.test(line)).map(([sign]) => ({ sign, at: at + 1, line: line.trim() })),
		);

const found = texts.flatMap(({ name, text }) => signsIn(text).map((sign) => ({ name, ...sign })));

test("no test looks at the clock on the wall: a machine that is busy with other things fails none", () => {
	expect(texts.length).toBeGreaterThan(150);
	const objections = found
		.filter(({ name, sign }) => !allowed.some(([file, may]) => file === name && may === sign))
		.map(({ name, sign, at, line }) => `${name}:${at} ${sign}: ${line}`);
	expect(objections).toEqual([]);
});

test("what is allowed is still there", () => {
	for (const [file, sign] of allowed)
		expect(
			found.some((one) => one.name === file && one.sign === sign),
			`${file} ${sign}`,
		).toBe(true);
});

test("the signs are seen, and nothing else", () => {
	for (const line of [
		"const began = performance.now();",
		"expect(Date.now() - began).toBeLessThan(4000);",
		"const t = process.hrtime.bigint();",
		"const before = process.cpuUsage();",
		"await page.waitForTimeout(400);",
		"setTimeout(() => child.kill(), 1500)",
		"run(command, { timeout: 5_000 });",
		"\t}, 30_000);",
		"fc.assert(property, { interruptAfterTimeLimit: 100 });",
		"context.setDefaultTimeout(3000);",
	])
		expect(signsIn(line), line).toHaveLength(1);
	for (const line of [
		"expect(time).toBeLessThan(limit);",
		"// performance.now() would not do",
		'expect(text).not.toContain("Date.now");',
		"expect(values).toEqual([1, 2, 3]);",
		"page.waitForEvent(name, { timeout: patienceMs })",
	])
		expect(signsIn(line), line).toEqual([]);
});
