import { type DesignMapData, type DesignMapPanel, designMap, mapsAPage } from "../../charts/index.ts";
import type { SweepAxis, SweepResult } from "../../results/index.ts";
import type { MeasureName } from "../../vocabulary/index.ts";
import { inSentence, joinedWords, measureWords, scaleOf, unitWords } from "../../words/index.ts";
import { svgFile, twoWidthFigure } from "../kit/chart-figure.ts";
import { chapter, type HtmlMaker } from "../kit/html-element.ts";
import { efficientPlaces, shownMeasures } from "./shown-measures.ts";
import { axisValueWords, axisWords, constraintWords, settingWords } from "./sweep-words.ts";

/** Most panels of one measure; a grid with more settings beside the two axes is told in the tables. */
const mostFacets = 24;

/** A heat map for each measure; null where a single setting is varied, which a curve shows better. */
export function designMapSection(html: HtmlMaker, result: SweepResult): HTMLElement | null {
	if (result.axes.length < 2) return null;
	const facets = facetsOf(result).length;
	const first = `Drawn are the first ${mostFacets} of ${facets} settings of what else is varied; points.csv and values.csv hold all.`;
	const cut = facets > mostFacets ? first : "";
	const data = designMapData(result);
	// No figure is higher than a page of paper, which would cut it anywhere.
	const most = mapsAPage(data);
	const pages = Math.max(1, Math.ceil(data.maps.length / most));
	const { alike } = shownMeasures(result);
	const same =
		alike.length === 0 ? "" : `Not drawn, for it is the same everywhere: ${joinedWords(alike.map(inSentence))}.`;
	const caption = [same, cut].filter((sentence) => sentence !== "").join(" ");
	const figures = Array.from({ length: pages }, (_, page) => {
		const own: DesignMapData = { ...data, only: [page * most, (page + 1) * most] };
		return page === 0
			? twoWidthFigure(html, "map", designMap, own, caption)
			: twoWidthFigure(html, `map-${page + 1}`, designMap, own);
	});
	return chapter(html, "design-map", "The map", ...figures);
}

/** The maps of all measures that vary, as the chart takes them. */
function designMapData(result: SweepResult): DesignMapData {
	const [x, y] = mainAxes(result);
	const constraints = constraintWords(result);
	const { efficient } = result;
	return {
		title: result.scenario.title,
		x: axisOf(x),
		y: axisOf(y),
		maps: shownMeasures(result).varying.flatMap((measure) => panelsOf(result, measure)),
		...(constraints === "" ? {} : { constraints }),
		efficientIn: efficient ? joinedWords(efficient.measures.map(({ measure }) => inSentence(measure))) : undefined,
	};
}

const axisOf = (axis: SweepAxis | undefined): DesignMapData["x"] =>
	axis === undefined
		? { label: "", values: [""] }
		: { label: axisWords[axis.name].one, values: axis.values.map((value) => axisValueWords(axis.name, value)) };

/** The two axes with most values, in their order; the others are told apart by panels. */
function mainAxes({ axes }: SweepResult): readonly [SweepAxis | undefined, SweepAxis | undefined] {
	const two = axes.toSorted((a, b) => b.values.length - a.values.length).slice(0, 2);
	const [x, y] = axes.filter((axis) => two.includes(axis));
	return [x, y];
}

/** Settings of what is varied beside the two axes, in the order of the grid. */
function facetsOf(result: SweepResult): string[] {
	return [...new Set(result.points.map(({ at }) => facetOf(result, at)))];
}

function facetOf(result: SweepResult, at: readonly number[]): string {
	const main = mainAxes(result);
	return result.axes
		.flatMap((axis, index) => (main.includes(axis) ? [] : [settingWords(axis.name, at[index] ?? 0)]))
		.join(", ");
}

function panelsOf(result: SweepResult, measure: MeasureName): DesignMapPanel[] {
	const [x, y] = mainAxes(result);
	const efficient = efficientPlaces(result);
	const scale = scaleOf(result);
	const place = (axis: SweepAxis | undefined, at: readonly number[]): number =>
		axis === undefined ? 0 : axis.values.indexOf(at[result.axes.indexOf(axis)]);
	const cells = result.points.map(({ at, measures, current, usual, outside, kept }, index) => ({
		facet: facetOf(result, at),
		x: place(x, at),
		y: place(y, at),
		value: measures[measure]?.mean ?? null,
		current,
		usual,
		outside: outside.length > 0,
		broken: !kept,
		efficient: efficient.has(index),
	}));
	return facetsOf(result)
		.slice(0, mostFacets)
		.map((facet) => ({
			measure: measureWords[measure].label,
			unit: unitWords(measure, scale),
			decimals: mapDecimals(result, measure),
			facet,
			cells: cells.filter((cell) => cell.facet === facet),
		}));
}

/** As few digits as tell the cells apart: three figures of the largest. */
export function mapDecimals(result: SweepResult, measure: MeasureName): number {
	const largest = Math.max(0, ...result.points.map((point) => Math.abs(point.measures[measure]?.mean ?? 0)));
	const most = measureWords[measure].decimals;
	if (largest >= 100) return 0;
	return Math.min(most, largest >= 10 ? 1 : most);
}

/** `design-map.svg`: the map of every measure asked for, as a file of its own. */
export const sweepSvg = (result: SweepResult, document: Document): string =>
	svgFile(designMap(designMapData(result), document, { idPrefix: "map" }), document);
