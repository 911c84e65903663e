import { type EfficientSetData, efficientSet } from "../../charts/index.ts";
import type { SweepResult } from "../../results/index.ts";
import { inSentence, joinedWords, measureWords, unitWords } from "../../words/index.ts";
import { twoWidthFigure } from "../kit/chart-figure.ts";
import { chapter, type HtmlMaker } from "../kit/html-element.ts";
import { mapDecimals } from "./design-map-section.ts";
import { pointsTable } from "./points-section.ts";
import { efficientPlaces, sweepScale } from "./shown-measures.ts";
import { constraintWords, pointWords } from "./sweep-words.ts";

type Chosen = NonNullable<SweepResult["efficient"]>;

/** The efficient set: two measures as a picture, the third beside the points, and all of them as a table. */
export function efficientSection(html: HtmlMaker, result: SweepResult): HTMLElement | null {
	const { efficient, points } = result;
	if (efficient === null) return null;
	const names = joinedWords(efficient.measures.map(({ measure }) => inSentence(measure)));
	const data = scatterData(result, efficient);
	const figure =
		data === null
			? null
			: twoWidthFigure(html, { id: "efficient", draw: (options) => efficientSet(data, html.document, options) });
	return chapter(
		html,
		"efficient",
		"The efficient set",
		`In ${names}: regimens that keep the limits and that no other such regimen betters in one without being worse in another, going by the means. Between two of them the arithmetic cannot choose. Means that lie within each other's ± may change places in another run.`,
		figure,
		pointsTable(html, result, {
			id: "efficient-points",
			caption:
				"The efficient regimens, and those that are marked: means with their 95 % half-width (±), and the difference from the current regimen with its 95 % interval.",
			points: efficient.points.flatMap((place) => points[place] ?? []),
			measures: efficient.measures.map(({ measure }) => measure),
			marks: true,
		}),
	);
}

function scatterData(result: SweepResult, efficient: Chosen): EfficientSetData | null {
	const [x, y, third] = efficient.measures;
	if (x === undefined || y === undefined) return null;
	const scale = sweepScale(result);
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
		...(third === undefined ? {} : { third: measure(third) }),
		points: result.points.flatMap((point, index) => {
			const [across, up] = [point.measures[x.measure]?.mean, point.measures[y.measure]?.mean];
			if (across === undefined || up === undefined) return [];
			const beside = third === undefined ? undefined : point.measures[third.measure]?.mean;
			return [
				{
					label: pointWords(result.axes, point),
					x: across,
					y: up,
					...(beside === undefined ? {} : { third: beside }),
					efficient: places.has(index),
					current: point.current,
					usual: point.usual,
					broken: !point.kept,
				},
			];
		}),
		...(constraints === "" ? {} : { constraints }),
	};
}
