import { type BeginTimesData, beginTimes } from "../../src/charts/index.ts";
import { examplesOf, hostile, onNarrowPages } from "./example.ts";

const day = (
	startClockMin: number,
	more: Partial<BeginTimesData["rows"][number]> = {},
): BeginTimesData["rows"][number] => ({
	startClockMin,
	canisterChanges: [
		{ p10Min: 520, p50Min: 590, p90Min: 700, probabilityWithinHorizon: 1 },
		{ p10Min: 1130, p50Min: 1250, p90Min: 1440, probabilityWithinHorizon: 0.42 },
	],
	alarmBins: Array.from({ length: 48 }, (_, index) =>
		Math.max(0.004, 0.16 - Math.abs(index - 20) * 0.03, 0.3 - Math.abs(index - 42) * 0.06),
	),
	...more,
});

const keptClear: BeginTimesData["windows"] = [
	{ label: "hand-over", startClockMin: 405, endClockMin: 450 },
	{ label: "breakfast", startClockMin: 480, endClockMin: 525 },
	{ label: "dinner", startClockMin: 720, endClockMin: 780 },
	{ label: "supper", startClockMin: 1050, endClockMin: 1095 },
	{ label: "hand-over", startClockMin: 1125, endClockMin: 1170 },
	{ label: "small hours", startClockMin: 1410, endClockMin: 330 },
];

export const sixBeginnings: BeginTimesData = {
	title: "When to begin",
	windows: keptClear,
	rows: [day(420, { current: true, note: "now" }), ...[540, 660, 840, 960, 1260].map((at) => day(at))],
};

const twoDressings: BeginTimesData = {
	title: "Two dressings, in step and out of step",
	fromClockMin: 420,
	windows: keptClear,
	rows: [
		day(420, { note: "both at once" }),
		day(420, { note: "the second 1 h later, which a note of some length explains", canisterChanges: [] }),
		day(420, { note: hostile, alarmBins: [] }),
	],
};

export const beginTimesExamples = examplesOf(
	beginTimes,
	{
		"begin-times": sixBeginnings,
		"begin-times-two-dressings": twoDressings,
		"begin-times-none": { title: "No time tried", windows: [], rows: [] },
	},
	onNarrowPages,
);
