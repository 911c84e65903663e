import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { reportHtml } from "../../../src/report/index.ts";
import { cautionSentences } from "../../../src/vocabulary/index.ts";
import { dayResult, longWash, pairedDay, quietDay, stepDown, troubledDay } from "../../charts/fixture.ts";
import { hostileResult, readableText } from "../hostile.ts";
import { expectOneFile, expectSoundIds } from "../sound-report.ts";

const { document } = new JSDOM("").window;
const parsed = (html: string): Document => new JSDOM(html).window.document;

describe("report.html", () => {
	const html = reportHtml(troubledDay(), document);
	const page = parsed(html);

	test("is one file without scripts or outside requests, and says so in its policy", () => {
		expect(html.startsWith('<!DOCTYPE html>\n<html lang="en">')).toBe(true);
		expectOneFile(page);
		expect(html).not.toMatch(/url\((?!#)|@import|\son[a-z]+=/);
	});

	test("runs in the order of a hand-over: answers, clock, water line, alarms, totals, supplies, cautions, sources", () => {
		expect([...page.querySelectorAll("h3")].map((heading) => heading.textContent)).toEqual([
			"Answers",
			"On the clock",
			"Water line",
			"Likely alarms",
			"Totals",
			"Supplies",
			"Cautions",
			"Where the numbers come from",
		]);
	});

	test("carries the caution at its top, in its list and at its foot", () => {
		expect(page.querySelector("header")?.textContent).toContain(cautionSentences[0]);
		for (const sentence of cautionSentences) {
			expect(page.querySelector("section.cautions")?.textContent).toContain(sentence);
			expect(page.querySelector("footer")?.textContent).toContain(sentence);
		}
	});

	test("leaves room on paper for names and times by hand", () => {
		expect([...page.querySelectorAll(".sign span")].map((place) => place.textContent)).toEqual([
			"Handed over by",
			"at (time)",
			"Taken over by",
			"at (time)",
		]);
	});

	test("names seed, version, replications and trace, and which numbers were given and which assumed", () => {
		const sources = page.querySelector("section.sources")?.textContent ?? "";
		for (const words of [
			"tidemark-7",
			"slackwater 0.1.0",
			"400, chance on",
			"5f0c1d2e9a7b4c68",
			"1 given by the scenario, 4 by default",
			"3 are assumed",
		])
			expect(sources).toContain(words);
		const first = page.querySelector("section.sources tbody tr");
		expect(first?.textContent).toContain("breach.dry");
	});

	test("writes likely times of an alarm in words beside the strip", () => {
		expect(page.querySelector("section.alarms table")?.textContent).toContain("between 12:30 and 14:00 (up to 34 %)");
		expect(page.querySelector("section.alarms table")?.textContent).toContain("at no time in particular");
	});

	test("is the same bytes for the same result", () => {
		expect(reportHtml(troubledDay(), new JSDOM("").window.document)).toBe(html);
	});
});

test("several dressings begin with a list of them, each linked to its sheet", () => {
	const page = parsed(reportHtml(pairedDay(), document));
	const links = [...page.querySelectorAll("nav.overview a")];
	expect(links.map((link) => link.textContent)).toEqual(["thigh", "abdomen"]);
	expect(links.every((link) => page.querySelector(link.getAttribute("href") ?? "none") !== null)).toBe(true);
	expect(page.querySelectorAll("nav.overview svg[role=img]").length).toBe(2);
	expect(page.querySelectorAll(".sheet").length).toBe(2);
});

test("one dressing has no list", () => {
	expect(parsed(reportHtml(quietDay(), document)).querySelector("nav")).toBeNull();
});

test.each([
	["a quiet day", quietDay],
	["two dressings", pairedDay],
	["four weeks of suction alone", stepDown],
	["four weeks of fills", longWash],
	["hostile strings", hostileResult],
	["one replication without chance", () => dayResult([{}], { chance: "off", replications: 1 })],
] as const)("ids are unique and references lead somewhere: %s", (_, result) =>
	expectSoundIds(parsed(reportHtml(result(), document))),
);

test("hostile titles, names and cautions stay text", () => {
	const page = parsed(reportHtml(hostileResult(), document));
	expect(page.querySelectorAll("script, img, [onerror]").length).toBe(0);
	expect(page.querySelector("h1")?.textContent).toBe(readableText);
	expect(page.querySelector("section.cautions")?.textContent).toContain("onerror");
});

/** What axe-core holds against a page; colours and layout it can only judge in a real browser. */
async function violations(html: string): Promise<string[]> {
	const { window } = new JSDOM(html, { runScripts: "outside-only" });
	window.eval(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
	// eval gives no type: this is the shape of axe-core's results.
	const found = (await window.eval("axe.run(document, { rules: { 'color-contrast': { enabled: false } } })")) as {
		violations: { id: string; nodes: { html: string }[] }[];
	};
	return found.violations.map(
		(violation: { id: string; nodes: { html: string }[] }) => `${violation.id}: ${violation.nodes[0]?.html}`,
	);
}

test.each([
	["troubled", troubledDay],
	["hostile, of two dressings", hostileResult],
] as const)("axe-core finds nothing to hold against the %s report", async (_, result) => {
	expect(await violations(reportHtml(result(), document))).toEqual([]);
});

test("axe-core would find a picture without a name", async () => {
	const broken = reportHtml(troubledDay(), document)
		.replaceAll(/ aria-labelledby="[^"]*"/g, "")
		.replaceAll(/<title id.*?<\/title>/g, "");
	expect((await violations(broken)).length).toBeGreaterThan(0);
});
