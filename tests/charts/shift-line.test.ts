import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import { shiftLine } from "../../src/charts/index.ts";
import type { SoFar } from "../../src/rehearsal/index.ts";

const document = new JSDOM("").window.document;

/** Half a shift: drawn down, washed once, an alarm that stands, a look and an act. */
const soFar: SoFar = {
	curve: {
		atMin: [0, 0.5, 20, 20, 21, 21, 31, 31, 32, 120],
		depthMmHg: [0, 125, 125, 0, 0, 0, 0, 0, 125, 125],
		filledMl: [0, 0, 0, 0, 50, 50, 50, 0, 0, 0],
	},
	alarms: [
		{ condition: "seal-leak", startMin: 40, endMin: 45 },
		{ condition: "depth-not-held", startMin: 110, endMin: null },
	],
	taken: [
		{ kind: "look", what: "edge", startMin: 41, endMin: 43 },
		{ kind: "act", what: "patch-edge", startMin: 43, endMin: 45 },
	],
};
const drawn = (nowMin = 120) =>
	shiftLine(
		{
			title: "A morning",
			clock: {
				start: "2026-03-02T07:00",
				startClockMin: 420,
				horizonMin: 240,
			},
			nowMin,
			regimen: { depthMmHg: 125, fillMl: 50 },
			soFar,
		},
		document,
		{ idPrefix: "so-far", widthPx: 626 },
	);

/** Where the numbers of a path's points stand, px from the left. */
const across = (selector: string): number[] =>
	[
		...(drawn().querySelector(selector)?.getAttribute("d") ?? "").matchAll(
			/(-?[\d.]+),-?[\d.]+/g,
		),
	].map(([, x]) => Number(x));

test("the line of half a shift ends in the middle of its axis, where now is marked", () => {
	// The axis runs from 112 to 626 − 34 px.
	const middle = 112 + (592 - 112) / 2;
	for (const path of ["path.suction-edge", "path.water"]) {
		expect(Math.min(...across(path))).toBeCloseTo(112, 1);
		expect(Math.max(...across(path))).toBeCloseTo(middle, 1);
	}
	const now = drawn().querySelector("line.now");
	expect(Number(now?.getAttribute("x1"))).toBeCloseTo(middle, 1);
});

test("it says in words what has shown and what was done, and what still stands", () => {
	const words = drawn().querySelector("desc")?.textContent ?? "";
	expect(words).toBe(
		"From 07:00 to 09:00, of a shift until 11:00. Alarms: 07:40 seal leak, 5 min; 08:50 depth not held, 10 min so far. Looks: 07:41 edge. Acts: 07:43 patch edge.",
	);
});
