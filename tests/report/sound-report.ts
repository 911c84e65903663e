import Papa from "papaparse";
import { expect } from "vitest";

/** One file without scripts or outside requests, which says so in its policy. */
export function expectOneFile(page: Document): void {
	expect(page.querySelector("meta[http-equiv=Content-Security-Policy]")?.getAttribute("content")).toBe(
		"default-src 'none'; style-src 'unsafe-inline'",
	);
	expect(page.querySelectorAll("script, link, iframe, object, embed, img, [src]").length).toBe(0);
	for (const link of page.querySelectorAll("[href]")) expect(link.getAttribute("href")).toMatch(/^#/);
}

/** Ids are unique, and references lead somewhere. */
export function expectSoundIds(page: Document): void {
	const ids = [...page.querySelectorAll("[id]")].map(({ id }) => id);
	expect(new Set(ids).size).toBe(ids.length);
	const references = [...page.querySelectorAll("[aria-labelledby]")].flatMap((element) =>
		(element.getAttribute("aria-labelledby") ?? "").split(" "),
	);
	expect(references.filter((id) => !ids.includes(id))).toEqual([]);
}

/** Rows of a table of a report, its heads the first. */
export const rowsOfCsv = (text = ""): string[][] => Papa.parse<string[]>(text.trimEnd(), { newline: "\r\n" }).data;

/** The same under their heads. */
export const recordsOfCsv = (text = ""): Record<string, string>[] =>
	Papa.parse<Record<string, string>>(text.trimEnd(), { newline: "\r\n", header: true }).data;

/** Tables are RFC 4180: CRLF, one width, nothing lost in reading; and no cell is one that a spreadsheet would run. */
export function expectSoundTables(tables: { readonly [fileName: string]: string }): void {
	for (const [name, text] of Object.entries(tables)) {
		expect(name).toMatch(/^[a-z-]+\.csv$/);
		expect(text.endsWith("\r\n")).toBe(true);
		expect(text.replaceAll(/"(?:[^"]|"")*"/g, "")).not.toMatch(/(?<!\r)\n|\r(?!\n)/);
		const rows = rowsOfCsv(text);
		expect(new Set(rows.map((row) => row.length)).size, name).toBe(1);
		for (const cell of rows.flat()) if (Number.isNaN(Number(cell))) expect(cell).not.toMatch(/^\s*[=+\-@]/);
	}
}

/** A chart as a file: its document element, which runs nothing and asks for nothing from outside. */
export function expectSoundSvg(text: string, parser: DOMParser): Document {
	const file = parser.parseFromString(text, "image/svg+xml");
	expect(file.documentElement.localName).toBe("svg");
	expect(file.querySelectorAll("script, image, foreignObject").length).toBe(0);
	expect(text).not.toMatch(/https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
	return file;
}
