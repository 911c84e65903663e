import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import type { DressingParts } from "../../../src/report/day/dressing/dressing-parts.ts";
import { clockRows, clockTable, sheetEndMin, timed } from "../../../src/report/day/sheet/clock-rows.ts";
import { htmlMaker } from "../../../src/report/kit/html-element.ts";
import type { DayResult, DressingProjection } from "../../../src/results/index.ts";
import { dayResult, quietDay, stepDown } from "../../charts/fixture.ts";
import { firstParts } from "./first-parts.ts";

function rowsOf(result: DayResult, change: (parts: DressingParts) => Partial<DressingParts> = () => ({})) {
	const parts = firstParts(result);
	return timed(clockRows({ ...parts, ...change(parts) }), result.scenario);
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
	expect(rows.map((row) => row.atMin)).toEqual(rows.map((row) => row.atMin).toSorted((a, b) => a - b));
	expect(rows.find((row) => row.what === "Round")).toMatchObject({
		time: "11:00",
		look: "canister between 46 and 69 of 1000 mL; solution, edges",
	});
	expect(rows.find((row) => row.what.startsWith("Canister"))?.look).toBe(
		"likeliest between 02:00 and 02:12 (40 % of the days) or at 03:00 (30 %); new canister at hand",
	);
});

test("a fill that chance moves by more than five minutes says so", () => {
	const moved = (p10Min: number, p90Min: number) =>
		rowsOf(quietDay(), ({ projection }) => ({
			projection: { ...projection, fills: projection.fills.map((fill) => ({ ...fill, p10Min, p90Min })) },
		}))[0].what;
	expect(moved(120, 125)).toBe("Fill; drains at 09:06");
	expect(moved(120, 125.1)).toBe("Fill; drains at 09:06; eight days in ten between 09:00 and 09:05");
	expect(moved(127, 127)).toBe("Fill; drains at 09:06; as simulated at 09:07");
});

test("a fill that does not come on every day says on how many, and one that never comes says so", () => {
	const first = (change: (fills: DressingProjection["fills"]) => DressingProjection["fills"]) =>
		rowsOf(quietDay(), ({ projection }) => ({ projection: { ...projection, fills: change(projection.fills) } }))[0]
			.what;
	const on = (probabilityWithinHorizon: number, p90Min: number) =>
		first((fills) => fills.map((fill) => ({ ...fill, p10Min: 120, p90Min, probabilityWithinHorizon })));
	expect(on(0.77, 135)).toBe(
		"Fill; drains at 09:06; on 77 % of the days, eight in ten of them between 09:00 and 09:15",
	);
	expect(on(0.77, 121)).toBe("Fill; drains at 09:06; on 77 % of the days");
	expect(on(0.97, 121)).toBe("Fill; drains at 09:06");
	const none = rowsOf(quietDay(), ({ projection }) => ({
		projection: {
			...projection,
			fills: [],
			totals: { ...projection.totals, fills: { ...projection.totals.fills, p90: 0 } },
		},
	}));
	expect(none[0].what).toBe("Fill; drains at 09:06; not reached as simulated");
});

test("what the scenario lists stands among the rows, with the alarm that it brings", () => {
	const rows = rowsOf(quietDay(), ({ day }) => ({
		day: {
			...day,
			schedule: {
				...day.schedule,
				alarms: [{ condition: "suction-absent", priority: "medium", startMin: 320, endMin: 345, endedBy: "by-itself" }],
			},
		},
		happenings: [
			{ atMin: 60, dressing: "thigh", what: "transfer", forMin: null, planned: true },
			{ atMin: 300, dressing: "thigh", what: "off", forMin: 45, planned: true },
			{ atMin: 400, dressing: "thigh", what: "kink-fill", forMin: null, planned: false },
		],
		homeMin: 700,
	}));
	expect(rows.find(({ atMin }) => atMin === 60)).toMatchObject({ time: "08:00", what: "Transfer (planned)" });
	expect(rows.find(({ atMin }) => atMin === 300)).toMatchObject({
		what: "Therapy off until 12:45 (planned)",
		look: "suction absent sounds at 12:20",
	});
	expect(rows.find(({ atMin }) => atMin === 400)?.what).toBe("Listed failure: the fill line is kinked");
	expect(rows.find(({ atMin }) => atMin === 700)?.what).toBe("Goes home");
});

test("the day is written with its first row only", () => {
	const times = rowsOf(quietDay()).map((row) => row.time);
	expect(times.filter((time) => time?.startsWith("Tue")).length).toBe(1);
});

test("without a fill there is continuous suction to look after", () => {
	expect(rowsOf(stepDown())[0]).toMatchObject({ what: "Continuous suction" });
});

test("the sheet ends with the shift, or with the next one where little is left of it", () => {
	const at = (startClockMin: number): number => sheetEndMin(dayResult([{}], { startClockMin }).scenario);
	expect(at(420)).toBe(720);
	expect(at(1080)).toBe(780);
	expect(sheetEndMin(dayResult([{ horizonMin: 120 }]).scenario)).toBe(120);
});

test("in the table a long date breaks after its day, a time never", () => {
	const { document } = new JSDOM("").window;
	const clock = { ...quietDay().scenario, horizonMin: 4320 };
	const at = (atMin: number) => ({ atMin, what: "Round", look: "" });
	const table = clockTable(
		htmlMaker(document),
		{ id: "clock", under: "heading" },
		"What comes next.",
		[at(60), at(2000)],
		clock,
	);
	const times = [...table.querySelectorAll("tbody th")].map((cell) => cell.textContent);
	expect(times).toEqual(["08:00", expect.stringMatching(/^Tue\u00A03 /u)]);
});
