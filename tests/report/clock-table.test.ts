import { expect, test } from "vitest";
import type { DayResult } from "../../src/analysis/day-result.ts";
import {
	clockRows,
	rowTimes,
	sheetEndMin,
} from "../../src/report/clock-table.ts";
import { dayResult, quietDay, stepDown } from "../charts/fixture.ts";

function rowsOf(result: DayResult) {
	const [dressing, day, projection] = [
		result.scenario.dressings[0],
		result.dressings[0],
		result.projection.dressings[0],
	];
	if (dressing === undefined || day === undefined || projection === undefined)
		throw new Error("a result without a dressing");
	const clock = result.scenario;
	const rows = clockRows({
		clock,
		roundsClockMin: clock.roundsClockMin,
		dressing,
		day,
		projection,
	});
	return rows.map((row, index) => ({
		...row,
		time: rowTimes(rows, clock)[index],
	}));
}

test("each fill has its time, its volume, its drain and what to look at", () => {
	expect(rowsOf(quietDay())[0]).toMatchObject({
		time: "09:00",
		what: "Fill; drains at 09:06",
		volume: "50 mL in",
		look: "first fill: no pooling under the drape, edges dry; drawn down by 09:07",
	});
});

test("rounds and the likely canister change stand among the fills in order of time", () => {
	const rows = rowsOf(quietDay());
	expect(rows.map((row) => row.atMin)).toEqual(
		rows.map((row) => row.atMin).toSorted((a, b) => a - b),
	);
	expect(rows.find((row) => row.what === "Round")).toMatchObject({
		time: "11:00",
		look: "canister between 46 and 69 of 1000 mL; solution, edges",
	});
	expect(rows.find((row) => row.what.startsWith("Canister"))?.look).toBe(
		"Tue between 01:36 and 04:12; new canister at hand",
	);
});

test("the day is written with its first row only", () => {
	const times = rowsOf(quietDay()).map((row) => row.time);
	expect(times.filter((time) => time?.startsWith("Tue")).length).toBe(1);
});

test("without a fill there is continuous suction to look after", () => {
	expect(rowsOf(stepDown())[0]).toMatchObject({
		what: "Continuous suction",
		volume: "",
	});
});

test("the sheet ends with the shift, or with the next one where little is left of it", () => {
	const at = (startClockMin: number): number =>
		sheetEndMin(dayResult([{}], { startClockMin }).scenario);
	expect(at(420)).toBe(720);
	expect(at(1080)).toBe(780);
	expect(sheetEndMin(dayResult([{ horizonMin: 120 }]).scenario)).toBe(120);
});
