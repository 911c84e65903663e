import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import { totalsTable } from "../../../src/report/day/totals-table.ts";
import { htmlMaker } from "../../../src/report/kit/html-element.ts";
import { quietDay } from "../../charts/fixture.ts";
import { firstParts } from "./first-parts.ts";

const { document } = new JSDOM("").window;

test("a total's mean and its half-width have the digits that the half-width supports", () => {
	const parts = firstParts(quietDay(), ({ totals }) => ({
		totals: {
			...totals,
			underSuctionMin: { ...totals.underSuctionMin, mean: 1374.333, halfWidth95: 0.3449 },
			exudateMl: { ...totals.exudateMl, mean: 153.8, halfWidth95: 3.58 },
			toCanisterMl: { ...totals.toCanisterMl, mean: 15_395.504, halfWidth95: 134 },
			washes: { ...totals.washes, mean: 10.9925, halfWidth95: 0.0085 },
		},
	}));
	const table = totalsTable(htmlMaker(document), parts);
	for (const pad of table.querySelectorAll(".pad")) pad.remove();
	const row = (name: string) =>
		[...table.querySelectorAll("tbody tr")]
			.map((one) => [...one.children].map((cell) => cell.textContent))
			.find(([label]) => label === name)
			?.slice(1, 3);
	expect(row("Under suction")).toEqual(["1374.3", "0.3"]);
	expect(row("Exudate")).toEqual(["154", "4"]);
	expect(row("To the canister")).toEqual(["15400", "130"]);
	expect(row("Washes (drains finished)")).toEqual(["10.992", "0.009"]);
});
