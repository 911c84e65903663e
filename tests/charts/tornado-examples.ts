import { type TornadoData, tornado } from "../../src/charts/index.ts";
import { examplesOf, hostile, names, onNarrowPages } from "./example.ts";

export const eightAssumptions: TornadoData = {
	title: "Seal leaks a day: what the difference rests on",
	...names,
	unit: "a day",
	base: -0.038,
	top: 6,
	rows: [
		{ label: "rate of breaches of a wet seal", value: "0.09 /h", half: -0.012, twice: -0.091, turns: false },
		{ label: "rate of breaches of a dry seal", value: "0.004 /h", half: -0.041, twice: -0.03, turns: false },
		{ label: "how much a turn loosens the seal", value: "0.02", half: -0.03, twice: 0.014, turns: true },
		{ label: "time until a nurse comes at night", value: "7 min", half: -0.038, twice: -0.037, turns: false },
		{ label: "exudate", value: "0.9 mL/cm2/d", half: -0.031, twice: -0.045, turns: false },
		{ label: "capacity of the foam", value: "0.35 mL/mL", half: null, twice: -0.02, turns: false },
		{ label: "drawdown", value: "0.6 min", half: -0.0382, twice: -0.0375, turns: false },
		{ label: "spread of the response", value: "0.6", half: -0.038, twice: -0.038, turns: false },
	],
};

const longAssumptions: TornadoData = {
	title: "Drained volume: what the difference rests on",
	a: hostile,
	b: "long",
	unit: "mL",
	base: 221,
	rows: [
		{
			label:
				"an assumption whose meaning takes a whole sentence to say, since nobody has yet found a shorter one for it",
			value: "1234.5678 mL/cm2/d at −125 mmHg",
			half: 110,
			twice: 442,
			turns: true,
		},
		{ label: "one that moves both ends the same way", value: "2 h", half: 240, twice: 260, turns: false },
		{ label: "one that moves nothing", value: "4", half: 221, twice: 221, turns: false },
	],
};

export const tornadoExamples = examplesOf(
	tornado,
	{
		tornado: eightAssumptions,
		"tornado-long-words": longAssumptions,
		"tornado-none": { title: "Nothing varied", ...names, unit: "mL", base: 0, rows: [] },
	},
	onNarrowPages,
);
