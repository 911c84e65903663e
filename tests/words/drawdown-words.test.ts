import { describe, expect, test } from "vitest";
import { drawdownWords, regimenLine, sharedDrawdownWords } from "../../src/words/index.ts";
import { troubledDay } from "../charts/fixture.ts";

const { scenario } = troubledDay();
const [own] = scenario.dressings[0].regimens;
const drawn = (drawdown: number, drawdownSec: number | null, more = {}) => ({ ...own, drawdown, drawdownSec, ...more });

describe("a drawdown in words", () => {
	test("is the share of the pump's flow, and the time that it takes to the set depth", () => {
		expect(drawdownWords(drawn(0.15, 14.3, { depthMmHg: 125 }))).toBe("drawdown 15 % (about 14 s to −125 mmHg)");
		expect(drawdownWords(drawn(1, 0.4, { depthMmHg: 75 }))).toBe("drawdown 100 % (less than 1 s to −75 mmHg)");
		expect(drawdownWords(drawn(0.0125, 126, { depthMmHg: 125 }))).toBe("drawdown 1.25 % (about 2.1 min to −125 mmHg)");
	});

	test("says so where the set depth is not reached while the pump is held back", () => {
		expect(drawdownWords(drawn(0.001, null, { depthMmHg: 125 }))).toBe(
			"drawdown 0.1 % (−125 mmHg is not reached before the pump is let work freely)",
		);
	});

	test("of several regimens is told once, with the shortest and the longest time", () => {
		expect(sharedDrawdownWords([drawn(0.15, 14), drawn(0.15, 14.2)])).toBe(
			"drawdown 15 % (about 14 s to the set depth)",
		);
		expect(sharedDrawdownWords([drawn(0.15, 14), drawn(0.15, 7)])).toBe(
			"drawdown 15 % (about 7 s to about 14 s to the set depth)",
		);
		expect(sharedDrawdownWords([drawn(0.02, null), drawn(0.02, 170)])).toBe(
			"drawdown 2 % (about 2.8 min to the set depth, or not before the pump is let work freely)",
		);
	});

	test("is told again where a later regimen has another", () => {
		const line = (later: object) =>
			regimenLine({ regimens: [drawn(0.15, 14), { ...drawn(0.15, 14), ...later }] }, scenario);
		expect(line({ fromMin: 60 }).match(/drawdown/gu)).toHaveLength(1);
		expect(line({ fromMin: 60, drawdown: 0.05, drawdownSec: 50 })).toMatch(/drawdown 15 % .*; from .*drawdown 5 %/u);
		expect(line({ fromMin: 60, depthMmHg: 75, drawdownSec: 7 })).toMatch(/; drawdown 15 % \(about 7 s to −75 mmHg\)$/u);
	});
});
