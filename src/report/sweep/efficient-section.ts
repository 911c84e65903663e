import { type EfficientSetData, efficientSet } from "../../charts/index.ts";
import type { SweepResult } from "../../results/index.ts";
import { inSentence, joinedWords, measureWords, scaleOf, unitWords } from "../../words/index.ts";
import { twoWidthFigure } from "../kit/chart-figure.ts";
import { chapter, type HtmlMaker } from "../kit/html-element.ts";
import { mapDecimals } from "./design-map-section.ts";
import { pointsTable } from "./points-section.ts";
import { efficientPlaces } from "./shown-measures.ts";
import { constraintWords, pointWords } from "./sweep-words.ts";

type Chosen = NonNullable<SweepResult["efficient"]>;

/** The efficient set: two measures as a picture, the third beside the points, and all of them as a table. */
export function efficientSection(html: HtmlMaker, result: SweepResult): HTMLElement | null {
	const { efficient, points } = result;
	if (efficient === null) return null;
	const names = joinedWords(efficient.measures.map(({ measure }) => inSentence(measure)));
	const data = scatterData(result, efficient);
	const figure = data && twoWidthFigure(html, "efficient", efficientSet, data);
	const table = pointsTable(html, result, {
		id: "efficient-points",
		caption:
			"The efficient regimens, and those that are marked: means with their 95 % half-width (±), and the difference from the current regimen with its 95 % interval.",
		points: efficient.points.map((place) => points[place]),
		measures: efficient.measures.map(({ measure }) => measure),
		marks: true,
	});
	const words = `In ${names}: regimens that keep the limits and that no other such regimen betters in one without being worse in another, going by the means. Between two of them the arithmetic cannot choose. Means that lie within each other's ± may change places in another run.`;
	return chapter(html, "efficient", "The efficient set", words, figure, table);
}

function scatterData(result: SweepResult, efficient: Chosen): EfficientSetData | null {
	const [x, y, third] = efficient.measures;
	if (x === undefined || y === undefined) return null;
	const scale = scaleOf(result);
	const constraints = constraintWords(result);
	const places = efficientPlaces(result);
	const measure = (one: Chosen["measures"][number]): EfficientSetData["x"] => ({
		label: measureWords[one.measure].label,
		unit: unitWords(one.measure, scale),
		decimals: mapDecimals(result, one.measure),
		better: one.better,
	});
	return {
		title: result.scenario.title,
		x: measure(x),
		y: measure(y),
		third: third && measure(third),
		points: result.points.flatMap((point, index) => {
			const mean = (of: Chosen["measures"][number]) => point.measures[of.measure]?.mean;
			const [across, up] = [mean(x), mean(y)];
			if (across === undefined || up === undefined) return [];
			const { current, usual, kept } = point;
			const marks = { efficient: places.has(index), current, usual, broken: !kept };
			return [{ label: pointWords(result.axes, point), x: across, y: up, third: third && mean(third), ...marks }];
		}),
		...(constraints === "" ? {} : { constraints }),
	};
}
