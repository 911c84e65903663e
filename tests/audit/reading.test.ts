import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { dayCatalogue } from "./catalogue/day.ts";
import { checkPage } from "./check.ts";
import { checkCsv } from "./check-files.ts";
import { readClock, readRange } from "./clock.ts";
import { fixed } from "./holes.ts";
import { samples } from "./many.ts";
import { writtenDay } from "./outputs.ts";
import { isSaidBy, type Said } from "./pattern.ts";
import { readHtml } from "./read-html.ts";
import { dressingScopes } from "./scope.ts";

const clock = { start: "2026-03-02T13:30", startClockMin: 810, horizonMin: 2880 };
const says = (text: string, ...said: Said): boolean => isSaidBy(text, said, clock);

describe("a reader", () => {
	test("takes a bare time for the day of the start, a named one for the next of its name", () => {
		expect(readClock("14:20", clock)).toBe(50);
		expect(readClock("Tue 02:10", clock)).toBe(760);
		expect(readClock("Tue 3 March 02:10", clock)).toBe(760);
		expect(readClock("Wed 3 March 02:10", clock)).toBeNaN();
		expect(readRange("Tue between 01:05 and 02:40", clock)).toEqual([695, 790]);
		expect(readRange("between 23:05 and Tue 01:10", clock)).toEqual([575, 700]);
	});

	test("takes a number for what it says to its last digit, and no further", () => {
		expect(says("11.4 mL", "{n} mL", fixed(11.44, 1))).toBe(true);
		expect(says("11.5 mL", "{n} mL", fixed(11.44, 1))).toBe(false);
		expect(says("11.44 mL", "{n} mL", fixed(11.44, 1))).toBe(false);
		expect(says("1370 min", "{n} min", fixed(1374.33, -1))).toBe(true);
		expect(says("1374 min", "{n} min", fixed(1374.33, -1))).toBe(false);
		expect(says("100 %", "{percent}", 0.998)).toBe(false);
		expect(says(">99 %", "{percent}", 0.998)).toBe(true);
		expect(says("2 h 30 min", "{duration}", 150.4)).toBe(true);
		expect(says("2 h 31 min", "{duration}", 150.4)).toBe(false);
	});

	test("wants a spread where there is one, and none where both ends read alike", () => {
		expect(says("5 mL", "{ml}{mlspread}", 5, [4.96, 5.04])).toBe(true);
		expect(says("5 mL", "{ml}{mlspread}", 5, [4, 6])).toBe(false);
	});
});

describe("a page with one thing wrong on it is not let pass", () => {
	const [sample] = samples("day", 30, 30).filter(({ text }) => /chance: on/u.test(text));
	const { scenario, result, html } = writtenDay(sample?.text ?? "");
	const scope = { scenario, result };
	const faults = (changed: string) =>
		checkPage("report.html", readHtml(changed), dayCatalogue, scope, dressingScopes(scope), scenario);

	test("and as it is it passes", () => expect(faults(html)).toEqual([]));

	test("wherever a number stands: each is changed in turn", () => {
		const body = html.indexOf("<body");
		// A key of shades has several numbers, each of which stands somewhere on it.
		const places = [...html.matchAll(/(?<!class="pad" aria-hidden="true")>[^<]*?\d[^<]*</gu)]
			.filter(({ index, 0: text }) => index > body && !/[{}]|>from /u.test(text))
			.map(({ index, 0: text }) => index + text.search(/\d/u));
		expect(places.length).toBeGreaterThan(200);
		// Every place would take minutes: some of all parts of the page do.
		const some = places.filter((_, i) => i % Math.ceil(places.length / 40) === 0);
		const passed = some.filter((at) => {
			const digit = Number(html[at]);
			const changed = `${html.slice(0, at)}${(digit + 3) % 10}${html.slice(at + 1)}`;
			return faults(changed).length === 0;
		});
		expect(passed.map((at) => html.slice(at - 40, at + 30))).toEqual([]);
	});

	test("a sentence that nobody listed, one left out, a row too many", () => {
		expect(faults(html.replace("</main>", "<p>All is well.</p></main>"))).toHaveLength(1);
		expect(faults(html.replace(/<li>Off suction.*?<\/li>/u, "")).length).toBeGreaterThan(0);
		expect(faults(html.replace("</tbody>", "<tr><th>12:00</th></tr></tbody>")).length).toBeGreaterThan(0);
	});
});

test("a table file with one cell wrong is not let pass", () => {
	const said = { head: ["a", "b"], rows: [["x", 1.5]] };
	expect(
		checkCsv(
			"t.csv",
			[
				["a", "b"],
				["x", "1.5"],
			],
			said,
		),
	).toEqual([]);
	expect(
		checkCsv(
			"t.csv",
			[
				["a", "b"],
				["x", "1.6"],
			],
			said,
		),
	).toHaveLength(1);
	expect(checkCsv("t.csv", [["a", "b"]], said)).not.toEqual([]);
});

test("what derives shares nothing with what writes", () => {
	const here = import.meta.dirname;
	const files = readdirSync(here, { recursive: true, encoding: "utf8" }).filter(
		(file) => file.endsWith(".ts") && !/^(outputs|audit)\.ts$/u.test(file),
	);
	expect(files.length).toBeGreaterThan(15);
	for (const file of files)
		expect(readFileSync(join(here, file), "utf8"), `${file} imports what writes papers`).not.toMatch(
			/^(?:import|export) [^;]*"[./]*\/src\/(?:report|charts|words|page)\//mu,
		);
});
