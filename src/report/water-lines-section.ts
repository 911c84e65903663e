import type {
	CompareDrawings,
	CompareResult,
} from "../analysis/compare-result.ts";
import type {
	DressingDay,
	DressingSummary,
	TracedDayResult,
} from "../analysis/day-result.ts";
import {
	type CycleSpan,
	clockTime,
	percentWords,
	waterLineChart,
	waterLineLegend,
} from "../charts/index.ts";
import { chapter } from "./chapter.ts";
import { scrollingFigure } from "./chart-figure.ts";
import { drawnWords } from "./drawn-words.ts";
import { firstDrains } from "./first-drains.ts";
import { htmlElement } from "./html-element.ts";
import { joinedWords } from "./joined-words.ts";
import { paragraph } from "./paragraph.ts";
import { roundShare } from "./round-share.ts";

/** The same day under each regimen, one water line under the other on one axis; those after the first two are folded away. */
export function waterLinesSection(
	result: CompareResult,
	{ days }: CompareDrawings,
	document: Document,
): HTMLElement | null {
	const lines = linesOf(
		result,
		days,
		result.regimens.map((_, place) => place),
	);
	if (lines.length === 0) return null;
	const figures = (some: readonly Line[]): HTMLElement[] =>
		some.flatMap((line) => lineFigure(result, line, lines, null, document));
	const later = result.regimens.slice(2).flatMap(({ name }, index) => {
		const own = lines.filter((line) => line.regimen === index + 2);
		return own.length === 0
			? []
			: [
					htmlElement(
						document,
						"details",
						{},
						htmlElement(document, "summary", {}, `The same day under ${name}`),
						...figures(own),
					),
				];
	});
	return chapter(
		document,
		"water-lines",
		"The same day under each",
		paragraph(
			document,
			`${drawnWords(result)} It is the same patient with the same thresholds, turns and nurses under each regimen, on one time axis. ${waterLineLegend({ replications: 1 })}`,
		),
		...figures(lines.filter((line) => line.regimen < 2)),
		...later,
	);
}

/** The first hours of two regimens, one under the other, on a day on which they part there. */
export function firstHoursSection(
	result: CompareResult,
	{ firstHours }: CompareDrawings,
	document: Document,
): HTMLElement | null {
	if (firstHours === null) return null;
	const { spanMin, days, leakShare, replication, regimens } = firstHours;
	const lines = linesOf(result, days, regimens);
	const leaks = regimens.flatMap((place, index) => {
		const [name, share] = [result.regimens[place]?.name, leakShare[index]];
		return name === undefined || share === undefined
			? []
			: [`${percentWords(share)} of the days under ${name}`];
	});
	const until = clockTime(spanMin, result.scenario);
	return chapter(
		document,
		"first-hours",
		"The first hours",
		paragraph(
			document,
			`A leak comes before ${until} on ${joinedWords(leaks)}. Drawn is replication ${replication}, the first on which the two part in these hours. Enlarged is the time when suction first returns after a dwell: a seal that a move has loosened shows there.`,
		),
		...lines.flatMap((line) =>
			lineFigure(result, line, lines, spanMin, document),
		),
	);
}

/** A day of one dressing under one regimen. */
interface Line {
	/** Place of the regimen. */
	readonly regimen: number;
	readonly name: string;
	readonly day: DressingDay;
	readonly dressing: DressingSummary;
}

/** Dressing by dressing, in each the regimens in their order. */
function linesOf(
	result: CompareResult,
	days: readonly TracedDayResult[],
	/** Whose days they are, as places in the regimens. */
	places: readonly number[],
): Line[] {
	const several = result.scenario.dressings.length > 1;
	return result.scenario.dressings.flatMap(({ id }) =>
		days.flatMap((traced, index) => {
			const regimen = places[index] ?? index;
			const name = result.regimens[regimen]?.name;
			const day = traced.dressings.find((one) => one.id === id);
			const dressing = traced.scenario.dressings.find((one) => one.id === id);
			return name === undefined || day === undefined || dressing === undefined
				? []
				: [
						{
							regimen,
							name: several ? `${name}, ${id}` : name,
							day,
							dressing,
						},
					];
		}),
	);
}

function lineFigure(
	result: CompareResult,
	line: Line,
	all: readonly Line[],
	spanMin: number | null,
	document: Document,
): HTMLElement[] {
	const { name, day, dressing } = line;
	const beside = all.filter(
		(other) => other !== line && other.dressing.id === dressing.id,
	);
	const figure = scrollingFigure(document, {
		id: `${spanMin === null ? "line" : "first"}-${all.indexOf(line) + 1}`,
		label:
			spanMin === null ? `Water line of ${name}` : `First hours of ${name}`,
		draw: (options) =>
			waterLineChart(
				{
					title: name,
					clock: result.scenario,
					dressing,
					day,
					replications: 1,
					roundShare: roundShare(result),
					beside,
					...(spanMin === null
						? {}
						: { spanMin, lens: lensOf(line, all, spanMin) }),
				},
				document,
				options,
			),
	});
	return [htmlElement(document, "h3", {}, name), figure];
}

/** All lines of one dressing enlarge the same minutes. */
function lensOf(line: Line, all: readonly Line[], spanMin: number): CycleSpan {
	const same = all.filter(({ dressing }) => dressing.id === line.dressing.id);
	const spans = firstDrains(
		same.map(({ day }) => day),
		spanMin,
	);
	return (
		spans[same.indexOf(line)] ?? { heading: "", fromMin: 0, toMin: spanMin }
	);
}
