import {
	beginTimes,
	designMap,
	differenceRows,
	efficientSet,
	responseCurve,
	tornado,
} from "../../src/charts/index.ts";
import { sixBeginnings, twoDressings } from "./begin-examples.ts";
import {
	denseMap,
	facetMaps,
	onePointMap,
	threeMaps,
} from "./design-map-examples.ts";
import {
	equalRegimens,
	longWords,
	manyMeasures,
	sevenMeasures,
} from "./difference-examples.ts";
import {
	crowdedPoints,
	onePoint,
	plane,
	threeMeasurePoints,
	twentyPoints,
} from "./efficient-set-examples.ts";
import { type Example, names } from "./example.ts";
import { oneValueCurve, threeCurves } from "./response-examples.ts";
import { eightAssumptions, longAssumptions } from "./tornado-examples.ts";

const drawing =
	<D>(
		draw: (
			data: D,
			document: Document,
			options: Parameters<Example["draw"]>[1],
		) => SVGSVGElement,
		data: D,
	): Example["draw"] =>
	(document, options) =>
		draw(data, document, options);

/** Plausible shapes, invented numbers, nothing simulated. Each as it stands in the gallery; all of them have a layout for narrow pages. */
export const comparisonExamples: readonly Example[] = (
	[
		["difference-rows", drawing(differenceRows, sevenMeasures)],
		["difference-rows-equal", drawing(differenceRows, equalRegimens)],
		["difference-rows-many", drawing(differenceRows, manyMeasures)],
		["difference-rows-long-words", drawing(differenceRows, longWords)],
		[
			"difference-rows-none",
			drawing(differenceRows, { title: "No measure", ...names, rows: [] }),
		],
		["design-map", drawing(designMap, threeMaps)],
		["design-map-facets", drawing(designMap, facetMaps)],
		["design-map-one-point", drawing(designMap, onePointMap)],
		["design-map-dense", drawing(designMap, denseMap)],
		[
			"design-map-none",
			drawing(designMap, { ...threeMaps, title: "Nothing run", maps: [] }),
		],
		["efficient-set", drawing(efficientSet, twentyPoints)],
		["efficient-set-three-measures", drawing(efficientSet, threeMeasurePoints)],
		["efficient-set-crowded", drawing(efficientSet, crowdedPoints)],
		["efficient-set-one-point", drawing(efficientSet, onePoint)],
		[
			"efficient-set-none",
			drawing(efficientSet, { title: "Nothing run", ...plane, points: [] }),
		],
		["response-curve", drawing(responseCurve, threeCurves)],
		["response-curve-one-value", drawing(responseCurve, oneValueCurve)],
		["tornado", drawing(tornado, eightAssumptions)],
		["tornado-long-words", drawing(tornado, longAssumptions)],
		[
			"tornado-none",
			drawing(tornado, {
				title: "Nothing varied",
				...names,
				unit: "mL",
				base: 0,
				rows: [],
			}),
		],
		["begin-times", drawing(beginTimes, sixBeginnings)],
		["begin-times-two-dressings", drawing(beginTimes, twoDressings)],
		[
			"begin-times-none",
			drawing(beginTimes, { title: "No time tried", windows: [], rows: [] }),
		],
	] as const
).map(([name, draw]) => ({ name, draw, narrowPx: 360 }));
