import type { DifferenceRow, DifferenceRowsData } from "./difference-rows.ts";
import { figureWords, threeFigures } from "./figures.ts";
import { counted, numberWord } from "./quantity.ts";

/** Both means, as they are written. */
export const meansOf = (row: DifferenceRow): [string, string] => {
	const figures = threeFigures([row.meanA, row.meanB]);
	const [a, b] = row.decimals ?? [figures, figures];
	return [
		figureWords(row.meanA, a, row.unit),
		figureWords(row.meanB, b, row.unit),
	];
};

/** A row but for its verdict: 'Washes: short 11.3, long 6.2'. */
export function bothMeans(row: DifferenceRow, a: string, b: string): string {
	const [meanA, meanB] = meansOf(row);
	return `${row.label}: ${a} ${meanA}, ${b} ${meanB}`;
}

const mostNamed = 12;

/** Title, how to read, and what a reader would see in the rows. */
export function differenceWords(data: DifferenceRowsData): {
	readonly title: string;
	readonly legend: string;
	readonly description: string;
} {
	const { rows, a, b } = data;
	const of = (tone: DifferenceRowsData["rows"][number]["tone"]): number =>
		rows.filter((row) => row.tone === tone).length;
	const named = rows
		.slice(0, mostNamed)
		.map((row) => `${bothMeans(row, a, b)}; ${row.verdict}.`);
	const more =
		rows.length > mostNamed
			? `And ${numberWord(rows.length - mostNamed)} more.`
			: "";
	const found =
		rows.length === 0
			? "No measure was asked for."
			: `${counted(rows.length, "measure")}: a difference was found in ${numberWord(of("difference"))}, none in ${numberWord(of("none"))}, ${numberWord(of("unknown"))} could not be judged.`;
	const hollow = rows.some((row) => row.low === null || row.high === null)
		? " A hollow dot has no interval that would hold."
		: "";
	return {
		title: data.title,
		legend: `Dot: mean difference, ${a} less ${b}. Bar: its 95 % interval; a bar that leaves out 0 is a difference. Each row has its own scale.${hollow}`,
		description: [found, ...named, more]
			.filter((sentence) => sentence !== "")
			.join(" "),
	};
}
