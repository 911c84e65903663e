import { responseCurve } from "../../charts/index.ts";
import type { SweepAxis, SweepResult } from "../../results/index.ts";
import { joinedWords, measureWords, sentenceStart, unitWords } from "../../words/index.ts";
import { twoWidthFigure } from "../kit/chart-figure.ts";
import { chapter, type HtmlMaker } from "../kit/html-element.ts";
import { shownMeasures, sweepScale } from "./shown-measures.ts";
import { axisValueWords, axisWords, isApart, markOf, markValue, settingWords } from "./sweep-words.ts";

/** Where the scenario's own regimen stands on an axis; null where its dressings stand at different places. */
function ownValue(result: SweepResult, axis: SweepAxis): number | null {
	const own = markOf(result, "current");
	return own !== undefined && isApart(own, axis.name) ? null : axis.current;
}
/** Curves under each other on a page of paper. */
const mostCurves = 6;

/** One setting varied, the others held: each measure over it, with its interval. */
export function responseSection(html: HtmlMaker, result: SweepResult): HTMLElement | null {
	const { curve, axes } = result;
	const at = axes.findIndex(({ name }) => name === curve?.axis);
	const axis = axes[at];
	if (curve === null || axis === undefined) return null;
	const points = curve.points.flatMap((place) => result.points[place] ?? []);
	const [first] = points;
	if (first === undefined) return null;
	const scale = sweepScale(result);
	const held = axes.flatMap(({ name }, index) => (index === at ? [] : [settingWords(name, first.at[index] ?? 0)]));
	const { label, one } = axisWords[axis.name];
	// No figure is higher than a page of paper, which would cut it anywhere.
	const { varying } = shownMeasures(result);
	const starts = varying.flatMap((_, place) => (place % mostCurves === 0 ? [place] : []));
	const figures = (starts.length === 0 ? [0] : starts).map((start, index) =>
		twoWidthFigure(html, {
			id: index === 0 ? "response" : `response-${index + 1}`,
			draw: (options) =>
				responseCurve(
					{
						title: `What the ${one} changes`,
						x: {
							label,
							unit: "",
							current: ownValue(result, axis),
							usual: markValue(markOf(result, "usual"), axis.name),
							inMinutes: axis.unit === "min" || axis.unit === "clock",
							words: (value) => axisValueWords(axis.name, value),
						},
						curves: varying.slice(start, start + mostCurves).map((measure) => ({
							label: measureWords[measure].label,
							unit: unitWords(measure, scale),
							points: points.flatMap((point) => {
								const value = point.measures[measure];
								if (value === undefined) return [];
								const half = value.halfWidth95;
								return [
									{
										x: point.at[at] ?? 0,
										mean: value.mean,
										low: half === null ? null : value.mean - half,
										high: half === null ? null : value.mean + half,
									},
								];
							}),
						})),
					},
					html.document,
					options,
				),
		}),
	);
	return chapter(
		html,
		"response",
		`${sentenceStart(one)} alone`,
		`The ${one} varied${held.length === 0 ? "" : `, with ${joinedWords(held)}`}: means, and the band of their 95 % intervals.`,
		...figures,
	);
}
