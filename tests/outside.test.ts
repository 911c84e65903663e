import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, test } from "vitest";
import { root } from "./source.ts";
import { blocksOf } from "./uses-of-src.ts";

// An outside check holds the program against what the world knows. A block that touches nothing of the program holds a
// formula of the tests, or a package, against it: that guards an oracle, and stands in tests/oracles.

const filesIn = (folder: string) =>
	readdirSync(join(root, "tests", folder))
		.filter((name) => name.endsWith(".test.ts"))
		.map((name) => join(root, "tests", folder, name))
		.map((path) => ({ name: basename(path), path, text: readFileSync(path, "utf8") }));

describe.each(filesIn("outside"))("$name", ({ path, text }) => {
	test("imports from the program", () => {
		expect(text).toMatch(/\bfrom "(?:\.\.\/)+src\/[^"]+"/u);
	});

	test("uses something of the program in every block", () => {
		const blocks = blocksOf(text, path);
		expect(blocks.length).toBeGreaterThan(0);
		expect(blocks.filter(({ usesSrc }) => !usesSrc).map(({ title }) => title)).toEqual([]);
	});
});

test("no oracle is counted as an outside check: what guards one looks at nothing of the program", () => {
	const guards = filesIn("oracles");
	expect(guards.length).toBeGreaterThan(4);
	for (const { path, text } of guards) {
		expect(text.replaceAll(/\s+(?:\/\/ )?/gu, " "), path).toContain("Nothing here looks at the program");
		for (const { title, usesSrc } of blocksOf(text, path)) expect(usesSrc, `${path}: ${title}`).toBe(false);
	}
});

test("no value is from a page where anybody uploads or sells homework", () => {
	const pages =
		/homework|qammunity|nursingpaper|coursehero|scribd|justaaa|pdfcoffee|fliphtml|issuhub|studmed|studocu|chegg|slideshare|docplayer|brainly/iu;
	for (const { name, text } of [...filesIn("outside"), ...filesIn("oracles")]) expect(text, name).not.toMatch(pages);
});

describe("a block that only seems to use the program", () => {
	const at = join(root, "tests", "outside", "made-up.test.ts");
	const used = (text: string) => blocksOf(text, at).map(({ usesSrc }) => usesSrc);

	test("by a name of its own, by what a package gives, or by the mention of a key, is seen through", () => {
		expect(
			used(`
				import normal from "@stdlib/stats-base-dists-normal-quantile";
				import { convert } from "../../src/physics/index.ts";
				import { erlangB } from "../oracles/erlang.ts";
				import { meanOf } from "./batches.ts";
				const known = { convert: 1 };
				test("a package", () => { expect(normal(0.5, 0, 1)).toBe(0); });
				test("an oracle", () => { expect(erlangB(1, 1)).toBe(0.5); });
				test("a key", () => { expect(known.convert).toBe(1); });
				test("a name", () => { const convert = (x: number) => x; expect(convert(1)).toBe(1); });
				test("a sum", () => { expect(meanOf([1, 3])).toBe(2); });
			`),
		).toEqual([false, false, false, false, false]);
	});

	test("and one that does, by however many steps, is believed", () => {
		expect(
			used(`
				import { convert } from "../../src/physics/index.ts";
				import { WaitingLine } from "./waiting-line.ts";
				const pascals = (x: number) => convert(x, "mmHg", "Pa");
				const table = [1, 2].map((x) => [x, pascals(x)]);
				test("at once", () => { expect(convert(1, "h", "min")).toBe(60); });
				test("through a function", () => { expect(pascals(1)).toBeCloseTo(133.3, 1); });
				test.each(table)("through its table", (x, p) => { expect(p).toBeGreaterThan(x); });
				test("through a file of the tests", () => { new WaitingLine({ servers: 1, gap: () => 1, service: () => 1 }); });
			`),
		).toEqual([true, true, true, true]);
	});
});
