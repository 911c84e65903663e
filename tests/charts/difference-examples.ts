import { type DifferenceRow, type DifferenceRowsData, differenceRows } from "../../src/charts/index.ts";
import { examplesOf, hostile, names, onNarrowPages } from "./example.ts";

const row = (
	label: string,
	unit: string,
	[meanA, meanB]: readonly [number, number],
	[low, high]: readonly [number, number] | readonly [null, null],
	verdict: string,
	tone: DifferenceRow["tone"],
): DifferenceRow => ({ label, unit, meanA, meanB, mean: meanA - meanB, low, high, verdict, tone });

export const sevenMeasures: DifferenceRowsData = {
	title: "Short dwell against long dwell, per day",
	...names,
	rows: [
		row("Washes", "a day", [11.0, 6.52], [4.46, 4.5], "more: 4.48 a day (4.46 to 4.5)", "difference"),
		row("Wet time", "min", [64.2, 71.4], [-7.9, -6.5], "less: 7.2 min (6.5 to 7.9)", "difference"),
		row("Undiluted exudate at the bed", "%", [62.4, 70.1], [-8.1, -7.3], "less: 7.7 % (7.3 to 8.1)", "difference"),
		row("Seal leaks", "a day", [0.112, 0.15], [-0.05, -0.028], "fewer: 0.04 a day (0.03 to 0.05)", "difference"),
		row("Calls at night", "a day", [0.24, 0.22], [-0.03, 0.07], "no difference found at 0.1 a day", "none"),
		row(
			"Solution used",
			"mL",
			[550, 330],
			[null, null],
			"more: 220 mL in nearly every replication; no interval is given",
			"difference",
		),
		row(
			"Alarms: suction path obstructed",
			"a day",
			[0.004, 0.001],
			[null, null],
			"not judged: it rests on rates that nobody has measured",
			"unknown",
		),
	],
};

const equalRegimens: DifferenceRowsData = {
	title: "A regimen against itself under another name",
	a: "now",
	b: "the same again",
	rows: [
		row("Washes", "a day", [11, 11], [0, 0], "the same in every replication", "none"),
		row("Seal leaks", "a day", [0, 0], [0, 0], "the same in every replication", "none"),
	],
};

export const longWords: DifferenceRowsData = {
	title: `${hostile} and a title that goes on for longer than any ward would want to read on one line of a screen`,
	a: "short dwell with a shallow depth and the small canister that lies in the store-room",
	b: "long",
	rows: [
		row(
			"A measure with a name of uncommon length, as somebody might well write who thinks in whole sentences",
			"mL of solution",
			[1234567.8, 0.0001],
			[1200000, 1269135.6],
			hostile,
			"difference",
		),
		row(
			"Donaudampfschifffahrtselektrizitätenhauptbetriebswerk",
			"a day",
			[0.0001, 0.0003],
			[-0.0004, 0.00001],
			"a verdict that has a great deal to say about a very small number, more than fits into a line or two or three of a column as narrow as this one",
			"none",
		),
	],
};

export const manyMeasures: DifferenceRowsData = {
	title: "Forty measures",
	...names,
	rows: Array.from({ length: 40 }, (_, index) =>
		row(
			`Measure ${index + 1}`,
			index % 2 === 0 ? "mL" : "",
			[100 + index, 100],
			[index - 3, index + 3],
			index > 3 ? `more: ${index} (${index - 3} to ${index + 3})` : "no difference found at 6",
			index > 3 ? "difference" : "none",
		),
	),
};

export const differenceExamples = examplesOf(
	differenceRows,
	{
		"difference-rows": sevenMeasures,
		"difference-rows-equal": equalRegimens,
		"difference-rows-many": manyMeasures,
		"difference-rows-long-words": longWords,
		"difference-rows-none": { title: "No measure", ...names, rows: [] },
	},
	onNarrowPages,
);
