import { type CycleSpan, waterLineChart, waterLineLegend } from "../../charts/index.ts";
import type { CompareDrawings, CompareResult } from "../../results/index.ts";
import { clockTime, joinedWords, percentWords, roundShare } from "../../words/index.ts";
import { drawnWords } from "../day/dressing/water-line-figure.ts";
import { chartFigure, onPage } from "../kit/chart-figure.ts";
import { chapter, details, type HtmlMaker } from "../kit/html-element.ts";

/** The same day under each regimen, one water line under the other on one axis; those after the first two are folded away. */
export function waterLinesSection(html: HtmlMaker, result: CompareResult, drawings: CompareDrawings) {
	const lines = linesOf(result, drawings.days);
	if (lines.length === 0) return null;
	const figures = (some: readonly Line[]) => some.flatMap((line) => lineFigure(html, result, line, lines));
	const later = result.regimens.slice(2).flatMap(({ name }, index) => {
		const own = lines.filter((line) => line.regimen === index + 2);
		return own.length === 0 ? [] : [details(html, `The same day under ${name}`, ...figures(own))];
	});
	const words = `${drawnWords(result)} It is the same patient with the same thresholds, turns and nurses under each regimen, on one time axis. ${waterLineLegend({ replications: 1 })}`;
	const first = figures(lines.filter((line) => line.regimen < 2));
	return chapter(html, "water-lines", "The same day under each", words, ...first, ...later);
}

/** The first hours of two regimens, one under the other, on a day on which they part there. */
export function firstHoursSection(html: HtmlMaker, result: CompareResult, { firstHours }: CompareDrawings) {
	if (firstHours === null) return null;
	const { spanMin, days, leakShare, replication, regimens } = firstHours;
	const lines = linesOf(result, days, regimens);
	const leaks = regimens.map(
		(place, index) => `${percentWords(leakShare[index])} of the days under ${result.regimens[place].name}`,
	);
	const until = clockTime(spanMin, result.scenario);
	const words = `A leak comes before ${until} on ${joinedWords(leaks)}. Drawn is replication ${replication}, the first on which the two part in these hours. Enlarged is the time when suction first returns after a dwell: a seal that a move has loosened shows there.`;
	const figures = lines.flatMap((line) => lineFigure(html, result, line, lines, spanMin));
	return chapter(html, "first-hours", "The first hours", words, ...figures);
}

/** A day of one dressing under one regimen, which `regimen` is the place of. */
type Line = ReturnType<typeof linesOf>[number];

/** Dressing by dressing, in each the regimens in their order; `places` are those of the regimens whose days they are, if not all. */
function linesOf(result: CompareResult, days: CompareDrawings["days"], places: readonly number[] = []) {
	const several = result.scenario.dressings.length > 1;
	return result.scenario.dressings.flatMap(({ id }) =>
		days.flatMap((traced, index) => {
			const regimen = places[index] ?? index;
			const name = result.regimens[regimen]?.name;
			const day = traced.dressings.find((one) => one.id === id);
			const dressing = traced.scenario.dressings.find((one) => one.id === id);
			return name === undefined || day === undefined || dressing === undefined
				? []
				: [{ regimen, name: several ? `${name}, ${id}` : name, day, dressing }];
		}),
	);
}

/** A line with its name; of the first `spanMin` of its day with a lens where that is given. */
function lineFigure(html: HtmlMaker, result: CompareResult, line: Line, all: readonly Line[], spanMin?: number) {
	const { name, day, dressing } = line;
	const same = all.filter((other) => other.dressing.id === dressing.id);
	const [kind, of] = spanMin === undefined ? ["line", "Water line"] : ["first", "First hours"];
	const data = {
		title: name,
		clock: result.scenario,
		dressing,
		day,
		replications: 1,
		roundShare: roundShare(result),
		beside: same.filter((other) => other !== line),
		...(spanMin === undefined ? {} : { spanMin, lens: lensOf(line, same, spanMin) }),
	};
	const chart = waterLineChart(data, html.document, onPage(`${kind}-${all.indexOf(line) + 1}-chart`));
	return [html("h3", {}, name), chartFigure(html, chart, `${of} of ${name}`)];
}

/**
 * What the lens of a day enlarges, of several of the same dressing: the minutes around the first return of suction after a
 * dwell, in the day where that comes first, and the same minutes of the others; the first minutes where nothing is filled.
 */
function lensOf(line: Line, same: readonly Line[], spanMin: number): CycleSpan {
	const first = Math.min(...same.map(firstDrainMin));
	if (first >= spanMin) return { heading: "The first minutes, enlarged", fromMin: 0, toMin: Math.min(15, spanMin) };
	const isFirst = firstDrainMin(line) === first;
	return {
		heading: isFirst ? "Suction returns after the first dwell, enlarged" : "The same minutes, enlarged",
		fromMin: Math.max(0, first - 8),
		toMin: Math.min(spanMin, first + 12),
	};
}

const firstDrainMin = ({ day }: Line): number =>
	day.phases.find(({ phase }) => phase === "drain")?.startMin ?? Number.POSITIVE_INFINITY;
