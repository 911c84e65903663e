import { readdirSync } from "node:fs";
import { join } from "node:path";
import { JSDOM } from "jsdom";
import Papa from "papaparse";
import { beforeAll, describe, expect, test } from "vitest";
import { hostileIds, hostileScenario, hostileTitle } from "./hostile-scenario.ts";
import { filesOf, here, reportNames, temporary, written } from "./program.ts";

const folder = temporary();
const out = join(folder, "report");
let files: Record<string, string> = {};
beforeAll(async () => {
	const file = written(folder, "hostile.yaml", hostileScenario);
	const { status, err } = await here("day", file, "--out", out);
	expect({ status, err }).toEqual({ status: 0, err: "" });
	files = filesOf(out);
});

/** Elements and attributes by which a text has become more than text. */
function letThrough(document: Document): string[] {
	const elements = /^(?:script|img|iframe|object|embed|foreignobject|b|i|u)$/i;
	const links = ["src", "href", "xlink:href", "action", "srcdoc"];
	return [...document.querySelectorAll("*")].flatMap((element) => [
		...(elements.test(element.localName) ? [element.outerHTML] : []),
		...[...element.attributes]
			.filter(({ name, value }) => /^on/i.test(name) || (links.includes(name) && !/^#[A-Za-z]/.test(value)))
			.map(({ name, value }) => `${name}="${value}"`),
	]);
}

describe("hostile titles and ids", () => {
	test("name no file: the report holds the files it always does", () => {
		expect(Object.keys(files)).toEqual(reportNames);
		expect(readdirSync(folder).sort()).toEqual(["hostile.yaml", "report"]);
	});

	test("are text in the HTML", () => {
		const { document } = new JSDOM(files["report.html"]).window;
		expect(letThrough(document)).toEqual([]);
		expect(document.querySelector("h1")?.textContent).toBe(hostileTitle);
		expect(document.title).toContain(hostileTitle.trim());
		for (const id of hostileIds) expect(document.body.textContent).toContain(id);
		const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
		expect(ids.filter((id) => !/^[a-z][\w-]*$/i.test(id))).toEqual([]);
		expect(new Set(ids).size).toBe(ids.length);
	});

	test("are text in the SVG, which is well-formed XML", () => {
		const { document } = new JSDOM(files["day.svg"], { contentType: "image/svg+xml" }).window;
		expect(document.querySelector("parsererror")).toBeNull();
		expect(letThrough(document)).toEqual([]);
		for (const id of hostileIds) expect(document.documentElement.textContent).toContain(id);
	});

	test("begin no formula and break no row of the tables", () => {
		for (const name of reportNames.filter((one) => one.endsWith(".csv"))) {
			const { data, errors } = Papa.parse<string[]>(files[name] ?? "", { newline: "\r\n", skipEmptyLines: true });
			expect(errors).toEqual([]);
			expect(new Set(data.map((row) => row.length)).size).toBe(1);
			for (const cell of data.flat())
				if (Number.isNaN(Number(cell))) expect(cell, name).not.toMatch(/^[\s\u200e\u200f]*[=+\-@\t\r]/u);
		}
		expect(files["totals.csv"]).toContain("../../etc");
	});

	test("come back from the JSON as they were", () => {
		const printed = JSON.parse(files["day.json"] ?? "");
		expect(printed.scenario.title).toBe(hostileTitle);
		expect(printed.dressings.map(({ id }: { id: string }) => id)).toEqual(hostileIds);
	});
});

test("marks that turn a line around are refused in a title, with a sentence that does not turn", async () => {
	const file = written(folder, "turned.yaml", hostileScenario.replace(/title: .*\n/, 'title: "a\\u202Eb"\n'));
	const { status, err } = await here("check", file);
	expect(status).toBe(2);
	expect(err).toMatch(/title \(line 2\): expected .*received text with a control character\n/);
	expect(err).not.toContain("\u202e");
});
