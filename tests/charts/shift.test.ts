import { expect, test } from "vitest";
import { dayWidthPx, rehearsalChart, shiftLine } from "../../src/charts/index.ts";
import { document, options } from "./example.ts";
import { halfAShift, morning } from "./shift-examples.ts";

const drawn = () => rehearsalChart(morning(), document, options);
const line = () => shiftLine(halfAShift, document, { ...options, widthPx: 626 });

test("a rehearsal's chart says in words what was hidden, what stood and what was done", () => {
	const words = drawn().querySelector("desc")?.textContent ?? "";
	expect(words).toContain("Hidden: 08:25 the suction line was kinked");
	expect(words).toContain("Alarms: 08:28 suction path obstructed, 5 min");
	expect(words).toContain("Looks: 08:29 port; 08:31 suction line");
	expect(words).toContain("08:32 free suction line");
	expect(words).not.toContain("source of solution"); // it never came about
});

test("what was hidden to the end of the shift reaches the end of the axis", () => {
	const bars = [...drawn().querySelectorAll("rect.alarm-edge")].map((bar) =>
		["x", "width"].map((name) => Number(bar.getAttribute(name))),
	);
	expect(bars).toHaveLength(2);
	const [, last] = bars;
	expect((last?.[0] ?? 0) + (last?.[1] ?? 0)).toBeCloseTo(dayWidthPx - 34, 1);
});

/** Where the numbers of a path's points stand, px from the left. */
const across = (selector: string): number[] =>
	[...(line().querySelector(selector)?.getAttribute("d") ?? "").matchAll(/(-?[\d.]+),-?[\d.]+/g)].map(([, x]) =>
		Number(x),
	);

test("the line of half a shift ends in the middle of its axis, where now is marked", () => {
	// The axis runs from 112 to 626 − 34 px.
	const middle = 112 + (592 - 112) / 2;
	for (const path of ["path.suction-edge", "path.water"]) {
		expect(Math.min(...across(path))).toBeCloseTo(112, 1);
		expect(Math.max(...across(path))).toBeCloseTo(middle, 1);
	}
	const now = line().querySelector("line.now");
	expect(Number(now?.getAttribute("x1"))).toBeCloseTo(middle, 1);
});

test("it says in words what has shown and what was done, and what still stands", () => {
	const words = line().querySelector("desc")?.textContent ?? "";
	expect(words).toBe(
		"From 07:00 to 09:00, of a shift until 11:00. Alarms: 07:40 seal leak, 5 min; 08:50 depth not held, 10 min so far. Looks: 07:41 edge. Acts: 07:43 patch edge.",
	);
});
