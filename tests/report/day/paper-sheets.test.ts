import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import { clockRows } from "../../../src/report/day/sheet/clock-rows.ts";
import { paperSheets } from "../../../src/report/day/sheet/paper-sheets.ts";
import { htmlMaker } from "../../../src/report/kit/html-element.ts";
import { quietDay } from "../../charts/fixture.ts";
import { firstParts } from "./first-parts.ts";

/** The first sheet of a day whose answers and cautions need so much of the page. */
function firstSheet(headMm: number, answersMm: number) {
	const parts = firstParts(quietDay());
	const rows = clockRows(parts);
	const html = htmlMaker(new JSDOM("").window.document);
	const [sheet] = paperSheets(html, parts, { rows, headMm, answersMm: () => answersMm, warnedMm: 0 });
	if (sheet === undefined) throw new Error("a day without a sheet");
	return { all: rows.length, kept: sheet.clock.querySelectorAll("tbody tr") };
}

test("the clock takes the height of the answers beside it, where the page holds no more", () => {
	const { all, kept } = firstSheet(140, 110);
	expect(all).toBeGreaterThan(15);
	expect(kept.length).toBeGreaterThan(5);
});

test("without answers beside it a full page leaves the clock hardly a row", () => {
	expect(firstSheet(140, 0).kept.length).toBeLessThan(4);
});
