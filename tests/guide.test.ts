import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { files, root, textOf } from "./source.ts";

const guide = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
const quoted = [...guide.matchAll(/`([^`\n]+)`/gu)].map(([, words = ""]) => words);

/** The cells of a column of the table under a heading, counted from 0. */
function cells(heading: string, column: number): string[] {
	const [, rest = ""] = guide.split(`\n## ${heading}\n`);
	const [own = ""] = rest.split("\n## ");
	return own
		.split("\n")
		.filter((line) => line.startsWith("|") && !line.startsWith("|---"))
		.slice(1)
		.map((line) => line.split("|")[column + 1]?.trim() ?? "");
}

test("every file that the guide names is there", () => {
	const paths = quoted.filter((words) => /^(?:src|tests|scenarios)\/[\w./-]*$/u.test(words));
	expect(paths.length).toBeGreaterThan(30);
	expect(paths.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

test("the trip of a day goes through twelve stops, each a file that the program has", () => {
	const [, trip = ""] = guide.split("\n## A guided trip");
	const [own = ""] = trip.split("\n## ");
	const stops = own.split(/\n\d+\. /u).slice(1);
	expect(stops).toHaveLength(12);
	for (const stop of stops) expect(files).toContain(/`src\/([^`]+\.ts)`/u.exec(stop)?.[1]);
});

test("every name of the glossary stands in the code", () => {
	const names = cells("Glossary", 2).flatMap((cell) => [...cell.matchAll(/`(\w+)`/gu)].map(([, name = ""]) => name));
	expect(names.length).toBeGreaterThan(12);
	const code = files.map(textOf).join("\n");
	expect(names.filter((name) => !new RegExp(`\\b${name}\\b`, "u").test(code))).toEqual([]);
});

test("its lines are of one length, and it is no longer than two pages of an editor", () => {
	const lines = guide.split("\n");
	expect(lines.filter((line) => line.length > 120 && !line.startsWith("|") && !line.startsWith("- "))).toEqual([]);
	expect(lines.length).toBeLessThan(160);
});
