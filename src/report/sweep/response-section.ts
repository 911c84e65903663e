import { responseCurve } from "../../charts/index.ts";
import type { SweepAxis, SweepResult } from "../../results/index.ts";
import { joinedWords, measureWords, scaleOf, sentenceStart, unitWords } from "../../words/index.ts";
import { twoWidthFigure } from "../kit/chart-figure.ts";
import { chapter, type HtmlMaker } from "../kit/html-element.ts";
import { shownMeasures } from "./shown-measures.ts";
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
	const scale = scaleOf(result);
	const others = axes.flatMap(({ name }, index) => (index === at ? [] : [settingWords(name, first.at[index] ?? 0)]));
	const { label, one } = axisWords[axis.name];
	const x = {
		label,
		unit: "",
		current: ownValue(result, axis),
		usual: markValue(markOf(result, "usual"), axis.name),
		inMinutes: axis.unit === "min" || axis.unit === "clock",
		words: (value: number) => axisValueWords(axis.name, value),
	};
	const curves = shownMeasures(result).varying.map((measure) => ({
		label: measureWords[measure].label,
		unit: unitWords(measure, scale),
		points: points.flatMap((point) => {
			const value = point.measures[measure];
			if (value === undefined) return [];
			const { mean, halfWidth95: half } = value;
			const [low, high] = half === null ? [null, null] : [mean - half, mean + half];
			return [{ x: point.at[at], mean, low, high }];
		}),
	}));
	// No figure is higher than a page of paper, which would cut it anywhere.
	const pages = Math.max(1, Math.ceil(curves.length / mostCurves));
	const figures = Array.from({ length: pages }, (_, page) => {
		const own = curves.slice(page * mostCurves, (page + 1) * mostCurves);
		const id = page === 0 ? "response" : `response-${page + 1}`;
		return twoWidthFigure(html, id, responseCurve, { title: `What the ${one} changes`, x, curves: own });
	});
	const held = joinedWords(others);
	const words = `The ${one} varied${held === "" ? "" : `, with ${held}`}: means, and the band of their 95 % intervals.`;
	return chapter(html, "response", `${sentenceStart(one)} alone`, words, ...figures);
}
