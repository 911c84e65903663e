import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import type { Spread, TotalName } from "../../src/analysis/day-result.ts";
import { totalNames, totalsTable } from "../../src/report/totals-table.ts";

const { document } = new JSDOM("").window;

test("a total's mean and its half-width have the digits that the half-width supports", () => {
	const spreads: { [name: string]: readonly [mean: number, half: number] } = {
		underSuctionMin: [1374.333, 0.3449],
		exudateMl: [153.8, 3.58],
		toCanisterMl: [15_395.504, 134],
		washes: [10.9925, 0.0085],
	};
	const spread = (name: TotalName): Spread => {
		const [mean, halfWidth95] = spreads[name] ?? [0, 0];
		return {
			mean,
			halfWidth95,
			p10: mean,
			p50: mean,
			p90: mean,
			quantiles95: [],
		};
	};
	const all = Object.fromEntries(
		totalNames.map((name) => [name, spread(name)]),
	) as { [N in TotalName]: Spread }; // fromEntries forgets the names that totalNames lists
	const traced = Object.fromEntries(totalNames.map((name) => [name, 0])) as {
		[N in TotalName]: number;
	}; // the same
	const table = totalsTable(
		document,
		{ id: "totals", under: "heading" },
		traced,
		all,
		400,
	);
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
