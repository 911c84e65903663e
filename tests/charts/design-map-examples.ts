import { type DesignMapCell, type DesignMapData, designMap } from "../../src/charts/index.ts";
import { dwellMin, examplesOf, onNarrowPages, periodMin, washes } from "./example.ts";

const dwells = ["1 min", "5 min", "10 min", "15 min", "20 min"];
const periods = ["1 h", "2 h", "3.5 h", "6 h"];

/** A grid of cells from a function of dwell and period in minutes. */
const grid = (value: (dwell: number, period: number) => number | null): DesignMapCell[] =>
	dwellMin.flatMap((dwell, x) =>
		periodMin.map((period, y) => ({
			x,
			y,
			value: value(dwell, period),
			current: dwell === 5 && period === 120,
			usual: dwell === 10 && period === 210,
			outside: dwell < 5 || dwell > 15,
			broken: period === 60 && dwell >= 10,
			efficient: x + y === 3 || (x === 1 && y === 1),
		})),
	);

export const threeMaps: DesignMapData = {
	title: "What each regimen would bring, per day",
	x: { label: "dwell", values: dwells },
	y: { label: "suction period", values: periods },
	constraints: "night calls under 0.5",
	efficientIn: "washes or leaks",
	maps: [
		{ measure: "Washes", unit: "a day", decimals: 1, facet: "", cells: grid(washes) },
		{
			measure: "Seal leaks",
			unit: "a day",
			decimals: 2,
			facet: "",
			cells: grid((dwell, period) => (dwell * washes(dwell, period)) / 480),
		},
		{
			measure: "Solution used",
			unit: "mL",
			decimals: 0,
			facet: "",
			cells: grid((dwell, period) => (dwell === 20 && period === 360 ? null : 50 * washes(dwell, period))).filter(
				(cell) => !(cell.x === 0 && cell.y === 3),
			),
		},
	],
};

const facetMaps: DesignMapData = {
	title: "Washes by fill and depth",
	x: { label: "dwell", values: dwells },
	y: { label: "suction period", values: periods },
	currentName: "now: 5 min, 2 h",
	maps: ["Drained volume", "Calls at night"].flatMap((measure, m) =>
		[50, 100].flatMap((fill, f) =>
			[75, 125].map((depth) => ({
				measure,
				unit: m === 0 ? "mL" : "a day",
				decimals: m === 0 ? 0 : 2,
				facet: `fill ${fill} mL, depth −${depth} mmHg`,
				cells: grid((dwell, period) => (m === 0 ? fill * washes(dwell, period) : washes(dwell, period) / depth)).map(
					(cell) => ({ ...cell, current: cell.current === true && f === 0 && depth === 125 }),
				),
			})),
		),
	),
};

const onePointMap: DesignMapData = {
	title: "One regimen",
	x: { label: "dwell", values: ["10 min"] },
	y: { label: "suction period", values: ["3.5 h"] },
	maps: [
		{
			measure: "Washes",
			unit: "a day",
			decimals: 1,
			facet: "",
			cells: [{ x: 0, y: 0, value: 6.5, current: true, usual: true, outside: true, broken: true, efficient: true }],
		},
	],
};

const denseMap: DesignMapData = {
	title: "A dense grid",
	x: { label: "dwell", values: Array.from({ length: 20 }, (_, index) => `${index + 1} min`) },
	y: { label: "suction period", values: Array.from({ length: 18 }, (_, index) => `${index / 2 + 0.5} h`) },
	maps: [
		{
			measure: "Washes",
			unit: "a day",
			decimals: 1,
			facet: "",
			cells: Array.from({ length: 360 }, (_, index) => ({
				x: index % 20,
				y: Math.floor(index / 20),
				value: washes((index % 20) + 1, (Math.floor(index / 20) + 1) * 30),
				current: index === 64,
				usual: index === 129,
				outside: index % 20 > 14,
			})),
		},
	],
};

export const designMapExamples = examplesOf(
	designMap,
	{
		"design-map": threeMaps,
		"design-map-facets": facetMaps,
		"design-map-one-point": onePointMap,
		"design-map-dense": denseMap,
		"design-map-none": { ...threeMaps, title: "Nothing run", maps: [] },
	},
	onNarrowPages,
);
