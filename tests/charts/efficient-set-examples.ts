import { type EfficientSetData, type EfficientSetPoint, efficientSet } from "../../src/charts/index.ts";
import { dwellMin, examplesOf, onNarrowPages, periodMin, washes } from "./example.ts";

const scatter = (dwell: number, period: number): EfficientSetPoint => {
	const x = (dwell * washes(dwell, period)) / 480 + (period / 60 - 3) ** 2 / 60;
	return {
		label: `${dwell} min, ${period / 60} h`,
		x,
		y: washes(dwell, period),
		third: 50 * washes(dwell, period),
		efficient: false,
		current: dwell === 5 && period === 120,
		usual: dwell === 10 && period === 210,
		broken: dwell >= 15 && period === 60,
	};
};

/** Marks those that no other betters in both measures. */
const withSet = (points: readonly EfficientSetPoint[]): EfficientSetPoint[] =>
	points.map((point) => ({
		...point,
		efficient:
			point.broken !== true &&
			points.every(
				(other) =>
					other.broken === true ||
					!(other.x <= point.x && other.y >= point.y && (other.x < point.x || other.y > point.y)),
			),
	}));

const plane = {
	x: { label: "Seal leaks", unit: "a day", decimals: 2, better: "lower" },
	y: { label: "Washes", unit: "a day", decimals: 1, better: "higher" },
} as const;

export const twentyPoints: EfficientSetData = {
	title: "Washes against leaks",
	...plane,
	constraints: "night calls under 0.5",
	points: withSet(dwellMin.flatMap((dwell) => periodMin.map((period) => scatter(dwell, period)))),
};

const threeMeasurePoints: EfficientSetData = {
	...twentyPoints,
	title: "Washes against leaks, and the solution they use",
	third: { label: "solution", unit: "mL", decimals: 0, better: "lower" },
	points: twentyPoints.points.map((point, index) => ({ ...point, efficient: index % 3 === 0 || point.efficient })),
};

export const crowdedPoints: EfficientSetData = {
	title: "Many that are equally good",
	...plane,
	points: Array.from({ length: 40 }, (_, index) => ({
		label: `${index + 1} min, ${(index % 7) + 1} h, 50 mL, −125 mmHg`,
		x: 0.1 + index * 0.002,
		y: 10 + index * 0.01,
		efficient: true,
		current: index === 7,
	})),
};

const onePoint: EfficientSetData = {
	title: "One regimen",
	...plane,
	points: [{ label: "5 min, 2 h", x: 0, y: 11, efficient: true, current: true, usual: true }],
};

export const efficientSetExamples = examplesOf(
	efficientSet,
	{
		"efficient-set": twentyPoints,
		"efficient-set-three-measures": threeMeasurePoints,
		"efficient-set-crowded": crowdedPoints,
		"efficient-set-one-point": onePoint,
		"efficient-set-none": { title: "Nothing run", ...plane, points: [] },
	},
	onNarrowPages,
);
