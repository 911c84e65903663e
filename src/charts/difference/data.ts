import { counted, figureWords, numberWord, threeFigures } from "../../words/index.ts";
import { type ComparisonWords, hollowWords } from "../kit/comparison-chart.ts";

/** One measure of two regimens, a and b, and how far they differ. */
export interface DifferenceRow {
	/** 'Washes'. */
	readonly label: string;
	/** Written after every number of the row: 'mL', 'min', 'a day'; '' for a bare count. */
	readonly unit: string;
	readonly meanA: number;
	readonly meanB: number;
	/** a − b. */
	readonly mean: number;
	/** 95 % interval of the difference; null where none could be given: the dot is hollow then. */
	readonly low: number | null;
	readonly high: number | null;
	/** 'fewer: 0.04 a day (0.03 to 0.05)', 'no difference found at 0.1 a day', 'not judged'. */
	readonly verdict: string;
	/** A difference was found; none was found; nothing can be said (the row is greyed). */
	readonly tone: "difference" | "none" | "unknown";
	/** Most digits after the point of the two means; by default three figures of the larger. */
	readonly decimals?: readonly [number, number];
}

export interface DifferenceRowsData {
	readonly title: string;
	/** Names of the regimens. */
	readonly a: string;
	readonly b: string;
	/** In the order of what the reader asked for; 1 to 40. */
	readonly rows: readonly DifferenceRow[];
}

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
	const more = rows.length > mostNamed ? [`And ${numberWord(rows.length - mostNamed)} more.`] : [];
	const found =
		rows.length === 0
			? "No measure was asked for."
			: `${counted(rows.length, "measure")}: a difference was found in ${of("difference")}, none in ${of("none")}, ${of("unknown")} could not be judged.`;
	return {
		title: data.title,
		legend: `Dot: mean difference, ${a} less ${b}. Bar: its 95 % interval; a bar that leaves out 0 is a difference. Each row has its own scale.${hollowWords(rows)}`,
		description: [found, ...named, ...more].join(" "),
	};
}
