import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import { clockData, clockRows } from "../../src/report/clock-table.ts";
import { dressingParts } from "../../src/report/dressing-parts.ts";
import { paperSheets } from "../../src/report/paper-sheets.ts";
import { quietDay } from "../charts/fixture.ts";

/** The first sheet of a day whose answers and cautions need so much of the page. */
function firstSheet(headMm: number, answersMm: number) {
	const result = quietDay();
	const [parts] = dressingParts(result);
	if (parts === undefined) throw new Error("a result without a dressing");
	const rows = clockRows(clockData(result, parts));
	const { document } = new JSDOM("").window;
	const [sheet] = paperSheets(
		{
			result,
			parts,
			rows,
			caption: (until) => `What comes next, until ${until}.`,
			headMm,
			answersMm: () => answersMm,
			warnedMm: 0,
		},
		document,
	);
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
