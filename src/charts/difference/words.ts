import { counted, figureWords, numberWord, threeFigures } from "../../words/index.ts";
import { type ComparisonWords, hollowWords } from "../kit/comparison-chart.ts";
import type { DifferenceRow, DifferenceRowsData } from "./data.ts";

/** Both means, as they are written. */
export const meansOf = (row: DifferenceRow): [string, string] => {
	const figures = threeFigures([row.meanA, row.meanB]);
	const [a, b] = row.decimals ?? [figures, figures];
	return [figureWords(row.meanA, a, row.unit), figureWords(row.meanB, b, row.unit)];
};

/** A row but for its verdict: 'Washes: short 11.3, long 6.2'. */
export function bothMeans(row: DifferenceRow, a: string, b: string): string {
	const [meanA, meanB] = meansOf(row);
	return `${row.label}: ${a} ${meanA}, ${b} ${meanB}`;
}

const mostNamed = 12;

/** Title, how to read, and what a reader would see in the rows. */
export function differenceWords(data: DifferenceRowsData): ComparisonWords {
	const { rows, a, b } = data;
	const of = (tone: DifferenceRow["tone"]): string => numberWord(rows.filter((row) => row.tone === tone).length);
	const named = rows.slice(0, mostNamed).map((row) => `${bothMeans(row, a, b)}; ${row.verdict}.`);
	const more = rows.length > mostNamed ? `And ${numberWord(rows.length - mostNamed)} more.` : "";
	const found =
		rows.length === 0
			? "No measure was asked for."
			: `${counted(rows.length, "measure")}: a difference was found in ${of("difference")}, none in ${of("none")}, ${of("unknown")} could not be judged.`;
	return {
		title: data.title,
		legend: `Dot: mean difference, ${a} less ${b}. Bar: its 95 % interval; a bar that leaves out 0 is a difference. Each row has its own scale.${hollowWords(rows)}`,
		description: [found, ...named, more].filter((sentence) => sentence !== "").join(" "),
	};
}
