import { type ResponseCurveData, responseCurve } from "../../src/charts/index.ts";
import { examplesOf, onNarrowPages, washes } from "./example.ts";

const curve = (label: string, unit: string, value: (dwell: number) => number, half: number | null) => ({
	label,
	unit,
	points: [1, 3, 5, 8, 10, 15, 20].map((x) => ({
		x,
		mean: value(x),
		low: half === null ? null : value(x) - half,
		high: half === null ? null : value(x) + half,
	})),
});

export const threeCurves: ResponseCurveData = {
	title: "What a longer dwell brings",
	x: { label: "Dwell", unit: "min", current: 5, usual: 10 },
	curves: [
		curve("Washes", "a day", (dwell) => washes(dwell, 120), 0.05),
		curve("Seal leaks", "a day", (dwell) => 0.02 + dwell * 0.011, 0.03),
		curve("Solution wasted", "mL", () => 450, null),
	],
};

const oneValueCurve: ResponseCurveData = {
	title: "One value of the dwell",
	x: { label: "Dwell", unit: "min", current: 5, usual: 5.2 },
	curves: [
		{ label: "Washes", unit: "a day", points: [{ x: 5, mean: 11, low: 10.8, high: 11.2 }] },
		{ label: "Leaks", unit: "a day", points: [{ x: 5, mean: 0, low: 0, high: 0 }] },
		{ label: "Bleeds", unit: "a day", points: [] },
	],
};

export const responseCurveExamples = examplesOf(
	responseCurve,
	{ "response-curve": threeCurves, "response-curve-one-value": oneValueCurve },
	onNarrowPages,
);
