import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { root } from "./source.ts";

const guide = readFileSync(join(root, "tests", "benchmarks", "README.md"), "utf8");

/** Paragraphs under a heading; a table goes with the paragraph before it. */
function paragraphsOf(heading: string, text = guide): string[] {
	const [, rest = ""] = text.split(`\n## ${heading}\n`);
	const [own = ""] = rest.split("\n## ");
	return own
		.split(/\n\s*\n/u)
		.map((one) => one.trim().replaceAll(/\s+/gu, " "))
		.filter((one) => one !== "" && !one.startsWith("|"));
}

/** Whether a paragraph tells a time, a count or a share, in digits or in words. */
const tells = (paragraph: string) =>
	/\d|\b(?:half|third|fourth|fifth|sixth|seventh|tenth|twelfth|sixteenth|twentieth|fortieth)\b/u.test(
		paragraph.replaceAll(/`[^`]*`|C\+\+|M\/M\/1/gu, ""),
	);
/** Whether it says when that was measured, and with which command, or that none is kept. */
const isDated = (paragraph: string) =>
	/\b\d{1,2} [A-Z][a-z]+ 20\d\d\b/u.test(paragraph) &&
	/`(?:LONG=1 )?(?:npm run|npx|node) [^`]+`|`tests\/[^`]+`|no command is kept/u.test(paragraph);

test.each(["Speed", "Coverage"])(
	"what is told under %s says when it was measured, and with which command",
	(heading) => {
		const paragraphs = paragraphsOf(heading).filter(tells);
		expect(paragraphs.length).toBeGreaterThan(2);
		expect(paragraphs.filter((one) => !isDated(one))).toEqual([]);
	},
);

test("a figure without a date, or without a command, is found", () => {
	const text = "\n## Speed\n\nIt takes 5 s.\n\nWords alone.\n\n## Next\n\n7 s\n";
	expect(paragraphsOf("Speed", text)).toEqual(["It takes 5 s.", "Words alone."]);
	expect(paragraphsOf("Speed", text).filter(tells)).toEqual(["It takes 5 s."]);
	for (const [paragraph, dated] of [
		["It took 5 s.", false],
		["It took 5 s on 3 May 2026.", false],
		["It took 5 s (`npm run bench`).", false],
		["It took 5 s on 3 May 2026 (`npm run bench`).", true],
	] as const)
		expect(isDated(paragraph), paragraph).toBe(dated);
});
